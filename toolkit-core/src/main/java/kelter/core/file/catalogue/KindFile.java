package kelter.core.file.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kelter.core.catalogue.Kind;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonFile;
import kelter.core.file.json.JsonPlaces;
import kelter.core.file.json.JsonText;
import kelter.core.file.json.SchemaText;
import kelter.core.problem.InputException;
import kelter.core.vocabulary.Vocabulary;

/**
 * Reads kinds of machines, {@code "format": "kelter-kind/1"}: those that come with Kelter, and
 * those of a shop.
 */
public final class KindFile {

  /** The greatest size of a file, in bytes. */
  public static final int MAX_BYTES = 1024 * 1024;

  private static final String FOLDER = "/kelter/core/kind/";

  private static final String START =
      "a kind of machine starts as {\"format\": \"" + KindReader.FORMAT + "\"}";

  private static final List<String> SHIPPED =
      List.of(
          "cooker-hood",
          "dehumidifier",
          "dishwasher",
          "espresso-machine",
          "fan-heater",
          "glasswasher",
          "hair-dryer",
          "hob",
          "induction-hob",
          "instantaneous-water-heater",
          "iron",
          "kettle",
          "microwave-oven",
          "oven",
          "plate-hob",
          "refrigerator",
          "room-air-conditioner",
          "storage-water-heater",
          "toaster",
          "tumble-dryer",
          "vacuum-cleaner",
          "washer-dryer",
          "washer-extractor",
          "washing-machine",
          "water-boiler");

  private KindFile() {}

  /**
   * The JSON Schema (2020-12) of kinds of machines, for editors and other programs.
   *
   * @return JSON
   */
  public static String schema() {
    return SchemaText.of(KindFile.class, "kelter-kind-1.schema.json");
  }

  /**
   * The kinds that come with Kelter.
   *
   * @return their ids, in alphabetical order
   */
  public static List<String> shipped() {
    return SHIPPED;
  }

  /**
   * A kind that comes with Kelter.
   *
   * @param id its id
   * @param vocabulary the words of the modules at work
   * @return the kind, or empty if there is none of that id
   */
  public static Optional<Kind> shipped(String id, Vocabulary vocabulary) {
    return SHIPPED.contains(id)
        ? Optional.of(KindReader.read(content(id), vocabulary))
        : Optional.empty();
  }

  private static Json content(String id) {
    String name = FOLDER + id + ".json";
    try (InputStream in = KindFile.class.getResourceAsStream(name)) {
      return JsonText.read(in.readAllBytes(), name, START);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /**
   * Reads a kind of a shop.
   *
   * @param path the file
   * @param vocabulary the words of the modules at work
   * @return the kind
   * @throws InputException with every mistake of the file, if it has any or cannot be read
   */
  public static Kind read(Path path, Vocabulary vocabulary) {
    Json content = JsonFile.read(path, MAX_BYTES, "a kind of machine", START);
    try {
      return KindReader.read(content, vocabulary);
    } catch (InputException mistakes) {
      throw JsonPlaces.found(path, mistakes);
    }
  }
}
