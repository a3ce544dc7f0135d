package kelter.core.file.catalogue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import kelter.core.catalogue.MachineModel;
import kelter.core.file.disk.TextFile;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonFile;
import kelter.core.file.json.JsonPlaces;
import kelter.core.file.json.JsonText;
import kelter.core.file.json.SchemaText;
import kelter.core.problem.InputException;
import kelter.core.vocabulary.Vocabulary;

/** Reads and writes model files, {@code "format": "kelter-model/1"}. */
public final class ModelFile {

  /** The greatest size of a model file, in bytes. */
  public static final int MAX_BYTES = 1024 * 1024;

  private static final String START = "make one with 'kelter model learn'";

  private ModelFile() {}

  /**
   * The JSON Schema (2020-12) of model files, for editors and other programs.
   *
   * @return JSON
   */
  public static String schema() {
    return SchemaText.of(ModelFile.class, "kelter-model-1.schema.json");
  }

  /**
   * Reads a model file.
   *
   * @param path the file
   * @param vocabulary the words that a job may use
   * @return the model
   * @throws InputException with every mistake of the file, if it has any or cannot be read
   */
  public static MachineModel read(Path path, Vocabulary vocabulary) {
    Json content = JsonFile.read(path, MAX_BYTES, "a model file", START);
    try {
      return ModelReader.read(content, vocabulary);
    } catch (InputException mistakes) {
      throw JsonPlaces.found(path, mistakes);
    }
  }

  /**
   * Reads a model from text.
   *
   * @param text the content of a model file
   * @param vocabulary the words that a job may use
   * @return the model
   * @throws InputException with every mistake of the text, if it has any
   */
  public static MachineModel parse(String text, Vocabulary vocabulary) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return ModelReader.read(JsonText.read(bytes, "model file", START), vocabulary);
  }

  /**
   * The text of a model file.
   *
   * @param model the model
   * @return JSON, from which {@link #parse} makes the same model
   */
  public static String text(MachineModel model) {
    return JsonText.write(ModelWriter.content(model));
  }

  /**
   * Writes a new model file and never over an old one.
   *
   * @param model the model
   * @param path where to
   * @throws InputException if there is something already, or it cannot be written
   */
  public static void writeNew(MachineModel model, Path path) {
    TextFile.writeNew(path, text(model));
  }
}
