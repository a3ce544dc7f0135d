package kelter.cli.document;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A document as whoever follows it reads it: headings, commands to type, commands that the text
 * names, and what is printed, in their order.
 *
 * @param steps these
 */
record Page(List<Step> steps) {

  private static final Pattern STEP =
      Pattern.compile(
          "^```(?<language>\\w*)\\n(?<block>.*?)^```$|^#+ (?<heading>.*?)$|`(?<named>[^`]+)`",
          Pattern.MULTILINE | Pattern.DOTALL);
  private static final Pattern COMMAND =
      Pattern.compile("(kelter|mvn|demo/(run|carry)|module-cli/target/kelter/\\S+)(?= |$).*");

  /** Blocks that are neither typed nor printed. */
  private static final Set<String> OTHER_BLOCKS = Set.of("java", "json", "text");

  /** What a step is. */
  enum Sort {
    /** A heading. */
    HEADING,
    /** A command in a block of commands. */
    TYPED,
    /** A command that the text names, perhaps with words for what is to be filled in. */
    NAMED,
    /** What the command before it prints. */
    PRINTED
  }

  /** One of them. */
  record Step(Sort sort, String text) {}

  static Page of(Path file) throws IOException {
    List<Step> steps = new ArrayList<>();
    Matcher found = STEP.matcher(Files.readString(file));
    while (found.find()) {
      if (found.group("heading") != null) {
        steps.add(new Step(Sort.HEADING, found.group("heading")));
      } else if (found.group("named") != null) {
        String named = found.group("named").replaceAll("\\s+", " ");
        if (COMMAND.matcher(named).matches()) {
          steps.add(new Step(Sort.NAMED, named));
        }
      } else {
        addBlock(found.group("language"), found.group("block"), steps);
      }
    }
    return new Page(List.copyOf(steps));
  }

  private static void addBlock(String language, String block, List<Step> steps) {
    if (language.equals("sh")) {
      commands(block).forEach(command -> steps.add(new Step(Sort.TYPED, command)));
    } else if (language.isEmpty()) {
      steps.add(new Step(Sort.PRINTED, block));
    } else if (!OTHER_BLOCKS.contains(language)) {
      throw new AssertionError("nobody knows what to do with a block of " + language);
    }
  }

  /** The commands of a block, each with the lines on which it goes on; what is commented is not. */
  static List<String> commands(String block) {
    return block
        .replaceAll("\\\\\\n\\s*", "")
        .lines()
        .map(line -> line.replaceAll("(^|\\s)# .*", "").strip())
        .filter(line -> !line.isEmpty())
        .toList();
  }
}
