package kelter.cli.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kelter.cli.text.book.ShopTable;
import kelter.cli.text.book.ShopTables;
import kelter.core.book.figures.ShopFigures;
import kelter.core.catalogue.Kinds;
import kelter.core.text.HarmlessText;

/**
 * What a shop asks its book as one page of HTML in the look of the report. It loads nothing and
 * runs nothing, and what the book says is escaped.
 */
public final class BookPage {

  private static final String TITLE = "What the job book answers";

  /** A page shows so many rows of a table; JSON has all. */
  private static final int MOST = 16;

  private static final String STANDING =
      "Every figure is from the jobs of this book alone, with its interval of 95 %. Where there are too few jobs it says so.";

  private BookPage() {}

  /**
   * The page.
   *
   * @param figures what the book answers
   * @param kinds the kinds of machines
   * @return the page
   */
  public static String of(ShopFigures figures, Kinds kinds) {
    BookDrawings drawings = new BookDrawings(figures, kinds, HarmlessText::of);
    List<Map<String, Object>> parts = new ArrayList<>();
    for (ShopTable table : ShopTables.of(figures, kinds)) {
      parts.add(part(table, figures, drawings));
    }
    return PageTemplate.of("book.html")
        .execute(
            Map.of("title", TITLE, "span", span(figures), "standing", STANDING, "parts", parts));
  }

  private static String span(ShopFigures figures) {
    return figures.from().isEmpty()
        ? "The book has no job."
        : "%s jobs, the first closed on %s; as of %s"
            .formatted(figures.jobs(), figures.from().get(), figures.question().asOf());
  }

  private static Map<String, Object> part(
      ShopTable table, ShopFigures figures, BookDrawings drawings) {
    Map<String, Object> part = new HashMap<>();
    List<List<String>> rows = ShopTables.first(table, figures, MOST);
    int left = table.rows().size() - rows.size();
    part.put("title", table.title());
    part.put("notes", table.notes().stream().map(HarmlessText::of).toList());
    part.put("drawing", drawings.of(table.id()).map(BookPage::drawing).stream().toList());
    part.put("caption", table.title() + ", in figures");
    part.put("hasRows", !rows.isEmpty());
    part.put("head", head(table));
    part.put("rows", rows.stream().map(row -> row(table, row)).toList());
    part.put("more", left > 0 ? List.of("And " + left + " more; JSON has all.") : List.of());
    return part;
  }

  private static Map<String, Object> drawing(BookDrawings.Drawing drawing) {
    return Map.of("caption", drawing.caption(), "svg", drawing.svg());
  }

  private static List<Map<String, Object>> head(ShopTable table) {
    List<Map<String, Object>> head = new ArrayList<>();
    for (String each : table.head()) {
      head.add(Map.of("text", each, "number", !head.isEmpty()));
    }
    return head;
  }

  private static Map<String, Object> row(ShopTable table, List<String> row) {
    List<Map<String, Object>> cells = new ArrayList<>();
    for (int i = 1; i < row.size(); i++) {
      cells.add(Map.of("label", table.head().get(i), "text", HarmlessText.of(row.get(i))));
    }
    return Map.of("first", HarmlessText.of(row.get(0)), "cells", cells);
  }
}
