package kelter.cli.hostile;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/**
 * An input: files, and a command that takes them.
 *
 * @param files the content of each file, by its name in the folder of the attempt
 * @param arguments the command line, in which {@link #FOLDER} stands for that folder
 * @param mayBeUsage whether the command line itself is hostile
 */
record Attempt(Map<String, byte[]> files, List<String> arguments, boolean mayBeUsage) {

  static final String FOLDER = "@FOLDER@/";

  Attempt {
    files = Map.copyOf(files);
    arguments = List.copyOf(arguments);
  }

  /** All that is given, as far as it is text. */
  String given() {
    StringBuilder all = new StringBuilder(String.join("\n", arguments));
    for (byte[] content : files.values()) {
      all.append('\n').append(new String(content, StandardCharsets.UTF_8));
    }
    // What is written in UTF-16 is found like the rest.
    return all.toString().replace("\0", "");
  }
}
