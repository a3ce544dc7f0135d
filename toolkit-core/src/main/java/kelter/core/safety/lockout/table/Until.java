package kelter.core.safety.lockout.table;

import java.util.ArrayList;
import java.util.List;

/**
 * What releases a row of the table. No answer and no time ever does.
 *
 * @param words what releases it, for a person
 * @param record whether the word of a competent person, written into the job, does
 * @param same whether the readings that made it hold are to be taken again and conform
 * @param dead what is to be read dead, and conform
 * @param last what is to be read powered once all dead readings conform, covers on and behind a
 *     residual-current device
 * @param anyStage whether a reading counts whenever it was taken; if not, only after the work
 */
public record Until(
    String words,
    boolean record,
    boolean same,
    List<Retest> dead,
    List<Retest> last,
    boolean anyStage) {

  public Until {
    dead = List.copyOf(dead);
    last = List.copyOf(last);
  }

  /**
   * By what it is released, for programs.
   *
   * @return {@code readings}, {@code record}, both or none, where nothing releases it
   */
  public List<String> ways() {
    List<String> ways = new ArrayList<>();
    if (byReadings()) {
      ways.add("readings");
    }
    if (record) {
      ways.add("record");
    }
    return ways;
  }

  /**
   * Whether readings can release it at all.
   *
   * @return true if some are named
   */
  public boolean byReadings() {
    return same || !dead.isEmpty() || !last.isEmpty();
  }
}
