package kelter.core.file.job;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import kelter.core.file.catalogue.LockOutFile;
import kelter.core.file.json.JsonNode;
import kelter.core.safety.lockout.table.LockOutRow;

/** Reads the words of competent persons that release rows of the lock-out table. */
final class RecordsReader {

  private RecordsReader() {}

  static Map<String, String> records(JsonNode root) {
    Optional<JsonNode> node = root.optional("records");
    if (node.isEmpty()) {
      return Map.of();
    }
    Set<String> rows = recorded();
    Map<String, String> records = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> member : node.get().members().entrySet()) {
      boolean known =
          member.getValue().isKnown(member.getKey(), rows, "row that a record releases");
      Optional<String> words = member.getValue().text();
      if (known && words.isPresent() && words.get().isBlank()) {
        member.getValue().problem("says nothing", "write who, when and what was done");
      } else if (known && words.isPresent()) {
        records.put(member.getKey(), words.get());
      }
    }
    return records;
  }

  private static Set<String> recorded() {
    return LockOutFile.shipped().rows().stream()
        .filter(row -> row.until().record())
        .map(LockOutRow::id)
        .collect(Collectors.toSet());
  }
}
