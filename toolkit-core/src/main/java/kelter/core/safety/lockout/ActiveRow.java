package kelter.core.safety.lockout;

import java.util.List;
import kelter.core.safety.Caution;
import kelter.core.safety.lockout.table.LockOutRow;

/**
 * A row of the table that holds.
 *
 * @param row the row
 * @param text its text in the market's words, with the figures of the machine
 * @param because what makes it hold
 * @param standing whether only the kind of machine makes it hold, which nothing that is found ends
 * @param quiet whether it is about a part that such machines only may have, so that it bars the
 *     part and is not told before all else
 * @param openDead what is still to be read dead
 * @param openLast what is to be read powered after that
 * @param opened whether what is to be read powered may be read now
 * @param supervised whether its one powered step may be taken now
 */
public record ActiveRow(
    LockOutRow row,
    String text,
    List<Ground> because,
    boolean standing,
    boolean quiet,
    List<Reread> openDead,
    List<Reread> openLast,
    boolean opened,
    boolean supervised) {

  public ActiveRow {
    because = List.copyOf(because);
    openDead = List.copyOf(openDead);
    openLast = List.copyOf(openLast);
  }

  /**
   * What to mind because it holds.
   *
   * @return its caution with its text
   */
  public Caution caution() {
    return row.caution(text, !standing);
  }
}
