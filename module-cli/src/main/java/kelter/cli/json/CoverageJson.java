package kelter.cli.json;

import java.util.List;
import kelter.core.workshop.Coverage;

/** How much of what is behind calls has a model, as a result. */
public final class CoverageJson {

  private CoverageJson() {}

  /**
   * The coverage of all kinds.
   *
   * @param coverage the coverage of each kind
   * @return the text
   */
  public static String of(List<Coverage> coverage) {
    return JsonOutput.document(
        ResultFormat.COVERAGE,
        out ->
            out.objects(
                "kinds",
                coverage,
                each -> {
                  out.text("kind", each.kind().id());
                  out.number("share", each.share());
                  out.objects(
                      "without",
                      each.without(),
                      cause -> {
                        out.text("cause", cause.key());
                        out.text("title", cause.title());
                        out.number("share", cause.share());
                      });
                }));
  }
}
