package kelter.core.file.log.cell;

import java.util.Map;
import java.util.regex.Pattern;

/** An offset from UTC, as a figure or by the name of a zone. */
final class UtcOffset {

  /** Hours from UTC: RFC 5322, 4.3, and those of Europe (from memory). */
  private static final Map<String, Integer> ZONES =
      Map.ofEntries(
          Map.entry("Z", 0),
          Map.entry("UT", 0),
          Map.entry("UTC", 0),
          Map.entry("GMT", 0),
          Map.entry("EST", -5),
          Map.entry("EDT", -4),
          Map.entry("CST", -6),
          Map.entry("CDT", -5),
          Map.entry("MST", -7),
          Map.entry("MDT", -6),
          Map.entry("PST", -8),
          Map.entry("PDT", -7),
          Map.entry("WET", 0),
          Map.entry("WEST", 1),
          Map.entry("CET", 1),
          Map.entry("CEST", 2),
          Map.entry("EET", 2),
          Map.entry("EEST", 3));

  private static final Pattern ZONE =
      Pattern.compile("[ \u00a0\u202f]*+(" + String.join("|", ZONES.keySet()) + ")\\z");

  /** +02:00, +0200 or +2. */
  private static final Pattern FIGURE =
      Pattern.compile(
          "[ \u00a0\u202f]*+([+-])(?:(\\d\\d)(\\d\\d)(?!\\d)|(0*\\d{1,7}+)(?::(0*\\d{1,7}+)?)?)");

  private UtcOffset() {}

  /** The offset that stands here, in s; 0 if there is none. */
  static double read(Cursor cell) {
    if (cell.take(ZONE)) {
      return ZONES.get(cell.group(1)) * 3600.0;
    }
    if (!cell.take(FIGURE)) {
      return 0;
    }
    int hours = cell.number(2) + cell.number(4);
    int minutes = cell.number(3) + cell.number(5);
    return (cell.group(1).equals("-") ? -1 : 1) * (hours * 3600.0 + minutes * 60.0);
  }
}
