package kelter.cli.command;

import java.nio.file.Path;
import java.util.Locale;
import kelter.core.problem.InputException;

/** The name of a page that is written: it takes the place of a page, never of another file. */
public final class PageName {

  private static final String PAGE = ".html";

  private PageName() {}

  /**
   * Refuses a name that is none of a page.
   *
   * @param file where the page goes
   * @throws InputException if its name does not end in .html
   */
  public static void require(Path file) {
    if (!file.toString().toLowerCase(Locale.ROOT).endsWith(PAGE)) {
      throw new InputException(
          file.toString(), "is not the name of a page", "let it end in " + PAGE);
    }
  }
}
