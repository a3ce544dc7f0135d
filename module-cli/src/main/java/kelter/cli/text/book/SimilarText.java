package kelter.cli.text.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Figures;
import kelter.cli.text.Layout;
import kelter.core.book.Similar;
import kelter.core.book.SimilarCauses;

/** Jobs like one. */
public final class SimilarText {

  private static final int MOST_CAUSES = 5;

  private SimilarText() {}

  /**
   * Writes what was found.
   *
   * @param job what was looked for
   * @param found the jobs, the likest first
   * @param cameBack by the id of a job its call-backs
   * @param terminal where it will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(
      String job, List<Similar> found, Map<String, List<String>> cameBack, Terminal terminal) {
    Layout layout = new Layout(terminal);
    if (found.isEmpty()) {
      return layout.line("The book has no other job on such a machine.").toString();
    }
    layout.heading("What it was in " + found.size() + " jobs like " + job);
    List<SimilarCauses> causes = SimilarCauses.of(found);
    if (causes.isEmpty()) {
      layout.line("In none of them a cause was confirmed.");
    }
    for (SimilarCauses cause : causes.subList(0, Math.min(MOST_CAUSES, causes.size()))) {
      layout.hanging(
          "  ",
          "%s %s, %s %s%s"
              .formatted(
                  Figures.percent(cause.share()),
                  cause.cause(),
                  cause.jobs(),
                  cause.jobs() == 1 ? "job" : "jobs",
                  cause.minutes().isPresent()
                      ? ", about " + Math.round(cause.minutes().getAsDouble()) + "\u00a0min"
                      : ""));
    }
    layout.heading("The jobs, the likest first");
    List<List<String>> rows = new ArrayList<>();
    for (Similar each : found) {
      List<String> back = cameBack.getOrDefault(each.entry().job(), List.of());
      rows.add(
          List.of(
              each.entry().closed().toString(),
              each.entry().job(),
              EntriesText.what(each.entry())
                  + (back.isEmpty() ? "" : ", came back as " + String.join(", ", back))));
    }
    return layout.table("  ", rows).toString();
  }
}
