package kelter.core.session;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A reading and the conditions behind it, as somebody types them: {@code 104 kohm at 24 C}, {@code
 * 104 kohm at temperature=24 Cel, flow=0 L/min}.
 *
 * @param reading what stands before the conditions
 * @param conditions by their words; a figure without a word is a temperature
 */
record TakenAt(String reading, Map<String, String> conditions) {

  private static final String AT = " at ";
  private static final String TEMPERATURE = "temperature";

  static TakenAt of(String line) {
    int at = line.lastIndexOf(AT);
    Map<String, String> told = new LinkedHashMap<>();
    for (String each : at < 0 ? new String[0] : line.substring(at + AT.length()).split(",")) {
      int equals = each.indexOf('=');
      String word = equals < 0 ? TEMPERATURE : each.substring(0, equals).strip();
      told.put(word, degrees(each.substring(equals + 1).strip()));
    }
    return new TakenAt(at < 0 ? line : line.substring(0, at).strip(), told);
  }

  /** Whether the first equals sign of a line belongs to a condition. */
  static boolean isIn(String line) {
    return line.matches("[^=]* at [a-z-]+ *=.*");
  }

  private static String degrees(String told) {
    return told.replaceFirst("(?<=[0-9]) *°? *C$", " Cel")
        .replaceFirst("(?<=[0-9]) *°? *F$", " [degF]");
  }
}
