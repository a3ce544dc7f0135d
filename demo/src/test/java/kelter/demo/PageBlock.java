package kelter.demo;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A block of a page that somebody follows.
 *
 * @param language what it is: a command ({@code sh}), code, or, where it is empty, what the command
 *     before it prints
 * @param text what stands in it
 */
record PageBlock(String language, String text) {

  private static final Pattern BLOCK =
      Pattern.compile("^```(\\w*)\\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);

  static List<PageBlock> of(String page) {
    List<PageBlock> blocks = new ArrayList<>();
    Matcher matcher = BLOCK.matcher(page);
    while (matcher.find()) {
      blocks.add(new PageBlock(matcher.group(1), matcher.group(2)));
    }
    return blocks;
  }

  void assertPrinted(String said) {
    text.lines()
        .filter(line -> !line.isBlank())
        .forEach(
            line -> assertTrue(said.contains(line), "'" + line + "' is not printed:\n" + said));
  }
}
