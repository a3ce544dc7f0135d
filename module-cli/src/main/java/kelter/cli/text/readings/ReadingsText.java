package kelter.cli.text.readings;

import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Layout;
import kelter.core.log.EffectiveObservations;
import kelter.core.log.ModifiedZScore;
import kelter.core.log.Quantisation;
import kelter.core.log.SteadyRule;
import kelter.core.log.change.ChangeSearch;
import kelter.core.log.change.FalseDiscovery;
import kelter.core.log.change.LocalLevel;
import kelter.core.log.measurement.Change;
import kelter.core.log.measurement.LogReading;
import kelter.core.log.measurement.LogReport;
import kelter.core.log.measurement.ReadAs;
import kelter.core.log.measurement.Stretch;
import kelter.core.source.Source;

/** What an instrument log shows, for a person. */
public final class ReadingsText {

  private ReadingsText() {}

  /**
   * Writes what a log shows.
   *
   * @param report what it shows
   * @param maps how columns are read that were said to hold something
   * @param stretches stretches that were asked for by their ends or numbers
   * @param changes what changed between two stretches, may be empty
   * @param readings readings of a job, may be empty
   * @param outcome what was done with them, sentences
   * @param terminal where it will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(
      LogReport report,
      List<ReadAs> maps,
      List<Stretch> stretches,
      List<Change> changes,
      List<LogReading> readings,
      List<String> outcome,
      Terminal terminal) {
    LogPage log = new LogPage(report, terminal);
    new RecognisedText(log).write();
    new ColumnsText(log).write();
    new WindowsText(log).write();
    new ChangesText(log).write();
    new WindowsText(log).write(stretches);
    new ChangesText(log).write(changes);
    new EntriesText(log).maps(maps);
    new EntriesText(log).readings(readings, outcome);
    notes(log.layout());
    return log.layout().toString();
  }

  private static void notes(Layout layout) {
    layout.heading("To bear in mind");
    layout.hanging(
        "  - ",
        "± is the standard uncertainty times 2. In a window it is that of the scatter alone (type A).");
    layout.hanging("  - ", "Samples worth: " + EffectiveObservations.SOURCE.display() + ".");
    layout.hanging("  - ", "Outliers: " + ModifiedZScore.SOURCE.display() + ".");
    layout.hanging("  - ", "Steady: " + SteadyRule.SOURCE.display() + ".");
    layout.hanging("  - ", "Steps of the figures: " + Quantisation.SOURCE.display() + ".");
    layout.hanging("  - ", "Drift: " + LocalLevel.SOURCE.display() + ".");
    for (Source source : ChangeSearch.SOURCES) {
      layout.hanging("  - ", "Changes: " + source.display() + ".");
    }
    layout.hanging("  - ", "Which of them count: " + FalseDiscovery.SOURCE.display() + ".");
  }
}
