package kelter.cli.text.book;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Figures;
import kelter.cli.text.Layout;
import kelter.core.book.learned.Learned;
import kelter.core.book.learned.LearnedKind;
import kelter.core.book.learned.LearnedShare;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.Kinds;

/** What a job book taught. */
public final class LearnedText {

  private static final int MOST = 3;

  private LearnedText() {}

  /**
   * Writes what was learned.
   *
   * @param learned what was learned
   * @param kinds the kinds of machines
   * @param file where it was written
   * @param terminal where it will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(Learned learned, Kinds kinds, Path file, Terminal terminal) {
    Layout layout = new Layout(terminal);
    layout.line("Learned from %s jobs. Written: %s".formatted(learned.jobs(), file));
    layout.line(
        "A table of shares counts as %.0f jobs here and a chance of a table as %.0f answers, as the book itself bears out. After each year a job counts %s of what it did."
            .formatted(
                learned.strength(),
                learned.chanceStrength(),
                Figures.percent(learned.keptPerYear())));
    kinds(learned, kinds, layout);
    return layout.toString();
  }

  /** The kinds with the most jobs first, and what moved most in each. */
  static void kinds(Learned learned, Kinds kinds, Layout layout) {
    List<String> ids = new ArrayList<>(learned.kinds().keySet());
    ids.sort(Comparator.comparingInt(id -> -learned.kinds().get(id).jobs()));
    for (String id : ids) {
      LearnedKind kind = learned.kinds().get(id);
      layout.heading(
          "%s: %s jobs, which count %s"
              .formatted(
                  kinds.kind(id).map(Kind::title).orElse(id),
                  kind.jobs(),
                  Figures.percent(kind.weight())));
      kind.shares().entrySet().stream()
          .sorted(
              Comparator.comparingDouble(
                      (Map.Entry<String, LearnedShare> each) -> -moved(each.getValue()))
                  .thenComparing(Map.Entry::getKey))
          .limit(MOST)
          .forEach(each -> layout.hanging("  ", words(each.getKey(), each.getValue())));
      if (!kind.unnamed().isEmpty()) {
        layout.hanging(
            "  ",
            "Causes that the table does not name, counted as something else: "
                + kind.unnamed().keySet().stream().sorted().collect(Collectors.joining(", "))
                + ". Put them into a kind of your own, and they are weighed.");
      }
    }
  }

  private static double moved(LearnedShare share) {
    return Math.abs(share.share() - share.table());
  }

  private static String words(String key, LearnedShare share) {
    return "%s: share %s (table %s), %.0f jobs"
        .formatted(
            key, Figures.percent(share.share()), Figures.percent(share.table()), share.jobs());
  }
}
