package kelter.core.quote;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Component;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;

/** Faults and work in the words of the owner: the part is named where the title does not. */
final class WorkWords {

  private WorkWords() {}

  static String of(Remedy remedy) {
    return named(remedy.component(), remedy.title());
  }

  static String of(Fault fault) {
    return named(fault.component(), fault.title());
  }

  static String of(List<Remedy> work) {
    return work.stream().map(WorkWords::of).collect(Collectors.joining("; "));
  }

  private static String named(String component, String title) {
    String part = Component.words(component);
    boolean saysPart =
        title.toLowerCase(Locale.ROOT).replace('-', ' ').contains(component.replace('-', ' '));
    return saysPart ? title : part + ": " + title;
  }

  /** A time as an owner says it. */
  static String of(Quantity time) {
    String unit =
        switch (time.unit().code()) {
          case "d" -> "days";
          case "wk" -> "weeks";
          case "mo" -> "months";
          case "a" -> "years";
          default -> "";
        };
    return unit.isEmpty() || time.value() == 1
        ? time.display()
        : QuantityFormat.plain(time.value()) + " " + unit;
  }
}
