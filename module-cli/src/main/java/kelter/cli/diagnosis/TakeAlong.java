package kelter.cli.diagnosis;

import java.util.ArrayList;
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
      Pattern.compile("^(?:renew|replace) (?:the )?(.+?)(?:,| by |$)");

  /** Work that uses a part and renews none. */
  private static final Pattern FITTED = Pattern.compile(" by (a new [a-z]+)");

  private TakeAlong() {}

  /** The likeliest parts with the chance that each is needed, in falling order. */
  static String line(List<Diagnosis.Needed> needed) {
    if (needed.isEmpty()) {
      return "no part is likely to be needed.";
    }
    List<String> told = new ArrayList<>();
    for (Diagnosis.Needed each : needed.subList(0, Math.min(PARTS, needed.size()))) {
      String chance = DiagnosisWords.unbroken(Figures.percent(each.chance()));
      told.add(part(each) + " (" + (told.isEmpty() ? "needed:\u00a0" : "") + chance + ")");
    }
    return String.join(", ", told) + ".";
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
