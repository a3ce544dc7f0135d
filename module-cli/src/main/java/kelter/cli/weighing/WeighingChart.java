package kelter.cli.weighing;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kelter.cli.drawing.Svg;
import kelter.cli.terminal.Words;
import kelter.core.job.Job;
import kelter.core.option.Option;
import kelter.core.option.Reasons;
import kelter.core.option.Weighing;

/**
 * The options of a job as a drawing: for each what is paid over the years, with its band, all on
 * the same axes, and the odds that it costs least. Lines and words tell everything that the colour
 * tells.
 */
public final class WeighingChart {

  private static final double WIDTH = 860;
  private static final double MARGIN = 20;
  private static final double HEAD = 74;
  private static final double PANEL_WIDTH = 400;
  private static final double PANEL_HEIGHT = 262;
  private static final double AXIS = 62;
  private static final double TITLE = 64;
  private static final double PLOT_WIDTH = PANEL_WIDTH - AXIS - 12;
  private static final double PLOT_HEIGHT = 140;
  private static final double BAR = 24;
  private static final double BARS = 420;
  private static final int TITLE_SIGNS = 58;
  private static final int YEARS_APART = 5;

  private static final String DARK = "#1a1a1a";
  private static final String MEAN = "fill=\"none\" stroke=\"#0b4f8a\" stroke-width=\"2.5\"";
  private static final String DOT = "fill=\"#0b4f8a\"";
  private static final String BAND = "fill=\"#9cc4e4\" fill-opacity=\"0.6\"";
  private static final String EDGE =
      "fill=\"none\" stroke=\"#0b4f8a\" stroke-width=\"1\" stroke-dasharray=\"4 3\"";
  private static final String OTHER =
      "fill=\"none\" stroke=\"#767676\" stroke-width=\"1\" stroke-dasharray=\"1 2\"";
  private static final String GRID = "stroke=\"#d9d9d9\" stroke-width=\"1\"";
  private static final String FRAME = "stroke=\"" + DARK + "\" stroke-width=\"1\"";
  private static final String WORDS = "fill=\"" + DARK + "\"";
  private static final String RIGHT = WORDS + " text-anchor=\"end\"";
  private static final String CENTRED = WORDS + " text-anchor=\"middle\"";
  private static final String BOLD = WORDS + " font-weight=\"bold\"";

  private final Job job;
  private final Weighing weighing;
  private final List<Reasons.Course> courses;
  private final String currency;
  private final double step;
  private final double top;
  private final Svg svg;

  private WeighingChart(Job job, Weighing weighing, Reasons reasons) {
    this.job = job;
    this.weighing = weighing;
    this.courses = reasons.courses();
    this.currency = weighing.currency().getCurrencyCode();
    this.step = step(CoursePlot.top(courses));
    this.top = step * Math.ceil(CoursePlot.top(courses) / step);
    this.svg = new Svg(WIDTH, height(), title(), description());
  }

  /**
   * Draws the options of a job.
   *
   * @param job the job
   * @param weighing its options
   * @param reasons what they cost over the years
   * @return the drawing, SVG in UTF-8
   */
  public static String of(Job job, Weighing weighing, Reasons reasons) {
    WeighingChart chart = new WeighingChart(job, weighing, reasons);
    chart.draw();
    return chart.svg.toString();
  }

  /** The distance of the lines of the grid: 1, 2 or 5 times a power of ten, at most five lines. */
  private static double step(double top) {
    double power = Math.pow(10, Math.floor(Math.log10(top / 5)));
    for (double times : new double[] {1, 2, 5}) {
      if (top / (times * power) <= 5) {
        return times * power;
      }
    }
    return 10 * power;
  }

  private int rows() {
    return (courses.size() + 1) / 2;
  }

  private double oddsFrom() {
    return HEAD + rows() * PANEL_HEIGHT + 10;
  }

  private double height() {
    return oddsFrom() + 30 + BAR * weighing.options().size() + MARGIN;
  }

  private String title() {
    return "Repair or replace: job " + job.id() + ", " + job.appliance().kind();
  }

  private String description() {
    return weighing.options().stream().map(this::described).collect(Collectors.joining(". ")) + ".";
  }

  private String described(Option option) {
    return ("%s (%s): about %s %s a year, from %s to %s in 9 of 10 cases; costs least in %s cases")
        .formatted(
            option.title(),
            option.id(),
            WeighingText.amount(option.annualCost().mean()),
            currency,
            WeighingText.amount(option.annualCost().low()),
            WeighingText.amount(option.annualCost().high()),
            WeighingText.inHundred(option.probabilityCheapest()));
  }

  private void draw() {
    svg.words(MARGIN, 28, title(), BOLD + " font-size=\"16\"");
    svg.words(
        MARGIN,
        46,
        "Paid in all by the end of each year, in "
            + currency
            + " of today. Line with dots: mean. Between the dashed lines: 9 of 10 cases.",
        WORDS);
    svg.words(MARGIN, 62, "Dotted: means of the other options.", WORDS);
    for (int i = 0; i < courses.size(); i++) {
      panel(i, MARGIN + (i % 2) * (PANEL_WIDTH + MARGIN), HEAD + (i / 2) * PANEL_HEIGHT);
    }
    odds();
  }

  private void panel(int number, double x, double y) {
    Reasons.Course course = courses.get(number);
    String title = titleOf(course.option());
    List<String> lines = lines((number + 1) + ". " + WeighingText.sentence(title));
    for (int i = 0; i < lines.size(); i++) {
      svg.words(x, y + 18 + 15 * i, lines.get(i), BOLD);
    }
    Axes axes = new Axes(x + AXIS, y + TITLE, course.paid().size() - 1);
    svg.group(title, () -> axes.draw(course));
  }

  private String titleOf(String id) {
    return weighing.options().stream()
        .filter(option -> option.id().equals(id))
        .map(Option::title)
        .findFirst()
        .orElse(id);
  }

  /** At most two lines; what does not fit is left to the words that a pointer shows. */
  private static List<String> lines(String title) {
    List<String> lines = Words.lines(List.of(title.split(" ")), TITLE_SIGNS, TITLE_SIGNS);
    return lines.size() > 2 ? List.of(lines.get(0), lines.get(1) + " ...") : lines;
  }

  private void odds() {
    double y = oddsFrom();
    svg.words(MARGIN, y + 14, "How often each option costs least, of 100 cases", BOLD);
    for (int i = 0; i < weighing.options().size(); i++) {
      Option option = weighing.options().get(i);
      double from = y + 24 + BAR * i;
      double left = MARGIN + 240;
      double length = BARS * option.probabilityCheapest();
      svg.words(left - 8, from + 14, (i + 1) + ". " + option.id(), RIGHT);
      svg.rectangle(
          left, from + 3, BARS, BAR - 8, "fill=\"none\" stroke=\"#767676\" stroke-width=\"1\"");
      svg.rectangle(left, from + 3, length, BAR - 8, DOT);
      svg.words(
          left + BARS + 8, from + 14, WeighingText.inHundred(option.probabilityCheapest()), WORDS);
    }
  }

  /** The axes of a panel, their lower end at today and nothing paid. */
  private final class Axes {

    private final double left;
    private final double upper;
    private final int years;

    Axes(double left, double upper, int years) {
      this.left = left;
      this.upper = upper;
      this.years = Math.max(1, years);
    }

    private double x(double year) {
      return left + PLOT_WIDTH * year / years;
    }

    private double y(double amount) {
      return upper + PLOT_HEIGHT * (1 - Math.max(0, amount) / top);
    }

    void draw(Reasons.Course course) {
      grid();
      band(course);
      for (Reasons.Course other : courses) {
        if (!other.option().equals(course.option())) {
          svg.points("polyline", xs(other), ys(other, Option.Spread::mean), OTHER);
        }
      }
      svg.points("polyline", xs(course), ys(course, Option.Spread::low), EDGE);
      svg.points("polyline", xs(course), ys(course, Option.Spread::high), EDGE);
      svg.points("polyline", xs(course), ys(course, Option.Spread::mean), MEAN);
      for (int year = 0; year < course.paid().size(); year++) {
        svg.circle(x(year), y(course.paid().get(year).mean()), 2.6, DOT);
      }
    }

    private void grid() {
      int lines = (int) Math.round(top / step);
      for (int i = 0; i <= lines; i++) {
        double amount = i * step;
        svg.line(left, y(amount), left + PLOT_WIDTH, y(amount), GRID);
        svg.words(left - 6, y(amount) + 4, WeighingText.amount(amount), RIGHT);
      }
      svg.words(left - 6, upper - 14, currency, RIGHT);
      for (int year = 0; year <= years; year += YEARS_APART) {
        svg.line(x(year), y(0), x(year), y(0) + 5, FRAME);
        svg.words(x(year), y(0) + 18, year == 0 ? "today" : String.valueOf(year), CENTRED);
      }
      svg.line(left, upper, left, y(0), FRAME);
      svg.line(left, y(0), left + PLOT_WIDTH, y(0), FRAME);
      svg.words(left + PLOT_WIDTH / 2, y(0) + 34, "years from now", CENTRED);
    }

    private void band(Reasons.Course course) {
      int count = course.paid().size();
      double[] x = new double[2 * count];
      double[] y = new double[2 * count];
      for (int i = 0; i < count; i++) {
        x[i] = x(i);
        y[i] = y(course.paid().get(i).low());
        x[2 * count - 1 - i] = x(i);
        y[2 * count - 1 - i] = y(course.paid().get(i).high());
      }
      svg.points("polygon", x, y, BAND);
    }

    private double[] xs(Reasons.Course course) {
      return IntStream.range(0, course.paid().size()).mapToDouble(this::x).toArray();
    }

    private double[] ys(Reasons.Course course, ToDoubleFunction<Option.Spread> figure) {
      return course.paid().stream().mapToDouble(paid -> y(figure.applyAsDouble(paid))).toArray();
    }
  }
}
