package kelter.core.file.shop;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonFile;
import kelter.core.file.json.JsonPlaces;
import kelter.core.file.json.JsonText;
import kelter.core.file.json.SchemaText;
import kelter.core.problem.InputException;

/** Reads and changes shop profiles, {@code "format": "kelter-shop/1"}. */
public final class ShopFile {

  /** The greatest size of a shop profile, in bytes. */
  public static final int MAX_BYTES = 4 * 1024 * 1024;

  private static final String START =
      "a shop profile starts as {\"format\": \"" + ShopReader.FORMAT + "\"}";

  private ShopFile() {}

  /**
   * The JSON Schema (2020-12) of shop profiles, for editors and other programs.
   *
   * @return JSON
   */
  public static String schema() {
    return SchemaText.of(ShopFile.class, "kelter-shop-1.schema.json");
  }

  /**
   * Reads a shop profile.
   *
   * @param path the file
   * @return the shop with the content of its file
   * @throws InputException with every mistake of the file, if it has any or cannot be read
   */
  public static ShopDocument read(Path path) {
    Json content = JsonFile.read(path, MAX_BYTES, "a shop profile", START);
    try {
      return ShopReader.read(content);
    } catch (InputException mistakes) {
      throw JsonPlaces.found(path, mistakes);
    }
  }

  /**
   * Reads a shop profile from text.
   *
   * @param text the content of a shop profile
   * @return the shop with its content
   * @throws InputException with every mistake of the text, if it has any
   */
  public static ShopDocument parse(String text) {
    return ShopReader.read(
        JsonText.read(text.getBytes(StandardCharsets.UTF_8), "shop profile", START));
  }

  /**
   * Changes a shop profile: what changes in its content changes in its text, and everything else
   * stays to the byte.
   *
   * @param path the file
   * @param change makes the new profile of the one that is in the file when it is written. It may
   *     be asked again where another program wrote the file meanwhile
   * @throws InputException if the file cannot be read or written, with the cause
   */
  public static void change(Path path, UnaryOperator<ShopDocument> change) {
    JsonFile.change(
        path,
        MAX_BYTES,
        "a shop profile",
        START,
        content -> change.apply(ShopReader.read(content)).content());
  }
}
