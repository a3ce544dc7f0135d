package kelter.core.file.field;

import java.util.Optional;
import kelter.core.catalogue.MachineModel;
import kelter.core.file.json.JsonNode;

/** A code as a machine displays it. */
public final class CodeText {

  /** No display of a machine shows more, in characters; own choice. */
  private static final int LONGEST = 40;

  private CodeText() {}

  /** The code that a place holds; one that cannot be a code is noted. */
  public static Optional<String> of(JsonNode node) {
    return node.read(CodeText::require);
  }

  private static String require(String text) {
    if (MachineModel.plain(text).isEmpty() || text.length() > LONGEST) {
      throw new IllegalArgumentException(
          "is no code: a letter, digit or sign is needed, and at most " + LONGEST + " of them");
    }
    return text;
  }
}
