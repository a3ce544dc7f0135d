package kelter.core.file.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kelter.core.problem.FilePlace;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;

/**
 * Lines and columns of what JSON pointers (RFC 6901) point at. They are looked up in the file once
 * there is a mistake to tell, so that a file without one is read no slower for them.
 */
public final class JsonPlaces {

  private final String name;
  private final Map<String, FilePlace> places = new HashMap<>();

  private JsonPlaces(String name) {
    this.name = name;
  }

  /**
   * Mistakes with the lines that they stand in.
   *
   * @param path the file that was read
   * @param mistakes mistakes whose places are JSON pointers into it
   * @return the same mistakes, each with file, line and column, those of what holds it where it is
   *     missing itself; as it was where not even its first member is in the file
   */
  public static InputException found(Path path, InputException mistakes) {
    try {
      return found(path.toString(), Files.readString(path), mistakes);
    } catch (IOException changed) {
      return found(path.toString(), "", mistakes);
    }
  }

  /**
   * Mistakes with the lines that they stand in.
   *
   * @param name what the text is called
   * @param text the text that was read
   * @param mistakes mistakes whose places are JSON pointers into it
   * @return the same mistakes, each with its place as far as it is in the text
   */
  public static InputException found(String name, String text, InputException mistakes) {
    JsonPlaces places = new JsonPlaces(name);
    try {
      places.read(text);
    } catch (IOException changed) {
      places.places.clear();
    }
    List<Problem> told = new ArrayList<>();
    for (Problem problem : mistakes.problems()) {
      told.add(problem.place().isUnknown() ? problem.at(places.of(problem.where())) : problem);
    }
    return new InputException(told);
  }

  private FilePlace of(String pointer) {
    String at = pointer;
    while (!places.containsKey(at) && at.lastIndexOf('/') > 0) {
      at = at.substring(0, at.lastIndexOf('/'));
    }
    return places.getOrDefault(at, FilePlace.UNKNOWN);
  }

  private void read(String text) throws IOException {
    try (JsonParser parser = JsonText.parser(text)) {
      parser.nextToken();
      value(parser, "");
    }
  }

  private void value(JsonParser parser, String pointer) throws IOException {
    note(parser, pointer);
    if (parser.currentToken() == JsonToken.START_OBJECT) {
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        String member = pointer + "/" + JsonText.escape(parser.currentName());
        note(parser, member);
        parser.nextToken();
        value(parser, member);
      }
    } else if (parser.currentToken() == JsonToken.START_ARRAY) {
      int item = 0;
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        value(parser, pointer + "/" + item++);
      }
    }
  }

  /** Of a member the place is where its name starts. */
  private void note(JsonParser parser, String pointer) {
    places.putIfAbsent(pointer, JsonText.at(name, parser.currentTokenLocation()));
  }
}
