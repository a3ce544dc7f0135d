package kelter.core.file.shop;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonFile;
import kelter.core.file.json.JsonNode;
import kelter.core.file.json.JsonPlaces;
import kelter.core.file.json.JsonText;
import kelter.core.file.json.SchemaText;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.shop.StockPart;
import kelter.core.vocabulary.Vocabulary;

/** Reads what parts a shop carries, {@code "format": "kelter-stock/1"}. */
public final class StockFile {

  /** The greatest size of a file of stock, in bytes. */
  public static final int MAX_BYTES = 1024 * 1024;

  static final String FORMAT = "kelter-stock/1";

  static final Set<String> STOCK = JsonNode.names("format", "parts", "note");
  static final Set<String> PART = JsonNode.names("part", "for", "number", "note");

  /** More of one part than any van carries; own choice. */
  static final int MOST = 100_000;

  private static final String START = "'kelter shop init' makes one to fill in";

  private StockFile() {}

  /**
   * The JSON Schema (2020-12) of files of stock, for editors and other programs.
   *
   * @return JSON
   */
  public static String schema() {
    return SchemaText.of(StockFile.class, "kelter-stock-1.schema.json");
  }

  /**
   * Reads a file of stock.
   *
   * @param path the file
   * @param vocabulary the kinds of components that are known
   * @return the parts, in the order of the file
   * @throws InputException with every mistake of the file, if it has any or cannot be read
   */
  public static List<StockPart> read(Path path, Vocabulary vocabulary) {
    Json content = JsonFile.read(path, MAX_BYTES, "a file of stock", START);
    try {
      return parts(content, vocabulary);
    } catch (InputException mistakes) {
      throw JsonPlaces.found(path, mistakes);
    }
  }

  /**
   * Reads stock from text.
   *
   * @param text the content of a file of stock
   * @param vocabulary the kinds of components that are known
   * @return the parts, in the order of the text
   * @throws InputException with every mistake of the text, if it has any
   */
  public static List<StockPart> parse(String text, Vocabulary vocabulary) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return parts(JsonText.read(bytes, "stock", START), vocabulary);
  }

  private static List<StockPart> parts(Json content, Vocabulary vocabulary) {
    List<Problem> problems = new ArrayList<>();
    JsonNode root = new JsonNode(content, "", problems);
    root.object(STOCK);
    root.required("format").ifPresent(node -> node.word(Set.of(FORMAT), "format"));
    List<StockPart> parts = new ArrayList<>();
    Set<List<String>> seen = new HashSet<>();
    for (JsonNode node : root.items("parts")) {
      Optional<StockPart> part = part(node, vocabulary);
      if (part.isPresent() && !seen.add(List.of(part.get().part(), part.get().remedy()))) {
        node.problem(
            "'" + part.get().part() + "' occurs twice", "keep one, with the number of all");
      }
      part.ifPresent(parts::add);
    }
    root.text("note");
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return parts;
  }

  private static Optional<StockPart> part(JsonNode node, Vocabulary vocabulary) {
    node.object(PART);
    Optional<String> name = node.required("part").flatMap(JsonNode::text);
    Optional<JsonNode> field = node.optional("for");
    Optional<String> remedy = field.flatMap(JsonNode::text);
    remedy.ifPresent(word -> RemedyWord.hold(word, vocabulary, field.orElseThrow()));
    Optional<Integer> number = node.required("number").flatMap(each -> each.count(MOST));
    node.text("note");
    if (name.isEmpty() || number.isEmpty()) {
      return Optional.empty();
    }
    return node.make(() -> new StockPart(name.get(), remedy.orElse(""), number.get()));
  }
}
