package kelter.cli.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import kelter.core.diagnosis.Remedy;
import kelter.core.file.catalogue.KindFile;
import kelter.core.file.catalogue.LockOutFile;
import kelter.core.file.catalogue.WorkStepsFile;
import kelter.core.proof.Proof;
import kelter.core.report.OwnersPage;
import kelter.core.report.Point;
import kelter.core.safety.Hazard;
import kelter.core.safety.LockState;
import kelter.core.safety.Taken;
import kelter.core.safety.lockout.ActiveRow;
import kelter.core.safety.lockout.LockOut;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.safety.lockout.table.LockOutRow;
import kelter.core.safety.lockout.table.Told;
import kelter.core.session.Prompt;
import kelter.core.session.Reply;
import kelter.core.session.Session;
import kelter.core.sheet.Bag;
import kelter.core.sheet.WorkSheet;
import kelter.core.shop.Shop;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;
import kelter.core.workshop.Case;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * On every kind, every row and random jobs: a session asks for no reading that the table forbids
 * and for none before its first line was read, and bag and sheet hold no part that it bars. {@code
 * -Dkelter.lockout.sessions=2000} makes it long.
 */
class LedLockOutTest {

  private static final int SESSIONS = Integer.getInteger("kelter.lockout.sessions", 40);
  private static final long SEED = 20261129;

  /** So many prompts of a session are looked at. */
  private static final int PROMPTS = 3;

  /** And so many of one that proves work. */
  private static final int PROOFS = 8;

  private static final Set<String> BEFORE_POWER =
      Set.of("look", "earth", "insulation", "polarity", "one-minute");

  private static final List<String> KINDS = KindFile.shipped();

  static List<String> kinds() {
    return KINDS;
  }

  static List<LockOutRow> rows() {
    return LockOutFile.shipped().rows();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void everyKind(String kind) {
    new Led(kind, "skip").hold(new SplittableRandom(SEED), kind);
  }

  /** Each row by words of it, told, doubted and denied, and by each of its symptoms. */
  @ParameterizedTest
  @MethodSource("rows")
  void everyRow(LockOutRow row) {
    SplittableRandom random = new SplittableRandom(SEED + row.id().hashCode());
    for (Told told : row.when().told()) {
      String kind = kindOf(row, told, random);
      String what = row.id() + " of " + kind;
      if (!told.phrases().isEmpty()) {
        String words = told.phrases().get(random.nextInt(told.phrases().size())).text();
        for (String begins : List.of("It is ", "Maybe it is ", "There is no ")) {
          new Led(kind, begins + words).hold(random, what + ": " + begins + words);
        }
      }
      Led led = new Led(kind, "skip");
      led.types(told.symptom() + " = y");
      led.hold(random, what);
    }
  }

  /** Rows that hold by a reading. */
  @ParameterizedTest
  @CsvSource({
    "earth, water-boiler, supply-cord.protective-conductor-resistance = 5 ohm",
    "insulation, water-boiler, heater.insulation-resistance = 40 kOhm",
    "leakage, water-boiler, supply-cord.protective-conductor-current = 25 mA",
    "sheath, water-boiler, heater.sheath-damaged = y",
    "stuck-contact, water-boiler, relay.closed-when-off = y",
    "supply-voltage, washer-extractor, supply.voltage-idle = 272 V",
    "hot-joint, washing-machine, supply-cord.plug-hot = y",
    "lint, tumble-dryer, air-heater.lint = thick",
    "interlock, tumble-dryer, door-switch.open-resistance = 1 ohm"
  })
  void everyRowByAReading(String row, String kind, String line) {
    Led led = new Led(kind, "skip");
    led.types(line);
    assertTrue(led.session.machine().lockOut().row(row).isPresent(), row + ": " + line);
    led.hold(new SplittableRandom(SEED), row);
  }

  /** A kind of machine of which the row speaks. */
  private static String kindOf(LockOutRow row, Told told, RandomGenerator random) {
    int start = random.nextInt(KINDS.size());
    for (int i = 0; i < KINDS.size(); i++) {
      String kind = KINDS.get((start + i) % KINDS.size());
      Case machine = Call.of(kind).answered(told.symptom(), "yes").open();
      if (machine.lockOutAsFound().row(row.id()).isPresent()) {
        return kind;
      }
    }
    return KINDS.get(start);
  }

  @Test
  void randomSessions() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int number = 0; number < SESSIONS; number++) {
      RandomGenerator each = random.split();
      String kind = KINDS.get(each.nextInt(KINDS.size()));
      Led led = new Led(kind, "skip");
      List<Symptom> symptoms = Call.WORKSHOP.vocabulary().symptoms();
      for (int k = each.nextInt(3); k > 0; k--) {
        Symptom symptom = symptoms.get(each.nextInt(symptoms.size()));
        led.types(symptom.id() + " = " + yesOrNo(each));
      }
      led.hold(each, number + " " + led.session.content());
    }
  }

  private static String yesOrNo(RandomGenerator random) {
    return random.nextBoolean() ? "y" : "n";
  }

  /** A session, and which cautions were read in it. */
  private static final class Led {

    private final List<String> read = new ArrayList<>();
    private Session session;

    Led(String kind, String said) {
      session = Session.begin(Call.WORKSHOP, "2026-11-29", id -> id + "-1");
      types(kind);
      types("6");
      types(said);
    }

    void heeds() {
      while (session.prompt() instanceof Prompt.Heed heed) {
        read.add(heed.caution().text());
        session = session.answer("ok").session();
      }
    }

    /** Types a line once all cautions are read. */
    void types(String line) {
      heeds();
      Reply reply = session.answer(line);
      assertNotSame(session, reply.session(), line + ": " + reply.told());
      session = reply.session();
    }

    /** Answers at random what is asked, and looks at each prompt, the bag and the sheet. */
    void hold(RandomGenerator random, String what) {
      for (int i = 0; i < PROMPTS; i++) {
        heeds();
        if (session.prompt() instanceof Prompt.Ask) {
          types(yesOrNo(random));
        } else if (session.prompt() instanceof Prompt.Measure measure) {
          String first = session.machine().lockOut().text();
          assertTrue(first.isEmpty() || read.contains(first), what + ": not read: " + first);
          assertEquals(List.of(), unasked(session.machine()), what);
          assertPermitted(session.machine(), measure, what);
          types(reading(measure.question().observable(), random));
        }
      }
      assertBagAndSheet(session.machine(), what);
      prove(random, what);
    }

    /** Goes on after the work, at random. */
    void prove(RandomGenerator random, String what) {
      session = Session.proving(Call.WORKSHOP, session.content());
      for (int i = 0; i < PROOFS; i++) {
        heeds();
        Prompt prompt = session.prompt();
        if (prompt instanceof Prompt.Measure measure) {
          assertPermitted(session.machine(), measure, what);
          assertWaits(session.machine(), measure, what);
          boolean warm = measure.question().conditions().figure("temperature").isPresent();
          types(reading(measure.question().observable(), random) + (warm ? " at 45 Cel" : ""));
        } else if (prompt instanceof Prompt.Look look) {
          assertMayBePowered(session.machine(), look.test(), what);
          types(yesOrNo(random));
        } else if (prompt instanceof Prompt.Ask) {
          assertTrue(session.machine().lockOut().allowed().contains(Taken.RUNNING), what);
          types("n");
        } else if (prompt instanceof Prompt.Work) {
          types("skip");
        }
      }
      assertReport(session.machine(), what);
    }
  }

  /** The owner of a machine that something found locks out reads No first. */
  private static void assertReport(Case machine, String what) {
    boolean locked =
        machine.lockOut().rows().stream()
            .anyMatch(
                row ->
                    !row.standing()
                        && !row.quiet()
                        && row.row().only().isEmpty()
                        && row.row().when().kinds().isEmpty());
    List<Point> points =
        OwnersPage.of(
            machine,
            Proof.of(machine),
            WorkStepsFile.shipped(),
            new OwnersPage.Beside("", false, Optional.empty()));
    Point use = points.get(0);
    assertTrue(!locked || use.warning(), what + ": " + use + " " + machine.lockOut());
    assertTrue(!locked || use.answers().get(0).startsWith("No"), what + ": " + use);
  }

  /** After the work nothing is read under power before earth, insulation, poles and a minute. */
  private static void assertWaits(Case machine, Prompt.Measure measure, String what) {
    boolean powered =
        measure.question().observable().procedure().hazard().compareTo(Hazard.DEAD) > 0;
    List<String> open =
        machine.lockOut().backToPower().stream()
            .filter(test -> test.isOpen() && BEFORE_POWER.contains(test.step()))
            .map(ReleaseTest::step)
            .toList();
    assertTrue(!powered || open.isEmpty(), what + ": " + measure.question().key() + " " + open);
  }

  /** Nothing is put under power that a row or a suspicion holds back. */
  private static void assertMayBePowered(Case machine, ReleaseTest test, String what) {
    LockOut lockOut = machine.lockOut();
    boolean held = !lockOut.suspicions().isEmpty();
    for (ActiveRow row : lockOut.rows()) {
      boolean last = row.openDead().isEmpty() && !row.openLast().isEmpty();
      held |= row.row().only().isEmpty() && !row.row().allowed().contains(Taken.RUNNING) && !last;
    }
    assertTrue(!(held && test.powered()), what + ": " + test.step() + " " + lockOut);
    assertTrue(lockOut.state() != LockState.D, what + ": " + test.step() + " " + lockOut);
  }

  /** What was said of danger, denied or doubtful, and not asked for. */
  private static List<String> unasked(Case machine) {
    List<String> ask = new ArrayList<>(machine.lockOut().ask());
    machine.job().complaint().symptoms().forEach(report -> ask.remove(report.symptom()));
    return ask;
  }

  private static void assertPermitted(Case machine, Prompt.Measure measure, String what) {
    LockOut lockOut = machine.lockOut();
    String component = measure.question().component();
    Observable observable = measure.question().observable();
    Hazard hazard = observable.procedure().hazard();
    String told = what + ": " + measure.question().key() + " " + lockOut;
    assertTrue(lockOut.allows(component, observable.id(), hazard), told);
    assertTrue(lockOut.state() != LockState.D || hazard == Hazard.NONE, told);
    assertTrue(lockOut.state() == LockState.A || hazard != Hazard.LIVE, told);
  }

  private static void assertBagAndSheet(Case machine, String what) {
    LockOut lockOut = machine.lockOut();
    Bag bag = Bag.of(machine, Shop.UNKNOWN);
    for (Bag.Item item : bag.items()) {
      assertTrue(lockOut.mends(item.remedy().component()), what + ": " + item.remedy().key());
    }
    WorkSheet sheet = WorkSheet.of(machine, bag, WorkStepsFile.shipped(), Optional.empty());
    assertEquals(lockOut.text(), sheet.first(), what);
    for (Remedy remedy : sheet.remedies()) {
      assertTrue(lockOut.mends(remedy.component()), what + ": " + remedy.key());
    }
  }

  private static String reading(Observable observable, RandomGenerator random) {
    return switch (observable.type()) {
      case YES_NO -> yesOrNo(random);
      case GRADE -> observable.grades().get(random.nextInt(observable.grades().size()));
      case QUANTITY -> {
        double low = observable.span().low();
        double si = low + random.nextDouble() * (observable.span().high() - low);
        long told = Math.round(observable.kind().fromSi(si, observable.kind().unit()));
        String unit = observable.kind().unit().code();
        yield unit.equals("1") ? "" + told : told + " " + unit;
      }
    };
  }
}
