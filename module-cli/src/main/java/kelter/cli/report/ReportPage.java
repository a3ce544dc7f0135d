package kelter.cli.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import kelter.cli.proof.ProofText;
import kelter.cli.terminal.MarketWords;
import kelter.core.job.Appliance;
import kelter.core.job.Job;
import kelter.core.option.Explained;
import kelter.core.proof.Proof;
import kelter.core.report.MayUse;
import kelter.core.report.Point;
import kelter.core.shop.Shop;
import kelter.core.text.HarmlessText;
import kelter.core.workshop.Case;

/**
 * The report on a job as one page of HTML: the owner first, then the figures. It loads nothing and
 * runs nothing, states no paper, and what a job says is escaped.
 */
public final class ReportPage {

  private static final String TEMPLATE = "report.html";

  private final Case machine;
  private final Proof proof;
  private final UnaryOperator<String> words;

  private ReportPage(Case machine, Proof proof) {
    this.machine = machine;
    this.proof = proof;
    UnaryOperator<String> market = MarketWords.of(machine.market());
    this.words = text -> HarmlessText.of(market.apply(text));
  }

  /**
   * What stands on a page beside the job.
   *
   * @param points the points for the owner
   * @param owner lines on the owner, such as name and address; may be empty
   * @param anonymous whether what may tell persons is left out: owner, serial number, names
   * @param shop the shop, for its instruments
   * @param explained what the options cost, if that was weighed
   */
  public record Beside(
      List<Point> points,
      List<String> owner,
      boolean anonymous,
      Shop shop,
      Optional<Explained> explained) {

    /** Copies the lists. */
    public Beside {
      points = List.copyOf(points);
      owner = List.copyOf(owner);
    }
  }

  /**
   * The page.
   *
   * @param machine the case
   * @param proof what was shown after the work
   * @param beside what else stands on it
   * @return the page
   */
  public static String of(Case machine, Proof proof, Beside beside) {
    return new ReportPage(machine, proof).page(beside);
  }

  private String page(Beside beside) {
    Job job = machine.job();
    ReportRows rows = new ReportRows(machine, proof, words, beside.anonymous());
    Map<String, Object> page = new HashMap<>();
    page.put("title", words.apply("Job " + job.id() + ": " + kind(job.appliance())));
    page.put("heading", words.apply("Your " + kind(job.appliance())));
    page.put("machine", words.apply(machine(job.appliance(), beside.anonymous())));
    page.put("job", words.apply(job(job)));
    page.put("owner", beside.anonymous() ? List.of() : beside.owner().stream().map(words).toList());
    page.put("danger", MayUse.danger(machine.lockOut()).map(words).stream().toList());
    page.put("points", points(beside.points()));
    page.put("standing", words.apply(ProofText.STANDING));
    page.put("work", rows.work());
    page.put("hasWork", !rows.work().isEmpty());
    page.put("tests", rows.tests());
    page.put("readings", rows.readings());
    page.put("hasReadings", !rows.readings().isEmpty());
    page.put("curves", new ReportCurves(machine, words).all());
    page.put("odds", rows.odds().stream().toList());
    page.put(
        "cost", beside.explained().flatMap(each -> ReportCost.of(each, words)).stream().toList());
    page.put("instruments", rows.instruments(beside.shop()));
    page.put("hasInstruments", !rows.instruments(beside.shop()).isEmpty());
    return PageTemplate.of(TEMPLATE).execute(page);
  }

  private static String kind(Appliance appliance) {
    return appliance.kind().replace('-', ' ');
  }

  private static String machine(Appliance appliance, boolean anonymous) {
    List<String> told = new ArrayList<>();
    told.add((appliance.maker() + " " + appliance.model()).strip());
    if (!anonymous && !appliance.serial().isBlank()) {
      told.add("serial number " + appliance.serial());
    }
    appliance.age().ifPresent(age -> told.add("age " + age.display()));
    told.removeIf(String::isBlank);
    return String.join(", ", told);
  }

  private static String job(Job job) {
    String closed =
        job.progress()
            .closing()
            .map(each -> ", closed on " + each.date())
            .orElse(", not closed yet");
    String before =
        job.progress().callBackOf().map(first -> "; a call-back of job " + first).orElse("");
    return "Job "
        + job.id()
        + (job.date().isEmpty() ? "" : ", called on " + job.date())
        + closed
        + before;
  }

  private List<Map<String, Object>> points(List<Point> points) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (Point point : points) {
      all.add(
          Map.of(
              "number", Integer.toString(all.size() + 1),
              "question", words.apply(point.question()),
              "answers", point.answers().stream().map(words).toList(),
              "sign", all.isEmpty() && !point.warning()));
    }
    return all;
  }
}
