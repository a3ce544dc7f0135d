package kelter.core.session;

import java.util.ArrayList;
import java.util.List;
import kelter.core.vocabulary.Observable;

/** What can be typed. */
final class Help {

  private static final List<String> ALWAYS =
      List.of(
          "undo takes the last answer back, as often as you like.",
          "list shows what else can be read; why tells what speaks for the likeliest cause.",
          "WORDS = READING enters another reading: heater resistance = 26 ohm.",
          "plate voltage = 230 V and heater rated = 2 kW tell what stands on it.",
          "lacks PART tells that such machines may have it and this one has not.",
          "what if leaks, or what if heater resistance = OL, tries without keeping.",
          "Add 'with METER' to a reading to name the instrument.",
          "note TEXT and did TEXT are kept in the job. done leaves; all is kept.");

  private Help() {}

  static List<String> of(Prompt prompt) {
    List<String> told = new ArrayList<>();
    if (prompt instanceof Prompt.Ask) {
      told.add("y, n or s (sometimes); Enter if nobody can tell; or another symptom.");
    } else if (prompt instanceof Prompt.Measure measure) {
      told.add(forms(measure.question().observable()));
      told.add("skip leaves it out; can't reach leaves out the whole part.");
    } else if (prompt instanceof Prompt.Work) {
      told.add("The number of a line, PART.REMEDY, or your own words; Enter to leave it out.");
    } else if (prompt instanceof Prompt.Look look) {
      told.add("y or n, and behind it what you saw: n, drips at the door. Enter to leave it open.");
      look.test()
          .limits()
          .flatMap(limits -> look.test().awaited())
          .ifPresent(read -> told.add("Better the figure: " + forms(read)));
    } else if (prompt instanceof Prompt.Outside outside) {
      told.add("Read again once it is mended: " + forms(outside.question().observable()));
    } else if (prompt instanceof Prompt.RangeEnd) {
      told.add("The greatest figure that the tester can show; Enter if nobody knows.");
    } else if (prompt instanceof Prompt.KindOfMachine) {
      told.add("What do you call the machine? A few letters do: dryer, washing, fridge.");
    } else if (prompt instanceof Prompt.Age) {
      told.add("Years, such as 9; or 18 months; Enter if nobody knows.");
    } else if (prompt instanceof Prompt.Said) {
      told.add("What the owner says, word for word; Enter to leave it out.");
    }
    told.addAll(ALWAYS);
    return told;
  }

  /** How a reading may be written. */
  static String forms(Observable observable) {
    return switch (observable.type()) {
      case YES_NO -> "y or n.";
      case GRADE -> "One of: " + String.join(", ", observable.grades()) + ".";
      case QUANTITY ->
          "A value with its unit, such as 1 "
              + observable.kind().unit().symbol()
              + "; OL where the meter shows it, or > and the end of its range.";
    };
  }
}
