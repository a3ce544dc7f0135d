package kelter.cli.usage;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;

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
  FORMAT;

  static final String AS_TEXT = "text";
  static final String AS_JSON = "json";

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
        case FORMAT -> {
          return value.equals(AS_TEXT) || value.equals(AS_JSON);
        }
        default -> {
          return this == TEXT;
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
      case FILE -> "the name of a file or folder";
      case COUNT -> "a whole number up to " + Integer.MAX_VALUE;
      case WHOLE -> "a whole number up to " + Long.MAX_VALUE;
      case NUMBER -> "a number";
      case FORMAT -> AS_TEXT + " or " + AS_JSON;
    };
  }
}
