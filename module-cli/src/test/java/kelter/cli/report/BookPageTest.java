package kelter.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The page of a book: what stands on it, and that nothing of a book runs on it. */
class BookPageTest {

  @Test
  void aHostileModelStaysText() {
    String page = BookPages.hostile();

    assertTrue(page.contains("&lt;script&gt;alert(1)&lt;/script&gt;"), page);
    for (String tag : List.of("<script", "<img", "javascript:", "http:", "https:", "\u202e")) {
      assertFalse(page.replace("http://www.w3.org/2000/svg", "").contains(tag), tag);
    }
    assertTrue(page.contains("{{job}}"), "what a book says is not filled in");
  }

  @Test
  void everyTableHasItsFiguresAndItsDrawing() {
    String page = BookPages.full();

    assertEquals(8, page.split("<section>", -1).length - 1);
    assertEquals(8, page.split("<table>", -1).length - 1);
    assertEquals(6, page.split("<figure>", -1).length - 1);
    assertTrue(page.contains("heater.renew"));
    assertTrue(page.contains("Ostvik W-1, "));
  }

  @Test
  void anEmptyBookSaysSo() {
    String page = BookPages.empty();

    assertTrue(page.contains("The book has no job."));
    assertEquals(0, page.split("<table>", -1).length - 1);
  }
}
