package kelter.cli.trial;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import kelter.cli.trial.Technician.Order;
import kelter.cli.trial.Technician.Visit;
import kelter.core.file.catalogue.KindFile;

/** What came out of many visits, as a table. */
final class VisitTable {

  private final List<Visit> visits;

  VisitTable(List<Visit> visits) {
    this.visits = List.copyOf(visits);
  }

  private VisitTable only(Predicate<Visit> counts) {
    return new VisitTable(visits.stream().filter(counts).toList());
  }

  /** The mean time to the decision in an order, in min. */
  double minutes(Order order) {
    return mean(visit -> visit.courses().get(order).minutes());
  }

  /** The mean number of answers to the decision in an order. */
  double answers(Order order) {
    return mean(visit -> visit.courses().get(order).answers());
  }

  /** The share of visits that came to a decision, 0 to 1. */
  double enough(Order order) {
    return mean(visit -> visit.courses().get(order).enough() ? 1 : 0);
  }

  /** The share of visits at whose end what is named first is there, 0 to 1. */
  double right(Order order) {
    return mean(visit -> visit.courses().get(order).right() ? 1 : 0);
  }

  /** The share of mendable machines that are cured at the first visit, 0 to 1. */
  double cured(ToDoubleFunction<Visit> with) {
    return only(Visit::mendable).mean(with);
  }

  /** What was typed and not taken. */
  List<String> refused() {
    return visits.stream().flatMap(visit -> visit.refused().stream()).toList();
  }

  private double mean(ToDoubleFunction<Visit> figure) {
    return visits.stream().mapToDouble(figure).average().orElse(Double.NaN);
  }

  /** Prints one line for each kind and one for all. */
  void print(PrintStream out) {
    out.println(
        "Led, in a fixed order and at random; cured with the bag, the three likeliest parts, all");
    out.println(
        "                        n     minutes        answers       decided        right"
            + "         cured       parts in bag");
    for (String kind : KindFile.shipped()) {
      only(visit -> visit.kind().equals(kind)).line(kind, out);
    }
    line("all", out);
    refused().forEach(each -> out.println("not taken: " + each));
  }

  private void line(String name, PrintStream out) {
    StringBuilder line = new StringBuilder();
    line.append(
        String.format(
            Locale.ROOT,
            "%-22s %3d ",
            name.substring(0, Math.min(22, name.length())),
            visits.size()));
    for (Order order : Order.values()) {
      line.append(String.format(Locale.ROOT, "%5.0f", minutes(order)));
    }
    for (Order order : Order.values()) {
      line.append(String.format(Locale.ROOT, "%5.1f", answers(order)));
    }
    for (Order order : Order.values()) {
      line.append(String.format(Locale.ROOT, "%4.0f%%", 100 * enough(order)));
    }
    for (Order order : Order.values()) {
      line.append(String.format(Locale.ROOT, "%4.0f%%", 100 * right(order)));
    }
    line.append(String.format(Locale.ROOT, "%4.0f%%", 100 * cured(visit -> visit.bag().cured())));
    line.append(
        String.format(Locale.ROOT, "%4.0f%%", 100 * cured(visit -> visit.likeliest().cured())));
    line.append(String.format(Locale.ROOT, "%4.0f%%", 100 * cured(visit -> visit.all().cured())));
    line.append(String.format(Locale.ROOT, "%5.1f", mean(visit -> visit.bag().parts())));
    line.append(String.format(Locale.ROOT, "%5.1f", mean(visit -> visit.likeliest().parts())));
    out.println(line);
  }
}
