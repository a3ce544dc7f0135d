package kelter.cli.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindPart;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.session.NextStep;
import kelter.core.session.Prompt;
import kelter.core.session.Reply;
import kelter.core.session.Session;
import kelter.core.sheet.Bag;
import kelter.core.shop.Shop;
import kelter.core.vocabulary.Symptom;

/**
 * A technician at one machine. He types what a person would type into a led session: the kind, the
 * age, no words of the owner, the symptom that is plainest, and then what is asked. Or he goes in
 * an order of his own, through the same session, until it says that it is enough. What the owner
 * answers and what is read is the same in every order.
 */
final class Technician {

  /** So many answers he gives at most. */
  static final int MOST = 20;

  /** So many pieces of work he tries at one visit at most; common practice, no source. */
  /** Up to what an insulation tester reads, Mohm; common practice, no source. */
  private static final String RANGE_END = "200";

  private static final int TRIED = 3;

  /** So many parts he takes who does without a bag. */
  private static final int LIKELIEST = 3;

  /** In which order he goes. */
  enum Order {
    /** As the session asks. */
    LED,
    /** First what is usually asked, then part by part as the kind lists them. */
    FIXED,
    /** The same in any order. */
    RANDOM
  }

  /**
   * How he fared.
   *
   * @param minutes what asking and reading took, in min
   * @param answers how many answers that were
   * @param enough whether the session said that it is enough
   * @param right whether what is named first is there
   */
  record Course(double minutes, int answers, boolean enough, boolean right) {}

  /**
   * What was in the van.
   *
   * @param parts how many parts
   * @param cured the chance that the machine is cured with them, 0 to 1
   */
  record Taken(int parts, double cured) {}

  /**
   * One call.
   *
   * @param kind the id of the kind of machine
   * @param mendable whether it has a cause of which the session proposes a part or work
   * @param courses how each order fared
   * @param bag what the bag says
   * @param likeliest the three likeliest parts
   * @param all every part
   * @param refused what was typed and not taken
   */
  record Visit(
      String kind,
      boolean mendable,
      Map<Order, Course> courses,
      Taken bag,
      Taken likeliest,
      Taken all,
      List<String> refused) {}

  private final Calls.Drawn drawn;
  private final Map<String, String> told = new HashMap<>();
  private final Map<String, Integer> asked = new HashMap<>();
  private final List<String> refused = new ArrayList<>();
  private Optional<Session> atTheDoor = Optional.empty();
  private int answers;
  private double minutes;

  private Technician(Calls.Drawn drawn) {
    this.drawn = drawn;
  }

  /** So many calls, each led and then gone through in other orders. */
  static List<Visit> visits(Calls calls, int number, Order... others) {
    return IntStream.range(0, number)
        .parallel()
        .mapToObj(each -> new Technician(calls.draw(each)).visit(others))
        .toList();
  }

  private Visit visit(Order... others) {
    Session begun = begin();
    Map<Order, Course> courses = new HashMap<>();
    Session end = goes(Order.LED, begun);
    courses.put(Order.LED, course(end));
    for (Order order : others) {
      courses.put(order, course(goes(order, begun)));
    }
    Session door = atTheDoor.orElse(end);
    Set<String> bag = new HashSet<>();
    for (Bag.Item item : Bag.of(door.machine(), Shop.UNKNOWN).items()) {
      if (item.worth()) {
        bag.add(item.remedy().key());
      }
    }
    List<String> parts =
        door.machine().diagnosis().takeAlong().stream().map(each -> each.remedy().key()).toList();
    Set<String> likeliest = new HashSet<>(parts.subList(0, Math.min(LIKELIEST, parts.size())));
    Set<String> all = new HashSet<>();
    end.machine().remedies().forEach(each -> all.add(each.key()));
    return new Visit(
        drawn.kind(),
        isMendable(end),
        courses,
        taken(bag, end),
        taken(likeliest, end),
        taken(all, end),
        refused);
  }

  private Session begin() {
    Session session = Session.begin(Calls.TOOL, "2026-11-29", kind -> kind + "-1");
    session = types(session, drawn.kind());
    session = types(session, "" + drawn.years());
    session = heeds(types(session, "skip"));
    return drawn.owner().volunteers().isEmpty()
        ? session
        : types(session, drawn.owner().volunteers().get(0).symptom() + " = y");
  }

  private Session types(Session session, String line) {
    Reply reply = session.answer(line);
    if (reply.session() == session) {
      refused.add(line + ": " + String.join(" ", reply.told()));
    }
    return reply.session();
  }

  /** Keeps to what is cautioned, and says of a tester that was beyond its range how far it goes. */
  private Session heeds(Session begun) {
    Session session = begun;
    while (session.prompt() instanceof Prompt.Heed || session.prompt() instanceof Prompt.RangeEnd) {
      session = types(session, session.prompt() instanceof Prompt.Heed ? "ok" : RANGE_END);
    }
    return session;
  }

  private Session goes(Order order, Session begun) {
    answers = 0;
    minutes = 0;
    asked.clear();
    Session session = heeds(begun);
    if (order == Order.LED) {
      while (answers < MOST && !(session.prompt() instanceof Prompt.Enough)) {
        session = heeds(led(session));
      }
      return session;
    }
    for (Step step : steps(order, session)) {
      boolean goesOn = answers < MOST && !(session.prompt() instanceof Prompt.Enough);
      if (goesOn && step.mayBeTaken(session)) {
        session = heeds(types(session, step.key() + " = " + answer(step)));
      }
    }
    return session;
  }

  private Session led(Session session) {
    Step step;
    if (session.prompt() instanceof Prompt.Ask ask) {
      step = new Step(Optional.of(ask.symptom()), Optional.empty());
    } else {
      Prompt.Measure measure = (Prompt.Measure) session.prompt();
      atTheDoor = atTheDoor.or(() -> Optional.of(session));
      step = new Step(Optional.empty(), Optional.of(measure.question()));
    }
    return types(session, answer(step));
  }

  /** A question to the owner or a reading. */
  private record Step(Optional<Symptom> symptom, Optional<Question> question) {

    String key() {
      return symptom.map(Symptom::id).or(() -> question.map(Question::key)).orElseThrow();
    }

    double minutes() {
      return question.map(each -> each.observable().procedure().minutes()).orElse(NextStep.ASKING);
    }

    /** Whether the lock-out lets it be read. */
    boolean mayBeTaken(Session session) {
      return question
          .map(
              each ->
                  session
                      .machine()
                      .lockOut()
                      .allows(
                          each.component(),
                          each.observable().id(),
                          each.observable().procedure().hazard()))
          .orElse(true);
    }
  }

  /** What is told or read; a reading that is taken again is drawn again. */
  private String answer(Step step) {
    answers++;
    minutes += step.minutes();
    int times = asked.merge(step.key(), 1, Integer::sum);
    return told.computeIfAbsent(step.key() + " " + times, each -> drawn(step));
  }

  private String drawn(Step step) {
    if (step.question().filter(each -> !drawn.machine().has(each)).isPresent()) {
      return "skip";
    }
    RandomGenerator random = drawn.random();
    return step.symptom()
        .map(symptom -> drawn.owner().answer(symptom).answer().id())
        .orElseGet(() -> typed(drawn.machine().read(step.question().get(), random).shown()));
  }

  /** Three decimals may mean thousands, so he writes a fourth, as he is told to. */
  private static String typed(String shown) {
    return shown.replaceAll("(?<decimals>\\.[0-9]{3})(?![0-9])", "${decimals}0");
  }

  private List<Step> steps(Order order, Session session) {
    Kind kind = session.machine().kind().orElseThrow();
    List<Step> steps = new ArrayList<>();
    for (String asked : kind.asked()) {
      session
          .machine()
          .vocabulary()
          .symptom(asked)
          .filter(symptom -> !isTold(symptom, session))
          .ifPresent(symptom -> steps.add(new Step(Optional.of(symptom), Optional.empty())));
    }
    for (KindPart part : kind.parts()) {
      for (FaultModel model : drawn.machine().models()) {
        for (Question question : model.questions()) {
          if (question.component().equals(part.id())) {
            steps.add(new Step(Optional.empty(), Optional.of(question)));
          }
        }
      }
    }
    if (order == Order.RANDOM) {
      Collections.shuffle(steps, new Random(drawn.random().nextLong()));
    }
    return steps;
  }

  private static boolean isTold(Symptom symptom, Session session) {
    return session.machine().job().complaint().symptoms().stream()
        .anyMatch(report -> report.symptom().equals(symptom.id()));
  }

  private Course course(Session end) {
    Diagnosis diagnosis = end.machine().diagnosis();
    boolean right = drawn.standing(diagnosis).right();
    return new Course(minutes, answers, end.prompt() instanceof Prompt.Enough, right);
  }

  private boolean isMendable(Session end) {
    String truth = drawn.machine().truth();
    int dot = truth.indexOf('.');
    return dot > 0 && end.machine().lockOut().mends(truth.substring(0, dot));
  }

  /** He works down the plan, as far as he has the parts. */
  private Taken taken(Set<String> parts, Session end) {
    double left = 1;
    int tried = 0;
    for (Diagnosis.PlanStep step : end.machine().diagnosis().plan()) {
      Remedy remedy = step.remedy();
      if (tried < TRIED && (!remedy.needsPart() || parts.contains(remedy.key()))) {
        tried++;
        left *= step.cures().contains(drawn.machine().truth()) ? 1 - remedy.probabilityOfCure() : 1;
      }
    }
    return new Taken(parts.size(), 1 - left);
  }
}
