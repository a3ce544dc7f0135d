package kelter.core.safety.lockout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.check.Limits;
import kelter.core.job.Measurement;
import kelter.core.job.Measurement.Stage;
import kelter.core.safety.Hazard;
import kelter.core.safety.lockout.table.LockOutRow;
import kelter.core.safety.lockout.table.LockOutTable;
import kelter.core.safety.lockout.table.Retest;
import kelter.core.safety.lockout.table.SafetyStep;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Observable;

/**
 * What still has to be read before a row lets go. A reading counts if it is the last of its stage,
 * is decided and conforms, and was taken in the condition that the row asks for.
 */
record Release(
    LockOutTable table, Situation situation, LockOutRow row, List<Measurement> triggers) {

  private static final String TEMPERATURE = "temperature";

  /** Stages of which readings count. */
  private enum Counting {
    AS_FOUND,
    AS_LEFT,
    ANY;

    boolean counts(Stage stage) {
      return switch (this) {
        case AS_FOUND -> stage == Stage.AS_FOUND;
        case AS_LEFT -> stage == Stage.AS_LEFT;
        case ANY -> true;
      };
    }
  }

  /** Whether the row is released. */
  boolean isGiven() {
    boolean recorded = row.until().record() && situation.job().records().containsKey(row.id());
    boolean seen =
        row.when().told().stream().anyMatch(each -> situation.isSeenAfterWork(each.symptom()));
    return recorded
        || !seen && row.until().byReadings() && openDead().isEmpty() && openLast().isEmpty();
  }

  /** What is still to be read dead. */
  List<Reread> openDead() {
    List<Reread> open = new ArrayList<>();
    for (Measurement trigger : same()) {
      if (!isPowered(trigger)) {
        addIfOpen(again(trigger), counting(), open);
      }
    }
    if (row.until().same() && triggers.isEmpty()) {
      open.add(Reread.NOTHING_KNOWN);
    }
    open.addAll(open(row.until().dead(), counting()));
    return open;
  }

  /** What is still to be read powered. */
  List<Reread> openLast() {
    List<Reread> open = open(row.until().last(), counting());
    for (Measurement trigger : same()) {
      if (isPowered(trigger)) {
        addIfOpen(again(trigger), counting(), open);
      }
    }
    return open;
  }

  /** What made the row hold and has to be read again. */
  private List<Measurement> same() {
    return row.until().same() ? triggers : List.of();
  }

  private static Reread again(Measurement trigger) {
    return Reread.of(trigger.component(), trigger.observable(), false);
  }

  private boolean isPowered(Measurement trigger) {
    return situation
        .observable(trigger.component(), trigger.observable())
        .filter(observable -> observable.procedure().hazard().compareTo(Hazard.DEAD) > 0)
        .isPresent();
  }

  /** Whether some readings conform, whenever they were taken. */
  boolean isRead(List<Retest> retests) {
    return open(retests, Counting.ANY).isEmpty();
  }

  /** Whether some readings conform before any work. */
  boolean isClear(List<Retest> retests) {
    return open(retests, Counting.AS_FOUND).isEmpty();
  }

  private Counting counting() {
    return row.until().anyStage() ? Counting.ANY : Counting.AS_LEFT;
  }

  private List<Reread> open(List<Retest> retests, Counting counting) {
    List<Reread> open = new ArrayList<>();
    for (Retest retest : retests) {
      List<String> components = components(retest);
      if (components.isEmpty() && !isNoted(retest, counting)) {
        open.add(withoutPart(retest, counting));
      }
      for (String component : components) {
        addIfOpen(Reread.of(component, retest.observable(), retest.warm()), counting, open);
      }
    }
    return open;
  }

  /** What is read at the connection of a machine without a part for it is written to a test. */
  private Reread withoutPart(Retest retest, Counting counting) {
    return counting == Counting.AS_FOUND
        ? Reread.NOTHING_KNOWN
        : table
            .reading(retest.observable())
            .map(step -> Reread.at(step.id(), retest.observable()))
            .orElse(Reread.NOTHING_KNOWN);
  }

  private boolean isNoted(Retest retest, Counting counting) {
    Optional<String> step = table.reading(retest.observable()).map(SafetyStep::id);
    Optional<Observable> observable =
        retest.of().stream()
            .flatMap(kind -> situation.vocabulary().observable(kind, retest.observable()).stream())
            .findFirst();
    Optional<Limits> limits = new MachineFigures(situation).limits(retest.observable());
    return counting != Counting.AS_FOUND
        && situation.job().progress().tests().stream()
            .filter(test -> test.met() && step.filter(test.step()::equals).isPresent())
            .flatMap(test -> NotedFigure.of(test.note(), observable, limits).stream())
            .anyMatch(figure -> figure.result() == ReleaseTest.Result.MET);
  }

  private List<String> components(Retest retest) {
    if (!retest.of().isEmpty()) {
      return situation.readable(retest.of(), retest.observable());
    }
    return triggers.stream()
        .map(Measurement::component)
        .distinct()
        .filter(component -> situation.observable(component, retest.observable()).isPresent())
        .toList();
  }

  private void addIfOpen(Reread again, Counting counting, List<Reread> open) {
    Optional<Measurement> last = Optional.empty();
    for (Measurement each : situation.job().measurements(again.component(), again.observable())) {
      boolean counts = counting.counts(each.stage()) && (!again.warm() || isWarm(each));
      last = counts ? Optional.of(each) : last;
    }
    boolean good = last.filter(each -> new Read(situation).conforms(row, each)).isPresent();
    if (!good && !open.contains(again)) {
      open.add(again);
    }
  }

  private boolean isWarm(Measurement measurement) {
    boolean tells =
        situation
            .observable(measurement.component(), measurement.observable())
            .filter(observable -> names(observable.conditions()).contains(TEMPERATURE))
            .isPresent();
    return !tells || measurement.conditions().si(TEMPERATURE, Double.NaN) >= Retest.WARM;
  }

  private static Set<String> names(List<Characteristic> conditions) {
    return Set.copyOf(conditions.stream().map(Characteristic::id).toList());
  }
}
