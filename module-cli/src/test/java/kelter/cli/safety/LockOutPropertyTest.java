package kelter.cli.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import kelter.core.catalogue.Kind;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Remedy;
import kelter.core.file.catalogue.KindFile;
import kelter.core.file.catalogue.LockOutFile;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Market;
import kelter.core.safety.Hazard;
import kelter.core.safety.LockState;
import kelter.core.safety.Taken;
import kelter.core.safety.lockout.ActiveRow;
import kelter.core.safety.lockout.LockOut;
import kelter.core.safety.lockout.Reread;
import kelter.core.safety.lockout.table.LockOutRow;
import kelter.core.safety.lockout.table.Told;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Phrase;
import kelter.core.vocabulary.Symptom;
import kelter.core.workshop.Case;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * On every kind, every row, every demo job and many random jobs: nothing that the state forbids is
 * proposed, and nothing that it allows is lost. {@code -Dkelter.lockout.jobs=20000} makes it long.
 */
class LockOutPropertyTest {

  private static final int JOBS = Integer.getInteger("kelter.lockout.jobs", 2000);
  private static final long SEED = 20261129;

  /** On so many kinds a row is looked at closely. */
  private static final int KINDS_OF_A_ROW = 4;

  private static final Map<String, Job> PARTS = new ConcurrentHashMap<>();
  private static final List<LockOutRow> ROWS = LockOutFile.shipped().rows();

  static List<String> kinds() {
    return KindFile.shipped();
  }

  static List<LockOutRow> rows() {
    return ROWS;
  }

  static List<Path> demos() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("..", "demo", "jobs"))) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void everyKind(String kind) {
    hold(Call.of(kind).open(), kind);
    for (String market : List.of("UK", "NA")) {
      hold(Call.of(kind).in(market).open(), kind + market);
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  void everyDemoJob(Path demo) {
    hold(Call.WORKSHOP.open(Call.WORKSHOP.read(demo)), demo.toString());
  }

  /** Every row holds by each of its signs, on some kind. */
  @ParameterizedTest
  @MethodSource("rows")
  void everyRow(LockOutRow row) {
    boolean needsMore = !row.when().clear().isEmpty();
    for (Told told : row.when().told()) {
      List<Case> holding = new ArrayList<>();
      for (String kind : kinds()) {
        Case machine = Call.of(kind).answered(told.symptom(), "yes").open();
        if (machine.lockOutAsFound().row(row.id()).isPresent()) {
          holding.add(machine);
        }
      }
      assertTrue(!holding.isEmpty() || needsMore, row.id() + " " + told.symptom());
      for (Case machine : holding.subList(0, Math.min(KINDS_OF_A_ROW, holding.size()))) {
        hold(machine, row.id() + " " + machine.job().appliance().kind());
      }
      for (Phrase phrase : told.phrases()) {
        String words = phrase.text();
        assertTrue(needsMore || isSaid(row, words.replace(".", "")), row.id() + ": " + words);
      }
    }
  }

  private static boolean isSaid(LockOutRow row, String words) {
    boolean said = false;
    for (String kind : List.of("tumble-dryer", "hob", "storage-water-heater", "refrigerator")) {
      said |= Call.of(kind).said(words).open().lockOutAsFound().row(row.id()).isPresent();
    }
    return said;
  }

  @Test
  void manyRandomJobs() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int number = 0; number < JOBS; number++) {
      Call call = call(random.split());
      hold(call.open(), number + " " + call);
    }
  }

  private static Call call(RandomGenerator random) {
    List<String> kinds = kinds();
    Call call =
        Call.of(kinds.get(random.nextInt(kinds.size())))
            .in(List.of("EU", "UK", "NA").get(random.nextInt(3)));
    Job job = PARTS.computeIfAbsent(call.kind(), kind -> Call.of(kind).open().job());
    List<Symptom> symptoms = Call.WORKSHOP.vocabulary().symptoms();
    for (int k = random.nextInt(4); k > 0; k--) {
      Symptom symptom = symptoms.get(random.nextInt(symptoms.size()));
      call = call.answered(symptom.id(), List.of("yes", "no", "sometimes").get(random.nextInt(3)));
    }
    if (random.nextInt(4) == 0) {
      List<Told> told = ROWS.get(random.nextInt(ROWS.size())).when().told();
      if (!told.isEmpty()) {
        List<Phrase> phrases = told.get(random.nextInt(told.size())).phrases();
        String denied = random.nextInt(3) == 0 ? "There is no " : "It ";
        call = call.said(denied + phrases.get(random.nextInt(phrases.size())).text());
      }
    }
    for (int k = random.nextInt(5); k > 0; k--) {
      call = read(call, job, random);
    }
    return call;
  }

  private static Call read(Call call, Job job, RandomGenerator random) {
    List<Component> parts = new ArrayList<>(job.appliance().components());
    Kind kind = Call.WORKSHOP.kinds().kind(call.kind()).orElseThrow();
    parts.removeIf(
        part ->
            kind.part(part.id())
                .filter(each -> !each.isIn(Market.valueOf(call.market())))
                .isPresent());
    if (parts.isEmpty()) {
      return call;
    }
    Component part = parts.get(random.nextInt(parts.size()));
    List<Observable> all = Call.WORKSHOP.vocabulary().kind(part.kind()).orElseThrow().observables();
    if (all.isEmpty()) {
      return call;
    }
    Observable observable = all.get(random.nextInt(all.size()));
    String stage = random.nextInt(3) == 0 ? "as-left" : "as-found";
    return call.read(part.id(), observable.id(), reading(observable, random), "", stage);
  }

  private static String reading(Observable observable, RandomGenerator random) {
    return switch (observable.type()) {
      case YES_NO -> random.nextBoolean() ? "yes" : "no";
      case GRADE -> observable.grades().get(random.nextInt(observable.grades().size()));
      case QUANTITY -> {
        double low = Math.max(observable.span().low(), observable.span().high() * 1e-9);
        double high = observable.span().high();
        double share = random.nextDouble();
        double si =
            observable.logarithmic() && low > 0
                ? low * Math.pow(high / low, share)
                : observable.span().low() + share * (high - observable.span().low());
        double told = observable.kind().fromSi(si, observable.kind().unit());
        yield "%s %s".formatted(Double.toString(told), unit(observable)).strip();
      }
    };
  }

  private static String unit(Observable observable) {
    String code = observable.kind().unit().code();
    return code.equals("1") ? "" : code;
  }

  private static void hold(Case machine, String what) {
    LockOut lockOut = machine.lockOut();
    Diagnosis diagnosis = machine.diagnosis();
    List<String> proposed = new ArrayList<>();
    for (Diagnosis.NextMeasurement next : diagnosis.next()) {
      Observable observable = next.question().observable();
      proposed.add(next.question().key());
      assertPermitted(lockOut, next.question().component(), observable, what);
    }
    diagnosis.plan().forEach(step -> assertMends(machine, lockOut, step.remedy(), what));
    diagnosis.takeAlong().forEach(each -> assertMends(machine, lockOut, each.remedy(), what));
    machine.remedies().forEach(each -> assertMends(machine, lockOut, each, what));
    assertEquals(lost(machine, proposed), List.of(), what);
    boolean first = proposed.isEmpty() || lockOut.suspicions().isEmpty();
    assertTrue(first || isBeforeOthers(lockOut, diagnosis), what);
  }

  /** Derived from the rows once more, in other words than those of the code. */
  private static void assertPermitted(
      LockOut lockOut, String component, Observable observable, String what) {
    Hazard hazard = observable.procedure().hazard();
    String told = what + ": " + component + "." + observable.id() + " " + lockOut;
    assertFalse(lockOut.state() == LockState.D && hazard != Hazard.NONE, told);
    assertFalse(lockOut.state() != LockState.A && hazard == Hazard.LIVE, told);
    assertFalse(!lockOut.suspicions().isEmpty() && hazard.compareTo(Hazard.DEAD) > 0, told);
    for (ActiveRow each : lockOut.rows()) {
      boolean machine = each.row().only().isEmpty();
      boolean opened =
          each.openLast().contains(Reread.of(component, observable.id(), false))
              && each.openDead().isEmpty();
      assertFalse(machine && !opened && !each.row().allowed().contains(Taken.of(hazard)), told);
      boolean inside = hazard == Hazard.DEAD && !component.equals("supply-cord");
      boolean charge = each.row().id().equals("dc-link");
      assertFalse(charge && inside && !observable.id().equals("dc-link-voltage"), told);
    }
  }

  private static void assertMends(Case machine, LockOut lockOut, Remedy remedy, String what) {
    String part = remedy.component();
    assertTrue(lockOut.mends(part), what + ": " + remedy.key());
    assertFalse(lockOut.state() == LockState.D, what + ": " + remedy.key());
    String kind =
        machine.kind().flatMap(each -> each.part(part)).map(each -> each.kind()).orElse("");
    assertFalse(kind.equals("refrigerant-circuit"), what + ": " + remedy.key());
  }

  /** What the same engine proposes without the table, and the table allows, is proposed. */
  private static List<String> lost(Case machine, List<String> proposed) {
    List<String> lost = new ArrayList<>();
    for (Diagnosis.NextMeasurement next : WithoutTable.next(machine)) {
      boolean allowed =
          machine
              .lockOut()
              .allows(
                  next.question().component(),
                  next.question().observable().id(),
                  next.question().observable().procedure().hazard());
      if (allowed && !proposed.contains(next.question().key())) {
        lost.add(next.question().key());
      }
    }
    return lost;
  }

  private static boolean isBeforeOthers(LockOut lockOut, Diagnosis diagnosis) {
    boolean other = false;
    for (Diagnosis.NextMeasurement next : diagnosis.next()) {
      boolean first =
          lockOut.goesFirst(next.question().component(), next.question().observable().id());
      if (first && other) {
        return false;
      }
      other |= !first;
    }
    return true;
  }
}
