package kelter.core.file.field;

import java.util.Optional;
import kelter.core.file.json.JsonNode;
import kelter.core.vocabulary.Ids;

/** A member that holds an id. */
public final class IdField {

  private IdField() {}

  /** The id that a member holds, which must be there; mistakes are noted. */
  public static Optional<String> required(JsonNode node, String name) {
    Optional<JsonNode> member = node.required(name);
    Optional<String> text = member.isPresent() ? member.get().text() : Optional.empty();
    try {
      return text.isPresent() ? Optional.of(Ids.require(text.get())) : text;
    } catch (IllegalArgumentException refused) {
      return member.orElseThrow().refuse(refused);
    }
  }
}
