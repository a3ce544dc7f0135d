package kelter.testkit.trial;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.Supplier;
import kelter.core.job.Appliance;
import kelter.core.module.CalculationModule;

/** Whether a module answers the same wherever it runs and whatever it was asked before. */
public final class SameAnswers {

  /**
   * A language where an i in capitals is another letter, two with a decimal comma, and one with
   * digits of its own.
   */
  private static final List<String> LANGUAGES =
      List.of("tr-TR", "de-DE", "fr-CH", "ar-EG-u-nu-arab");

  /** The time zone that is farthest ahead. */
  private static final String ZONE = "Pacific/Kiritimati";

  private SameAnswers() {}

  /**
   * A module, made anew, must answer the same in every language and time zone of the machine.
   *
   * @param module makes the module
   * @param appliances the machines of the test
   * @return the breaches
   */
  public static List<String> everywhere(
      Supplier<CalculationModule> module, List<Appliance> appliances) {
    Locale usual = Locale.getDefault();
    TimeZone here = TimeZone.getDefault();
    List<String> breaches = new ArrayList<>();
    try {
      Locale.setDefault(Locale.ROOT);
      List<String> expected = all(module.get(), appliances);
      for (String language : LANGUAGES) {
        Locale.setDefault(Locale.forLanguageTag(language));
        compare("in the language " + language, expected, all(module.get(), appliances), breaches);
      }
      Locale.setDefault(Locale.ROOT);
      TimeZone.setDefault(TimeZone.getTimeZone(ZONE));
      compare("in another time zone", expected, all(module.get(), appliances), breaches);
    } finally {
      Locale.setDefault(usual);
      TimeZone.setDefault(here);
    }
    return breaches;
  }

  /**
   * A module must answer the same after it was asked about other machines, and again.
   *
   * @param module makes the module
   * @param appliances the machines of the test
   * @return the breaches
   */
  public static List<String> whateverWasAsked(
      Supplier<CalculationModule> module, List<Appliance> appliances) {
    List<String> breaches = new ArrayList<>();
    List<String> expected = all(module.get(), appliances);
    CalculationModule asked = module.get();
    compare("when it was just made", expected, all(asked, appliances), breaches);
    compare("when it is asked again", expected, all(asked, appliances), breaches);
    List<Appliance> reversed = new ArrayList<>(appliances);
    Collections.reverse(reversed);
    CalculationModule other = module.get();
    List<List<String>> backwards = new ArrayList<>();
    reversed.forEach(appliance -> backwards.add(0, Answers.of(other, appliance)));
    List<String> again = new ArrayList<>(Answers.ofItself(other));
    backwards.forEach(again::addAll);
    compare("after other machines", expected, again, breaches);
    return breaches;
  }

  /**
   * A module must not write to standard output, which has results for other programs.
   *
   * @param module makes the module
   * @param appliances the machines of the test
   * @return the breaches
   */
  public static List<String> inSilence(
      Supplier<CalculationModule> module, List<Appliance> appliances) {
    PrintStream usual = System.out;
    ByteArrayOutputStream written = new ByteArrayOutputStream();
    try {
      System.setOut(new PrintStream(written, true, StandardCharsets.UTF_8));
      all(module.get(), appliances);
    } finally {
      System.setOut(usual);
    }
    String text = written.toString(StandardCharsets.UTF_8);
    return text.isEmpty()
        ? List.of()
        : List.of("writes to standard output: '" + text.lines().findFirst().orElse("") + "'");
  }

  private static List<String> all(CalculationModule module, List<Appliance> appliances) {
    List<String> all = new ArrayList<>(Answers.ofItself(module));
    appliances.forEach(appliance -> all.addAll(Answers.of(module, appliance)));
    return all;
  }

  /** Tells the first difference only: the rest mostly follows from it. */
  private static void compare(
      String when, List<String> expected, List<String> found, List<String> breaches) {
    for (int i = 0; i < Math.max(expected.size(), found.size()); i++) {
      String usual = i < expected.size() ? expected.get(i) : "nothing";
      String now = i < found.size() ? found.get(i) : "nothing";
      if (!usual.equals(now)) {
        breaches.add("answers differently %s: '%s' instead of '%s'".formatted(when, now, usual));
        return;
      }
    }
  }
}
