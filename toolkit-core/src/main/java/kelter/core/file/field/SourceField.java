package kelter.core.file.field;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.JsonNode;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/** A member that tells where figures come from. */
public final class SourceField {

  public static final Set<String> SOURCE = JsonNode.names("document", "standing");

  private SourceField() {}

  /** The source that an owner names; mistakes are noted. */
  public static Optional<Source> of(JsonNode owner) {
    Optional<JsonNode> node = owner.optional("source");
    return node.isPresent() ? stated(node.get()) : Optional.empty();
  }

  /** The source that a node tells; mistakes are noted. */
  public static Optional<Source> stated(JsonNode node) {
    node.object(SOURCE);
    Optional<String> document = node.required("document").flatMap(JsonNode::text);
    Map<String, Standing> standings = new LinkedHashMap<>();
    for (Standing standing : Standing.values()) {
      standings.put(standing.words(), standing);
    }
    Optional<JsonNode> field = node.required("standing");
    Optional<String> words =
        field.isPresent() ? field.get().word(standings.keySet(), "standing") : Optional.empty();
    if (document.isEmpty() || words.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Source(document.get(), standings.get(words.get())));
    } catch (IllegalArgumentException refused) {
      return node.refuse(refused);
    }
  }
}
