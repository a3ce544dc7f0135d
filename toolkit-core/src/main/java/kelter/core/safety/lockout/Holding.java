package kelter.core.safety.lockout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.check.Finding;
import kelter.core.job.Measurement;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.safety.lockout.table.LockOutRow;
import kelter.core.safety.lockout.table.LockOutTable;
import kelter.core.vocabulary.OwnersWords;

/**
 * Which rows hold.
 *
 * @param active the rows that hold, in the order of the table
 * @param ask the ids of symptoms to ask for once
 */
record Holding(List<ActiveRow> active, List<String> ask) {

  /** The row that holds for what a module adds. */
  private static final String OF_MODULE = "module-finding";

  static Holding of(LockOutTable table, Situation situation) {
    List<ActiveRow> active = new ArrayList<>();
    Set<String> ask = new LinkedHashSet<>();
    Set<String> explained = new HashSet<>();
    List<List<String>> said = OwnersWords.clauses(situation.said());
    for (LockOutRow row : table.rows()) {
      Trigger trigger = Trigger.of(row, situation, said);
      ask.addAll(trigger.ask());
      for (Measurement measurement : trigger.measurements()) {
        explained.add(key(measurement.component(), measurement.observable()));
      }
      explained.addAll(trigger.symptoms());
      active(table, row, situation, trigger).ifPresent(active::add);
    }
    table
        .row(OF_MODULE)
        .flatMap(row -> active(table, row, situation, ofModules(situation, explained)))
        .ifPresent(active::add);
    return new Holding(opened(active), List.copyOf(ask));
  }

  private static Optional<ActiveRow> active(
      LockOutTable table, LockOutRow row, Situation situation, Trigger trigger) {
    if (!trigger.holds()) {
      return Optional.empty();
    }
    Release release = new Release(table, situation, row, trigger.measurements());
    if (release.isGiven() || !release.isClear(row.when().clear())) {
      return Optional.empty();
    }
    List<Reread> dead = release.openDead();
    boolean supervised =
        !dead.isEmpty()
            && row.supervised().filter(step -> release.isRead(step.after())).isPresent();
    return Optional.of(
        new ActiveRow(
            row,
            new MachineFigures(situation).fill(row.text().in(situation.market())),
            trigger.because(),
            trigger.standing(),
            trigger.standing() && !row.only().isEmpty() && !situation.isNamed(row.when().kinds()),
            dead,
            release.openLast(),
            false,
            supervised));
  }

  /** A powered re-test opens last: when no row has anything left to read dead. */
  private static List<ActiveRow> opened(List<ActiveRow> active) {
    boolean nothingDead =
        active.stream()
            .allMatch(
                each ->
                    each.openDead().isEmpty()
                        && (each.standing() || each.row().until().byReadings()));
    if (!nothingDead) {
      return active;
    }
    List<ActiveRow> opened = new ArrayList<>();
    for (ActiveRow each : active) {
      opened.add(
          new ActiveRow(
              each.row(),
              each.text(),
              each.because(),
              each.standing(),
              each.quiet(),
              each.openDead(),
              each.openLast(),
              !each.openLast().isEmpty(),
              each.supervised()));
    }
    return opened;
  }

  /** What a check of a module says keeps the machine unplugged, and no row of the table names. */
  private static Trigger ofModules(Situation situation, Set<String> explained) {
    List<Measurement> measurements = new ArrayList<>();
    List<Ground> because = new ArrayList<>();
    for (Finding finding : situation.findings()) {
      boolean said = situation.answer(finding.observable()).filter(a -> a == Answer.NO).isPresent();
      boolean named =
          explained.contains(key(finding.component(), finding.observable()))
              || explained.contains(finding.observable());
      if (finding.keepsUnplugged() && !named && !said) {
        because.add(
            Ground.ofReading(Ground.Sort.FINDING, finding.component(), finding.observable(), ""));
        measurements.addAll(
            situation.job().measurements(finding.component(), finding.observable()));
      }
    }
    return new Trigger(measurements, Set.of(), because, Set.of(), !because.isEmpty(), false);
  }

  private static String key(String component, String observable) {
    return component + "." + observable;
  }
}
