package kelter.cli.diagnosis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kelter.cli.text.Figures;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Component;

/** The parts to take along, in a line. */
final class TakeAlong {

  private static final int PARTS = 4;

  /** Work that names its part. */
  private static final Pattern RENEWED =
      Pattern.compile("^(?:clean or )?(?:renew|replace) (?:the )?(.+?)(?:,| and its | by |$)");

  /** Work that uses a part and renews none. */
  private static final Pattern FITTED = Pattern.compile(" by (a new [a-z]+)");

  private TakeAlong() {}

  /** The likeliest parts with the chance that each is needed, in falling order. */
  static String line(List<Diagnosis.Needed> needed) {
    if (needed.isEmpty()) {
      return "no part is likely to be needed.";
    }
    List<String> told = new ArrayList<>();
    List<Diagnosis.Needed> likeliest = needed.subList(0, Math.min(PARTS, needed.size()));
    List<String> parts = likeliest.stream().map(TakeAlong::part).toList();
    for (int i = 0; i < parts.size(); i++) {
      Diagnosis.Needed each = likeliest.get(i);
      boolean alone = Collections.frequency(parts, parts.get(i)) == 1;
      String chance = DiagnosisWords.unbroken(Figures.percent(each.chance()));
      told.add(
          (alone ? parts.get(i) : inFull(each))
              + " ("
              + (told.isEmpty() ? "needed:\u00a0" : "")
              + chance
              + ")");
    }
    return String.join(", ", told) + ".";
  }

  /** What of a component, where several parts of it are told. */
  private static String inFull(Diagnosis.Needed needed) {
    String words = Component.words(needed.remedy().component());
    Matcher renewed = RENEWED.matcher(needed.remedy().title());
    return renewed.find() && !words.contains(renewed.group(1))
        ? renewed.group(1) + " of the " + words
        : words;
  }

  /** The part by the words of its work; where they name none, by what it is for. */
  private static String part(Diagnosis.Needed needed) {
    String words = Component.words(needed.remedy().component());
    Matcher renewed = RENEWED.matcher(needed.remedy().title());
    if (!renewed.find()) {
      Matcher fitted = FITTED.matcher(needed.remedy().title());
      return fitted.find() ? fitted.group(1) + " for the " + words : words;
    }
    String part = renewed.group(1);
    if (words.contains(part)) {
      return words;
    }
    return part.contains(words) ? part : words;
  }
}
