package kelter.core.safety.lockout.table;

import java.util.List;
import java.util.Optional;

/**
 * The whole table.
 *
 * @param rows what a finding does to a machine
 * @param isolation the steps by which a machine is isolated
 * @param backToPower the tests before and after power is put on again
 */
public record LockOutTable(
    List<LockOutRow> rows, List<SafetyStep> isolation, List<SafetyStep> backToPower) {

  public LockOutTable {
    rows = List.copyOf(rows);
    isolation = List.copyOf(isolation);
    backToPower = List.copyOf(backToPower);
  }

  /**
   * A row.
   *
   * @param id its word
   * @return the row, or empty if there is none of that word
   */
  public Optional<LockOutRow> row(String id) {
    return rows.stream().filter(row -> row.id().equals(id)).findFirst();
  }

  /**
   * The step back to power at which something is read.
   *
   * @param observable the word for what is read
   * @return the first such step; empty if there is none
   */
  public Optional<SafetyStep> reading(String observable) {
    return backToPower.stream()
        .filter(step -> step.read().stream().anyMatch(each -> each.observable().equals(observable)))
        .findFirst();
  }
}
