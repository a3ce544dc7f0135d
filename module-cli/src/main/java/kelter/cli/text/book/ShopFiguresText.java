package kelter.cli.text.book;

import java.util.ArrayList;
import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Layout;
import kelter.core.book.figures.ShopFigures;
import kelter.core.catalogue.Kinds;

/** What a shop asks its book, for the terminal. */
public final class ShopFiguresText {

  private static final int MOST = 12;

  private ShopFiguresText() {}

  /**
   * Writes the tables.
   *
   * @param figures what the book answers
   * @param kinds the kinds of machines
   * @param terminal where they will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(ShopFigures figures, Kinds kinds, Terminal terminal) {
    Layout layout = new Layout(terminal);
    layout.line(
        figures.from().isEmpty()
            ? "The book has no job."
            : "%s jobs, the first closed on %s; as of %s."
                .formatted(figures.jobs(), figures.from().get(), figures.question().asOf()));
    for (ShopTable table : ShopTables.of(figures, kinds)) {
      layout.heading(table.title());
      List<List<String>> rows = ShopTables.first(table, figures, MOST);
      if (!rows.isEmpty()) {
        List<List<String>> all = new ArrayList<>(List.of(table.head()));
        all.addAll(rows);
        layout.figures("  ", all);
      }
      if (rows.size() < table.rows().size()) {
        layout.line(
            "  and " + (table.rows().size() - rows.size()) + " more (--format json has all)");
      }
      table.notes().forEach(note -> layout.hanging("  ", note));
    }
    return layout.toString();
  }
}
