package kelter.cli.text.book;

import java.util.List;

/**
 * An answer of the job book as a table, for the terminal and for a page.
 *
 * @param id the word for it
 * @param title what was asked
 * @param head the heads of its columns
 * @param rows its cells, the most telling first; may be empty
 * @param notes what to know of the figures, in sentences
 */
public record ShopTable(
    String id, String title, List<String> head, List<List<String>> rows, List<String> notes) {

  /** Copies the lists. */
  public ShopTable {
    head = List.copyOf(head);
    rows = List.copyOf(rows);
    notes = List.copyOf(notes);
  }
}
