package kelter.cli.sheet;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import kelter.cli.terminal.MarketWords;
import kelter.core.job.Job;
import kelter.core.sheet.WorkSheet;
import kelter.core.text.HarmlessText;

/**
 * A work sheet as a page of HTML to be printed. It states no paper, so that it comes out on A4 as
 * on Letter; it loads nothing and runs nothing, and what a job says is escaped.
 */
public final class SheetPage {

  private static final String TEMPLATE = "sheet.html.mustache";

  private SheetPage() {}

  /**
   * The page of a work sheet.
   *
   * @param job the job
   * @param sheet the sheet
   * @return the page
   */
  public static String of(Job job, WorkSheet sheet) {
    UnaryOperator<String> words = words(job);
    String work = words.apply(SheetHead.work(sheet));
    return template()
        .execute(
            Map.of(
                "title", work,
                "danger", sheet.first().isEmpty() ? List.of() : List.of(words.apply(sheet.first())),
                "work", work,
                "machine", words.apply(SheetHead.machine(job)),
                "job", words.apply(SheetHead.job(job)),
                "sections",
                    sheet.sections().stream().map(section -> section(section, words)).toList(),
                "standing", words.apply(SheetHead.STANDING)));
  }

  private static UnaryOperator<String> words(Job job) {
    UnaryOperator<String> market =
        job.market().map(MarketWords::of).orElse(UnaryOperator.identity());
    return text -> HarmlessText.of(market.apply(text));
  }

  private static Map<String, Object> section(
      WorkSheet.Section section, UnaryOperator<String> words) {
    return Map.of(
        "heading",
        words.apply(section.title()),
        "steps",
        section.steps().stream().map(SheetStep::of).map(step -> step(step, words)).toList());
  }

  private static Map<String, Object> step(SheetStep step, UnaryOperator<String> words) {
    return Map.of(
        "caution", step.caution(), "signal", step.signal(), "text", words.apply(step.text()));
  }

  private static Template template() {
    try (InputStream in = SheetPage.class.getResourceAsStream(TEMPLATE)) {
      return Mustache.compiler()
          .escapeHTML(true)
          .compile(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
