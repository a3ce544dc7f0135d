package kelter.cli.usage;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** What a value on the command line may be. */
public enum ValueKind {
  /** No value at all: the option stands or does not stand there. */
  NONE,
  /** Any text. */
  TEXT,
  /** The name of a file or a folder, whether there is one or not. */
  FILE,
  /** A whole number of 32 bits. */
  COUNT,
  /** A whole number of 64 bits. */
  WHOLE,
  /** A finite number. */
  NUMBER,
  /** How a result is shown: {@value #AS_TEXT} or {@value #AS_JSON}. */
  FORMAT,
  /** A shell that {@code kelter completion} knows: one of {@link #choices()}. */
  SHELL,
  /** How data for a form are told: one of {@link #choices()}. */
  FORM,
  /** A kind of machine, in any words. */
  KIND,
  /** A symptom, in any words. */
  SYMPTOM,
  /** The name of a calculation. */
  CALCULATION,
  /** The name of a schema. */
  SCHEMA,
  /** The name of a command, or a word of it. */
  COMMAND;

  static final String AS_TEXT = "text";
  static final String AS_JSON = "json";

  /**
   * The only values that there are of this kind.
   *
   * @return the values; empty if the kind is not a list of some
   */
  public List<String> choices() {
    return switch (this) {
      case FORMAT -> List.of(AS_TEXT, AS_JSON);
      case SHELL -> List.of("bash", "zsh", "fish");
      case FORM -> List.of(AS_JSON, "html");
      default -> List.of();
    };
  }

  /** Whether a value is of this kind. */
  boolean takes(String value) {
    try {
      switch (this) {
        case FILE -> Path.of(value);
        case COUNT -> Integer.parseInt(value);
        case WHOLE -> Long.parseLong(value);
        case NUMBER -> {
          return Double.isFinite(Double.parseDouble(value));
        }
        case FORMAT, SHELL, FORM -> {
          return choices().contains(value);
        }
        default -> {
          return this != NONE;
        }
      }
      return true;
    } catch (NumberFormatException | InvalidPathException other) {
      return false;
    }
  }

  /** What is allowed, in words that follow "takes". */
  String allowed() {
    return switch (this) {
      case NONE -> "no value";
      case TEXT -> "a text";
      case SHELL -> "bash, zsh or fish";
      case FORM -> "json or html";
      case KIND -> "a kind of machine";
      case SYMPTOM -> "a symptom";
      case CALCULATION -> "the name of a calculation";
      case SCHEMA -> "the name of a schema";
      case COMMAND -> "the name of a command";
      case FILE -> "the name of a file or folder";
      case COUNT -> "a whole number up to " + Integer.MAX_VALUE;
      case WHOLE -> "a whole number up to " + Long.MAX_VALUE;
      case NUMBER -> "a number";
      case FORMAT -> AS_TEXT + " or " + AS_JSON;
    };
  }
}
