package kelter.core.file.log.cell;

import java.util.List;
import java.util.Locale;

/** Names of months in English, German, French, Spanish, Italian and Dutch. */
final class MonthName {

  private static final int LETTERS = 3;

  /** Their first letters, without accents, from January on. */
  private static final List<String> STARTS =
      List.of(
          "jan ene gen",
          "feb fev",
          "mar mrz mrt maa",
          "apr avr abr",
          "may mai mag mei",
          "jun giu",
          "jul lug",
          "aug aou ago",
          "sep set",
          "oct okt ott",
          "nov",
          "dec dez dic");

  private MonthName() {}

  /** The month of a name; 0 if it is none. */
  static int month(String name) {
    if (name.length() < LETTERS) {
      return 0;
    }
    String plain =
        name.toLowerCase(Locale.ROOT).replace('é', 'e').replace('û', 'u').replace('ä', 'a');
    if (plain.startsWith("jui")) {
      return plain.startsWith("juil") ? 7 : plain.equals("juin") ? 6 : 0;
    }
    String start = plain.substring(0, LETTERS);
    for (int i = 0; i < STARTS.size(); i++) {
      if (STARTS.get(i).contains(start)) {
        return i + 1;
      }
    }
    return 0;
  }
}
