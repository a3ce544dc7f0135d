package kelter.core.file.log.cell;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A place in a cell, which moves behind what is taken there. */
final class Cursor {

  private final Matcher matcher;
  private final String cell;
  private int at;

  Cursor(String cell, Pattern first) {
    this.cell = cell;
    matcher = first.matcher(cell).useTransparentBounds(true).useAnchoringBounds(false);
  }

  /** Moves behind what stands here, if it has this form. */
  boolean take(Pattern form) {
    boolean taken = !isAtEnd() && matcher.usePattern(form).region(at, cell.length()).lookingAt();
    at = taken ? matcher.end() : at;
    return taken;
  }

  /** A group of what was taken last; null if it is not there. */
  String group(int group) {
    return matcher.group(group);
  }

  /** A group of digits of what was taken last; 0 if it is not there. */
  int number(int group) {
    int start = matcher.start(group);
    return start < 0 ? 0 : Integer.parseInt(cell, start, matcher.end(group), 10);
  }

  int place() {
    return at;
  }

  void backTo(int place) {
    at = place;
  }

  boolean isAtEnd() {
    return at == cell.length();
  }
}
