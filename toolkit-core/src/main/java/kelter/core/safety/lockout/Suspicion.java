package kelter.core.safety.lockout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Verdict;
import kelter.core.job.Measurement;
import kelter.core.safety.lockout.table.LockOutRow;
import kelter.core.safety.lockout.table.LockOutTable;
import kelter.core.safety.lockout.table.Suspect;

/**
 * A fault that would lock the machine out and is likely: until its test is in, nothing is powered.
 *
 * @param row the id of the row
 * @param component the id of the component
 * @param faultId the id of the fault
 * @param fault what is wrong, for a person
 * @param probability how likely, 0 to 1
 * @param test the word for what is looked at or read dead first; empty if nothing is known that
 *     would rule it out
 */
public record Suspicion(
    String row,
    String component,
    String faultId,
    String fault,
    double probability,
    Optional<String> test) {

  /**
   * A fault with its chance.
   *
   * @param component the id of the component
   * @param id the id of the fault
   * @param title what is wrong, for a person
   * @param probability how likely, 0 to 1
   */
  public record Likely(String component, String id, String title, double probability) {}

  /**
   * What is suspected.
   *
   * @param table the table
   * @param situation the job
   * @param faults faults with their chances
   * @return the likely ones whose test is not in, in the order of the faults
   */
  public static List<Suspicion> of(LockOutTable table, Situation situation, List<Likely> faults) {
    List<Suspicion> all = new ArrayList<>();
    for (Likely fault : faults) {
      if (fault.probability() >= Suspect.LIKELY) {
        for (LockOutRow row : table.rows()) {
          of(row, situation, fault).ifPresent(all::add);
        }
      }
    }
    return all;
  }

  private static Optional<Suspicion> of(LockOutRow row, Situation situation, Likely fault) {
    String kind = situation.kindOf(fault.component());
    Optional<Suspect> suspect = row.suspect().filter(each -> each.names(fault.id(), kind));
    if (suspect.isEmpty() || situation.job().records().containsKey(row.id())) {
      return Optional.empty();
    }
    Optional<String> test =
        suspect.get().tests().stream()
            .filter(word -> situation.observable(fault.component(), word).isPresent())
            .findFirst();
    if (test.filter(word -> isIn(situation, row, fault.component(), word)).isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        new Suspicion(
            row.id(), fault.component(), fault.id(), fault.title(), fault.probability(), test));
  }

  /** Whether a test was made and decided. */
  private static boolean isIn(
      Situation situation, LockOutRow row, String component, String observable) {
    Read read = new Read(situation);
    for (Measurement measurement : situation.job().measurements(component, observable)) {
      boolean beyond =
          row.when().readings().stream().anyMatch(limit -> read.isBeyond(limit, measurement));
      if (beyond || read.conforms(row, measurement)) {
        return true;
      }
      boolean decided =
          situation.judge().apply(measurement).stream()
              .anyMatch(
                  finding ->
                      finding.observable().equals(observable)
                          && finding.verdict() == Verdict.DOES_NOT_CONFORM);
      if (decided) {
        return true;
      }
    }
    return false;
  }
}
