package kelter.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.cli.drawing.Scale;
import kelter.cli.drawing.Svg;
import kelter.cli.text.Figures;
import kelter.core.check.Finding;
import kelter.core.proof.ReadTwice;
import kelter.core.quantity.QuantityFormat;
import kelter.core.uncertainty.Estimate;

/** A reading as found and as left on one axis, the allowed span hatched. */
final class ReadingDrawing {

  private static final double WIDTH = 380;
  private static final double HEIGHT = 78;
  private static final double LEFT = 66;
  private static final double RIGHT = 370;
  private static final double UPPER = 16;
  private static final double LOWER = 38;
  private static final double FOOT = 70;
  private static final double BAND_TOP = 4;
  private static final double BAND_HEIGHT = 46;
  private static final double RADIUS = 6;
  private static final double COVERAGE = 2;

  /** Limits closer than this have no room for two texts. */
  private static final double APART = 140;

  private ReadingDrawing() {}

  /** The drawing; empty where there is no value or no limit. */
  static Optional<String> of(String id, ReadTwice read) {
    Optional<Finding> found = read.foundAgainst().filter(ReadingDrawing::hasValue);
    Optional<Finding> left = read.leftAgainst().filter(ReadingDrawing::hasValue);
    Optional<Finding> either = left.or(() -> found).filter(ReadingDrawing::isLimited);
    return either.map(finding -> draw(id, read, found, left, finding));
  }

  private static boolean hasValue(Finding finding) {
    return finding.judgement().measured().isPresent();
  }

  private static boolean isLimited(Finding finding) {
    return Double.isFinite(finding.limits().low()) || Double.isFinite(finding.limits().high());
  }

  private static String draw(
      String id, ReadTwice read, Optional<Finding> found, Optional<Finding> left, Finding limits) {
    Svg svg =
        Svg.within(id, WIDTH, HEIGHT, read.observable().title(), description(found, left, limits));
    Scale scale = scale(read, found, left, limits);
    double from = scale.place(limits.limits().low());
    double to = scale.place(limits.limits().high());
    svg.rectangle(from, BAND_TOP, to - from, BAND_HEIGHT, "class=\"band\"");
    svg.line(LEFT, LOWER + 16, RIGHT, LOWER + 16, "class=\"axis\"");
    ends(svg, limits, from, to);
    found.ifPresent(each -> mark(svg, scale, each, UPPER, "as found", "class=\"open\""));
    left.ifPresent(each -> mark(svg, scale, each, LOWER, "as left", "class=\"full\""));
    return svg.toString();
  }

  private static String description(
      Optional<Finding> found, Optional<Finding> left, Finding limits) {
    List<String> told = new ArrayList<>();
    found.ifPresent(each -> told.add("as found " + Figures.measured(each)));
    left.ifPresent(each -> told.add("as left " + Figures.measured(each)));
    told.add("allowed " + Figures.limits(limits));
    return String.join("; ", told) + ".";
  }

  private static Scale scale(
      ReadTwice read, Optional<Finding> found, Optional<Finding> left, Finding limits) {
    List<Double> values = new ArrayList<>();
    for (double limit : new double[] {limits.limits().low(), limits.limits().high()}) {
      if (Double.isFinite(limit)) {
        values.add(limit);
      }
    }
    for (Optional<Finding> each : List.of(found, left)) {
      each.flatMap(finding -> finding.judgement().measured())
          .ifPresent(
              estimate -> {
                values.add(estimate.value() - COVERAGE * estimate.standardUncertainty());
                values.add(estimate.value() + COVERAGE * estimate.standardUncertainty());
              });
    }
    double least = values.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    double most = values.stream().mapToDouble(Double::doubleValue).max().orElse(1);
    return Scale.around(least, most, LEFT, RIGHT, read.observable().logarithmic());
  }

  /** Both limits by themselves, or in one line where they lie close together. */
  private static void ends(Svg svg, Finding finding, double from, double to) {
    double low = finding.limits().low();
    double high = finding.limits().high();
    boolean both = Double.isFinite(low) && Double.isFinite(high);
    if (both && to - from < APART) {
      tick(svg, from);
      tick(svg, to);
      double middle = Math.max(LEFT + APART / 2, Math.min(RIGHT - APART / 2, (from + to) / 2));
      svg.words(middle, FOOT, plain(Figures.limits(finding)), "class=\"s\" text-anchor=\"middle\"");
      return;
    }
    end(svg, finding, low, from);
    end(svg, finding, high, to);
  }

  private static void end(Svg svg, Finding finding, double limit, double x) {
    if (Double.isFinite(limit)) {
      tick(svg, x);
      String told =
          QuantityFormat.plain(finding.kind().fromSi(limit, finding.unit()))
              + " "
              + finding.unit().symbol();
      String anchor = x > (LEFT + RIGHT) / 2 ? "end" : "start";
      svg.words(x, FOOT, told.strip(), "class=\"s\" text-anchor=\"" + anchor + "\"");
    }
  }

  private static void tick(Svg svg, double x) {
    svg.line(x, BAND_TOP, x, LOWER + 20, "class=\"axis\"");
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  private static void mark(
      Svg svg, Scale scale, Finding finding, double y, String label, String style) {
    Estimate estimate = finding.judgement().measured().orElseThrow();
    double u = COVERAGE * estimate.standardUncertainty();
    double low = scale.place(estimate.value() - u);
    double high = scale.place(estimate.value() + u);
    svg.words(0, y + 4, label, "class=\"t\"");
    svg.group(
        label + " " + Figures.measured(finding),
        () -> {
          svg.line(low, y, high, y, "class=\"axis\"");
          svg.line(low, y - 5, low, y + 5, "class=\"axis\"");
          svg.line(high, y - 5, high, y + 5, "class=\"axis\"");
          svg.circle(scale.place(estimate.value()), y, RADIUS, style);
        });
  }
}
