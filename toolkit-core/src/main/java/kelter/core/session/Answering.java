package kelter.core.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindBuild;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.file.job.MarkedEdit;
import kelter.core.file.job.ProgressEdit;
import kelter.core.file.json.Json;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Market;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.job.ReadingParser;
import kelter.core.job.SymptomReport;
import kelter.core.job.work.TestDone;
import kelter.core.job.work.WorkDone;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.proof.Proof;
import kelter.core.quantity.Nearest;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Ids;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.OwnersWords;
import kelter.core.vocabulary.Symptom;
import kelter.core.workshop.Case;

/** One line that was typed in a session. */
final class Answering {

  private static final String UNDO = "undo";
  private static final Set<String> LEAVING = Set.of("done", "quit", "exit", "q");
  private static final String LACKS = "lacks ";
  private static final String WITH = " with ";
  private static final String TEMPERATURE = "temperature";
  private static final String WARM = "warm";
  private static final int TOLD = 5;

  /** Fewer letters do not say what was done. */
  private static final int LEAST_WORDS = 4;

  private static final Map<String, String> ANSWERS =
      Map.of(
          "y",
          "yes",
          "yes",
          "yes",
          "n",
          "no",
          "no",
          "no",
          "s",
          "sometimes",
          "sometimes",
          "sometimes");

  private final Session session;
  private final String line;
  private final String word;

  Answering(Session session, String line) {
    this.session = session;
    this.line = line;
    this.word = line.toLowerCase(Locale.ROOT);
  }

  Reply reply() {
    if (word.equals(UNDO)) {
      return session
          .before()
          .map(before -> Reply.to(before, TakenBack.words(before.prompt(), session.typed())))
          .orElseGet(this::outOfTheJob);
    }
    if (LEAVING.contains(word)) {
      return new Reply(session, List.of(), true);
    }
    if (word.equals("?") || word.equals("help")) {
      return new Reply(session, Help.of(session.prompt()), false);
    }
    if (session.isBegun()) {
      Optional<Reply> order = order();
      if (order.isPresent()) {
        return order.get();
      }
    }
    try {
      return answer(session.prompt());
    } catch (InputException mistakes) {
      return Reply.to(session, told(mistakes.problems().get(0)));
    }
  }

  /** The last reading that the job held before the session began, taken out of it. */
  private Reply outOfTheJob() {
    Optional<ProgressEdit.Taken> last =
        session.isBegun()
            ? ProgressEdit.withoutLastReading(session.content(), session.stage())
            : Optional.empty();
    return last.map(
            taken ->
                Reply.to(session.holding(taken.job()), "Taken out of the job: " + taken.reading()))
        .orElseGet(() -> Reply.to(session, "There is nothing to take back."));
  }

  private static String told(Problem problem) {
    return problem.remedy().isEmpty()
        ? sentence(problem.what())
        : sentence(problem.what() + "; " + problem.remedy());
  }

  private static String sentence(String words) {
    return words.endsWith("?") ? words : words + ".";
  }

  /** What is ordered whatever is asked. */
  private Optional<Reply> order() {
    if (word.equals("list")) {
      return Optional.of(new Reply(session, list(), false));
    }
    if (word.equals("why")) {
      return Optional.of(new Reply(session, why(), false));
    }
    if (word.startsWith("note ")) {
      return Optional.of(kept("x-notes", line.substring("note ".length()), "Noted."));
    }
    if (word.startsWith("did ")) {
      return Optional.of(done(line.substring("did ".length()).strip()));
    }
    if (word.startsWith(LACKS)) {
      return Optional.of(lacking(line.substring(LACKS.length()).strip()));
    }
    if (word.startsWith("what if ")) {
      return Optional.of(whatIf(line.substring("what if ".length())));
    }
    return Optional.empty();
  }

  /** A part that such machines may have and this one has not. */
  private Reply lacking(String words) {
    try {
      return new Marked(session.machine())
          .lacking(session.content(), words)
          .map(content -> checked(session.saying(content)))
          .map(next -> Reply.to(next.session(), "Kept: it has no " + words + "."))
          .orElseGet(() -> Reply.to(session, "Which part? Such machines have: " + parts() + "."));
    } catch (InputException mistakes) {
      return Reply.to(session, told(mistakes.problems().get(0)));
    }
  }

  private String parts() {
    return String.join(
        ", ",
        session.machine().job().appliance().components().stream().map(Component::id).toList());
  }

  private Reply kept(String member, String text, String told) {
    List<Json> all = new ArrayList<>();
    if (session.content().members().get(member) instanceof Json.Arr array) {
      all.addAll(array.items());
    }
    all.add(new Json.Str(text.strip()));
    return Reply.to(session.saying(session.content().with(member, new Json.Arr(all))), told);
  }

  /** Work by its key, by its place among the likely, or in words. */
  private Reply done(String told) {
    Optional<Remedy> known = remedy(told);
    List<String> keys = session.machine().remedies().stream().map(Remedy::key).distinct().toList();
    if (known.isEmpty() && told.matches("[a-z0-9-]+\\.[a-z0-9-]+")) {
      return Reply.to(
          session,
          Nearest.of(told, keys)
              .map(near -> "Not known. Did you mean " + near + "?")
              .orElse("Not known here. Say it in your own words."));
    }
    if (told.indexOf('=') > 0 || known.isEmpty() && told.length() < LEAST_WORDS) {
      return Reply.to(session, "Say in words what was done.");
    }
    WorkDone work =
        new WorkDone(
            known.map(Remedy::key),
            known.map(Remedy::title).orElse(told),
            Optional.empty(),
            List.of(),
            List.of(),
            "",
            "",
            "");
    String noted =
        known.isPresent()
            ? "Noted as done."
            : "Noted. It is in your own words, so it does not count for the chance of a cure.";
    return Reply.to(session.saying(ProgressEdit.with(session.content(), work)), noted);
  }

  private Optional<Remedy> remedy(String told) {
    if (session.prompt() instanceof Prompt.Work asked && told.matches("[1-9]")) {
      return asked.likely().stream().skip(Integer.parseInt(told) - 1L).findFirst();
    }
    return Remedy.called(told, session.machine().remedies());
  }

  private Reply whatIf(String told) {
    Reply tried = new Answering(session, told).said(true);
    if (tried.session() == session) {
      return tried;
    }
    List<String> lines = new ArrayList<>();
    lines.add("Now: " + Standing.of(session.machine().diagnosis()));
    lines.add("Then: " + Standing.of(tried.session().machine().diagnosis()));
    return new Reply(session, lines, false);
  }

  /** What is said of its own accord: a symptom, or a reading as {@code words = reading}. */
  private Reply said() {
    return said(false);
  }

  /**
   * The same.
   *
   * @param overturning whether an answer that was given may be overturned by other words
   */
  private Reply said(boolean overturning) {
    try {
      int equals = line.indexOf('=');
      if (equals > 0) {
        return named(line.substring(0, equals).strip(), line.substring(equals + 1).strip());
      }
      List<Symptom> meant = Words.symptoms(line, session.machine());
      return meant.size() == 1
          ? understood(meant.get(0), overturning)
          : Reply.to(session, "'" + line + "' is neither a symptom nor 'part reading = value'.");
    } catch (InputException mistakes) {
      return Reply.to(session, told(mistakes.problems().get(0)));
    }
  }

  /** A symptom that was found by its words, which may mean something else: it is told. */
  private Reply understood(Symptom symptom, boolean overturning) {
    String told = "'%s': %s (%s)".formatted(line, symptom.title(), symptom.id());
    Optional<String> earlier = answered(symptom).filter(each -> !each.equals("yes"));
    if (earlier.isPresent() && !overturning) {
      return Reply.to(
          session,
          "%s? That was answered %s. If it is so: %s = yes."
              .formatted(told, earlier.get(), symptom.id()));
    }
    Session next = reported(symptom, "yes").session();
    return Reply.to(next, "Understood " + told + ", yes. If that is wrong: undo.");
  }

  /** What was answered of a symptom at this stage, if anything. */
  private Optional<String> answered(Symptom symptom) {
    Job job = session.machine().job();
    List<SymptomReport> reports =
        session.stage() == Measurement.Stage.AS_LEFT
            ? job.progress().symptoms()
            : job.complaint().symptoms();
    return reports.stream()
        .filter(each -> each.symptom().equals(symptom.id()))
        .map(each -> each.answer().id())
        .findFirst();
  }

  private Reply answer(Prompt prompt) {
    if (prompt instanceof Prompt.KindOfMachine) {
      return kind();
    }
    if (prompt instanceof Prompt.Age) {
      return age();
    }
    if (prompt instanceof Prompt.Said) {
      return ownersWords();
    }
    if (prompt instanceof Prompt.Heed heed) {
      return word.equals("ok") || word.equals("y") || word.equals("yes")
          ? Reply.to(session.heeding(heed.caution()))
          : Reply.to(session, "Type ok once that is done or kept to.");
    }
    if (prompt instanceof Prompt.Work) {
      return isSkipped() ? Reply.to(session.without(List.of(ProofStep.WORK))) : done(line);
    }
    if (ProtectionClassTold.isTold(word)) {
      return Reply.to(
          checked(session.saying(ProtectionClassTold.in(session.content(), word))).session(),
          "Kept as marked: protection class " + ProtectionClassTold.of(word) + ".");
    }
    if (ProtectionClassTold.isDoubted(word) && ProtectionClassTold.isAsked(prompt)) {
      return Reply.to(session, ProtectionClassTold.DOUBT);
    }
    if (prompt instanceof Prompt.Look look) {
      return looked(look.test());
    }
    if (line.indexOf('=') > 0 && !TakenAt.isIn(line)) {
      return said();
    }
    if (prompt instanceof Prompt.RangeEnd asked) {
      return rangeEnd(asked);
    }
    if (prompt instanceof Prompt.Outside && isSkipped()) {
      return Reply.to(session, "It holds the power back: mend it and read it again, or type done.");
    }
    if (prompt instanceof Prompt.Outside outside) {
      return reading(outside.question().component(), outside.question().observable(), line);
    }
    if (prompt instanceof Prompt.Failed failed) {
      return againAfterMending(failed.test());
    }
    if (prompt instanceof Prompt.Ask ask) {
      return symptom(ask.symptom());
    }
    if (prompt instanceof Prompt.Measure measure) {
      return measured(measure);
    }
    return said();
  }

  private Reply kind() {
    String words =
        session.prompt() instanceof Prompt.KindOfMachine asked
                && ANSWERS.getOrDefault(word, "").equals("yes")
                && asked.likely().isPresent()
            ? asked.likely().get()
            : line;
    List<Kind> meant = session.workshop().kinds().meant(words);
    if (meant.size() > 1) {
      return Reply.to(session, "Which: " + String.join(", ", ids(meant)) + "?");
    }
    if (meant.isEmpty()) {
      Optional<String> near = session.workshop().kinds().likely(line);
      return near.isPresent()
          ? Reply.to(
              session.asking(new Prompt.KindOfMachine(near)),
              "Not known. Is it a %s? (y, or another word)".formatted(near.get()))
          : Reply.to(
              session, "Known: " + String.join(", ", session.workshop().kinds().ids()) + ".");
    }
    String id = meant.get(0).id();
    Json.Obj content =
        session
            .content()
            .with("id", new Json.Str(session.idOf().apply(id)))
            .with("appliance", new Json.Obj(Map.of("kind", new Json.Str(id))));
    Optional<KindBuild> build = meant.get(0).build(words);
    for (String part : build.map(KindBuild::lacks).orElse(List.of())) {
      content = MarkedEdit.lacking(content, part);
    }
    Session next = session.saying(content);
    return build.isPresent() ? Reply.to(next, taken(build.get())) : Reply.to(next);
  }

  private static String taken(KindBuild build) {
    return "A %s: it has no %s. If that is wrong: undo."
        .formatted(build.title(), String.join(", ", build.lacks()));
  }

  private static List<String> ids(List<Kind> kinds) {
    return kinds.stream().map(Kind::id).toList();
  }

  private Reply age() {
    if (isSkipped()) {
      return Reply.to(session.without(List.of(Session.AGE)));
    }
    String age = line.matches("[0-9]+([.,][0-9]+)?") ? line + " a" : line;
    Json.Obj appliance =
        ((Json.Obj) session.content().members().get("appliance")).with("age", new Json.Str(age));
    return checked(session.saying(session.content().with("appliance", appliance)));
  }

  private Reply ownersWords() {
    if (isSkipped()) {
      return Reply.to(session.without(List.of(Session.SAID)));
    }
    Json said = new Json.Obj(Map.of("said", new Json.Str(line)));
    return checked(session.saying(session.content().with("complaint", said)));
  }

  /** Whether the session is still a job; if not, its mistakes are thrown. */
  private static Reply checked(Session next) {
    next.machine();
    return Reply.to(next);
  }

  private boolean isSkipped() {
    return line.isEmpty() || word.equals("skip") || word.equals("-");
  }

  private Reply symptom(Symptom symptom) {
    if (isSkipped()) {
      return Reply.to(session.without(List.of(symptom.id())));
    }
    String answer = ANSWERS.get(word);
    return answer == null ? said() : reported(symptom, answer);
  }

  /** A failed test made once more. */
  private Reply againAfterMending(ReleaseTest test) {
    Optional<Observable> observable =
        session
            .machine()
            .job()
            .appliance()
            .component(test.component())
            .flatMap(
                part -> session.machine().vocabulary().observable(part.kind(), test.observable()));
    return observable.isPresent()
        ? reading(test.component(), observable.get(), line)
        : looked(test);
  }

  /** How a test came out: a figure where one is read, else y or n, and what was seen. */
  private Reply looked(ReleaseTest looked) {
    String step = looked.step();
    if (isSkipped()) {
      return Reply.to(session.without(List.of(step)));
    }
    Optional<TestDone> figure = looked.figure(line);
    if (figure.isPresent()) {
      return checked(session.saying(ProgressEdit.with(session.content(), figure.get())));
    }
    String plain =
        line.replaceFirst("(?i)^not (met|ok)\\b", "n").replaceFirst("(?i)^(met|ok)\\b", "y");
    String[] told = plain.split("[ ,:]+", 2);
    String answer = ANSWERS.getOrDefault(told[0].toLowerCase(Locale.ROOT), "");
    if (!answer.equals("yes") && !answer.equals("no")) {
      return Reply.to(session, "Answer " + answers(looked) + ", and behind it what you saw.");
    }
    String note = told.length > 1 ? told[1].strip() : "";
    TestDone test =
        answer.equals("yes") && isOneOfSeveral(looked)
            ? looked.metAlone(note)
            : new TestDone(step, answer.equals("yes"), note);
    boolean figureOnly =
        answer.equals("yes")
            && session.prompt() instanceof Prompt.Look
            && Proof.of(session.machine()).release().stream().anyMatch(each -> each.isAt(looked));
    if (figureOnly) {
      return Reply.to(
          session.saying(ProgressEdit.with(session.content(), test)),
          "Noted. The lock-out ends only by the figure: type it, or skip.");
    }
    return checked(session.saying(ProgressEdit.with(session.content(), test)));
  }

  /** Whether a figure is read that is not the only one of its step. */
  private boolean isOneOfSeveral(ReleaseTest looked) {
    return looked.awaited().isPresent()
        && Proof.of(session.machine()).tests().stream()
                .filter(each -> each.step().equals(looked.step()))
                .count()
            > 1;
  }

  private static String answers(ReleaseTest looked) {
    return looked
        .limits()
        .flatMap(limits -> looked.awaited())
        .map(
            read ->
                "with the figure in %s (above the range of the tester: > and the end of the range),"
                        .formatted(read.kind().unit().symbol())
                    + " or y or n")
        .orElse("y or n");
  }

  private Reply reported(Symptom symptom, String answer) {
    boolean weighed = session.machine().vocabulary().weighed().contains(symptom);
    if (session.stage() == Measurement.Stage.AS_LEFT && weighed) {
      return checked(
          session.saying(ProgressEdit.withSymptom(session.content(), symptom.id(), answer)));
    }
    return checked(
        session.saying(ProgressEdit.withReport(session.content(), symptom.id(), answer)));
  }

  private Reply measured(Prompt.Measure measure) {
    String component = measure.question().component();
    if (isSkipped()) {
      return Reply.to(session.without(List.of(measure.question().key())));
    }
    if (word.replace("'", "").matches("can ?(no)?t reach")) {
      return Reply.to(session.without(session.allOf(component)));
    }
    return sayingWhy(measure.question(), reading(component, measure.question().observable(), line));
  }

  /** A question that comes again tells why. */
  private Reply sayingWhy(Question asked, Reply reply) {
    boolean again =
        reply.session() != session
            && reply.session().prompt() instanceof Prompt.Measure measure
            && measure.question().key().equals(asked.key());
    if (!again) {
      return reply;
    }
    List<String> told = new ArrayList<>(reply.told());
    told.add(
        undecided(reply.session().machine(), asked)
            .map(
                finding ->
                    "Kept, and %s%s. Read it again, or skip."
                        .formatted(
                            finding.verdict().words(),
                            finding.remark().isEmpty()
                                ? ""
                                : ": " + finding.remark().replaceFirst("\\.$", "")))
            .orElse(
                "Kept. It does not end what keeps the power off: mend that and read it again, or"
                    + " skip."));
    return new Reply(reply.session(), told, false);
  }

  /** The last reading of something at this stage, if it is held against a limit and undecided. */
  private Optional<Finding> undecided(Case machine, Question asked) {
    Optional<Measurement> last =
        machine.job().measurements(asked.component(), asked.observable().id()).stream()
            .filter(each -> each.stage() == session.stage())
            .reduce((one, other) -> other);
    return last.stream()
        .flatMap(each -> machine.judged(each).stream())
        .filter(each -> each.component().equals(asked.component()))
        .filter(each -> each.observable().equals(asked.observable().id()))
        .filter(each -> each.verdict() != Verdict.CONFORMS)
        .findFirst();
  }

  /** The end of the range of a tester that showed a value above it. */
  private Reply rangeEnd(Prompt.RangeEnd asked) {
    Question question = asked.question();
    if (isSkipped()) {
      Reply kept = reading(question, question.observable(), asked.told(), false);
      return Reply.to(
          kept.session().without(List.of(question.key())),
          "Kept as over range, which decides nothing. Once you know the end of the range: "
              + question.key()
              + " = > 200 "
              + question.observable().kind().unit().symbol()
              + ".");
    }
    String end = line.replaceFirst("^[>≥]\\s*", "");
    String unit = question.observable().kind().unit().symbol();
    String figure = end.matches("[0-9]+([.,][0-9]+)?") ? end + " " + unit : end;
    String rest = asked.told().replaceFirst("^.*?(?= at | with |$)", "");
    return reading(question, question.observable(), "> " + figure + rest, false);
  }

  private Reply reading(String component, Observable observable, String line) {
    return reading(new Question(component, observable, Conditions.NONE), observable, line, true);
  }

  /**
   * A reading.
   *
   * @param askRange whether the end of the range is asked for where only that would decide it
   */
  private Reply reading(Question of, Observable observable, String line, boolean askRange) {
    String component = of.component();
    String text =
        observable.type() == Observable.Type.YES_NO
            ? ANSWERS.getOrDefault(line.toLowerCase(Locale.ROOT), line)
            : line;
    Optional<String> instrument = instrument(text);
    String rest = instrument.isPresent() ? text.substring(0, text.lastIndexOf(WITH)).strip() : text;
    TakenAt told =
        observable.type() == Observable.Type.QUANTITY
            ? TakenAt.of(rest)
            : new TakenAt(rest, Map.of());
    rest = told.reading();
    Map<String, String> at = asked(of);
    at.putAll(told.conditions());
    if (told.conditions().isEmpty() && at.remove(WARM) != null) {
      return Reply.to(session, "Say at which temperature too: " + rest + " at 45 °C.");
    }
    at.remove(WARM);
    ProgressEdit.Written written =
        new ProgressEdit.Written(component, observable.id(), rest, at, instrument, session.stage());
    Session next = session.saying(ProgressEdit.with(session.content(), written));
    next.machine();
    Reply kept = new Reply(next, remarks(next, of, at), false);
    return askRange && isOpenAbove(next, of, rest)
        ? Reply.to(session.asking(new Prompt.RangeEnd(read(of).orElse(of), line)))
        : kept;
  }

  /** What a reading rests on that nobody told: conditions, and the mark of the part. */
  private static List<String> remarks(Session next, Question of, Map<String, String> at) {
    List<String> told = new ArrayList<>();
    List<String> open =
        of.observable().conditions().stream()
            .filter(each -> each.kind().equals(QuantityKind.TEMPERATURE))
            .map(Characteristic::id)
            .filter(each -> !at.containsKey(each))
            .toList();
    if (!open.isEmpty() && isFigure(next, of)) {
      told.add(
          "No %s told: the usual one is assumed. Behind the reading it counts: ... at %s."
              .formatted(
                  String.join(" and ", open),
                  next.machine().market() == Market.NA ? "75 °F" : "24 °C"));
    }
    if (next.stage() == Measurement.Stage.AS_FOUND
        && next.machine().diagnosis().notUsed().contains(of.key())
        && next.machine().findings().stream()
            .noneMatch(each -> of.key().equals(each.component() + "." + each.observable()))) {
      told.add("Kept, but no fault that is known of this machine uses it, nor a limit.");
    }
    Answering after = new Answering(next, "");
    after
        .undecided(next.machine(), of)
        .filter(each -> each.verdict() == Verdict.UNDECIDED)
        .flatMap(each -> new Marked(next.machine()).wanted(of.component(), of.observable()))
        .ifPresent(told::add);
    return told;
  }

  /** Whether the last reading of something is a figure: what is open is so at any temperature. */
  private static boolean isFigure(Session next, Question of) {
    List<Measurement> all = next.machine().job().measurements(of.component(), of.observable().id());
    return of.observable().type() == Observable.Type.QUANTITY
        && !all.isEmpty()
        && all.get(all.size() - 1).readings().stream()
            .noneMatch(each -> each instanceof Reading.OverRange);
  }

  /** Whether a reading is over range, and how far that is would decide it. */
  private boolean isOpenAbove(Session next, Question of, String told) {
    return of.observable().type() == Observable.Type.QUANTITY
        && ReadingParser.parse(told, of.observable()) instanceof Reading.OverRange
        && undecided(next.machine(), of)
            .filter(each -> each.verdict() == Verdict.UNDECIDED)
            .isPresent();
  }

  /**
   * Under which conditions a reading is taken again: those that were asked for, but for a
   * temperature, which whoever reads it has to tell.
   */
  private Map<String, String> asked(Question of) {
    Map<String, String> at = new LinkedHashMap<>();
    Optional<Question> question =
        read(of).filter(asked -> session.stage() == Measurement.Stage.AS_LEFT);
    if (question.isPresent()) {
      Map<String, Quantity> figures = question.get().conditions().figures();
      figures.forEach((name, value) -> at.put(name, value.format()));
      boolean again = !(session.prompt() instanceof Prompt.Measure);
      boolean temperature = at.remove(TEMPERATURE) != null;
      if (ProofStep.isWarm(question.get()) || again && temperature) {
        at.put(WARM, "");
      }
    }
    return at;
  }

  /** What is asked to be read now, if it is the same as something. */
  private Optional<Question> read(Question same) {
    Optional<Question> asked = Optional.empty();
    if (session.prompt() instanceof Prompt.Outside outside) {
      asked = Optional.of(outside.question());
    } else if (session.prompt() instanceof Prompt.Measure measure) {
      asked = Optional.of(measure.question());
    } else if (session.prompt() instanceof Prompt.RangeEnd end) {
      asked = Optional.of(end.question());
    }
    return asked.filter(each -> each.key().equals(same.key()));
  }

  /** The instrument that is named behind a reading, {@code 26 ohm with meter}. */
  private Optional<String> instrument(String text) {
    int with = text.lastIndexOf(WITH);
    String id = with < 0 ? "" : text.substring(with + WITH.length()).strip();
    return Ids.isId(id) ? Optional.of(id) : Optional.empty();
  }

  /** A reading of something else than what is asked, or an answer about a symptom. */
  private Reply named(String words, String told) {
    Optional<Json.Obj> marked = new Marked(session.machine()).in(session.content(), words, told);
    if (marked.isPresent()) {
      Session next = session.saying(MarkedEdit.withKinds(marked.get(), session.workshop().kinds()));
      next.machine();
      return Reply.to(next, "Kept as marked: " + words + ", " + told + ".");
    }
    Optional<Symptom> exact =
        session.machine().vocabulary().symptom(words.toLowerCase(Locale.ROOT).replace(' ', '-'));
    if (exact.isPresent() && ANSWERS.containsKey(told.toLowerCase(Locale.ROOT))) {
      return reported(exact.get(), ANSWERS.get(told.toLowerCase(Locale.ROOT)));
    }
    List<Words.Readable> readable = Words.readable(words, session.machine());
    if (readable.size() == 1) {
      return naming(readable.get(0), told);
    }
    List<Symptom> symptoms = OwnersWords.meant(words, session.machine().vocabulary().symptoms());
    String answer = ANSWERS.get(told.toLowerCase(Locale.ROOT));
    if (readable.isEmpty() && symptoms.size() == 1 && answer != null) {
      return reported(symptoms.get(0), answer);
    }
    List<String> near = readable.stream().map(Words.Readable::key).limit(TOLD).toList();
    return Reply.to(
        session,
        readable.isEmpty()
            ? "Nothing here is called '" + words + "'."
            : "Which: " + String.join(", ", near) + "?");
  }

  /** A reading that is found by its words, told by what it was taken for. */
  private Reply naming(Words.Readable readable, String told) {
    Reply reply = reading(readable.component(), readable.observable(), told);
    if (reply.session() == session) {
      return reply;
    }
    List<String> lines = new ArrayList<>();
    lines.add(
        "Taken as read: %s: %s."
            .formatted(Component.words(readable.component()), readable.observable().title()));
    lines.addAll(reply.told());
    return new Reply(reply.session(), lines, reply.ended());
  }

  private List<String> list() {
    List<String> told = new ArrayList<>();
    for (Diagnosis.NextMeasurement next : session.machine().diagnosis().next()) {
      if (told.size() < TOLD) {
        told.add(
            "%s: %s (%s min, %s)"
                .formatted(
                    next.question().component(),
                    next.question().observable().title(),
                    Math.round(next.minutes()),
                    next.question().observable().procedure().hazard().word()));
      }
    }
    return told.isEmpty() ? List.of("Nothing more to read.") : told;
  }

  private List<String> why() {
    List<Diagnosis.FaultProbability> faults = session.machine().diagnosis().faults();
    if (faults.isEmpty()) {
      return List.of("Nothing is known yet.");
    }
    Fault fault = faults.get(0).fault();
    List<String> told = new ArrayList<>();
    told.add(fault.title() + ":");
    for (Diagnosis.RankedState state : session.machine().diagnosis().ranking()) {
      if (state.faults().stream().anyMatch(each -> each.fault().key().equals(fault.key()))) {
        for (Diagnosis.Evidence each : state.evidence()) {
          told.add(sign(each.bits()) + " " + each.component() + ": " + each.shown());
        }
        for (Diagnosis.ReportEvidence each : state.reports()) {
          told.add(sign(each.bits()) + " " + each.symptom().title() + ": " + each.answer().id());
        }
        break;
      }
    }
    return told;
  }

  private static String sign(double bits) {
    return bits > 0.05 ? "  for" : bits < -0.05 ? "  against" : "  neither";
  }
}
