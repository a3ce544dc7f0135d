package kelter.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import kelter.cli.text.StepText;
import kelter.core.job.Component;
import kelter.core.job.Curve;
import kelter.core.job.Evaluation;
import kelter.core.job.Measurement;
import kelter.core.job.Measurement.Stage;
import kelter.core.quantity.QuantityFormat;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Observable;
import kelter.core.workshop.Case;

/**
 * Curves that a component states, with what was read on them before and after: a reading of what
 * the curve tells, where it states where on the axis it was taken, is a point; a reading of what
 * runs along the axis is a line across.
 */
final class ReportCurves {

  private final Case machine;
  private final UnaryOperator<String> words;

  ReportCurves(Case machine, UnaryOperator<String> words) {
    this.machine = machine;
    this.words = words;
  }

  List<Map<String, Object>> all() {
    List<Map<String, Object>> all = new ArrayList<>();
    for (Component component : machine.job().appliance().components()) {
      component
          .curves()
          .forEach(
              (id, curve) ->
                  kind(component, id)
                      .flatMap(kind -> of(component, kind, curve, all.size()))
                      .ifPresent(all::add));
    }
    return all;
  }

  private Optional<CurveKind> kind(Component component, String id) {
    return machine
        .vocabulary()
        .kind(component.kind())
        .flatMap(kind -> kind.curves().stream().filter(each -> each.id().equals(id)).findFirst());
  }

  private Optional<Map<String, Object>> of(
      Component component, CurveKind kind, Curve curve, int number) {
    List<LinesDrawing.Mark> marks = marks(component, kind);
    if (marks.isEmpty()) {
      return Optional.empty();
    }
    double[] x = new double[curve.points().size()];
    double[] y = new double[x.length];
    List<Map<String, Object>> rows = new ArrayList<>();
    String xUnit = kind.x().unit().symbol();
    String yUnit = kind.y().unit().symbol();
    for (int i = 0; i < x.length; i++) {
      x[i] = kind.x().unit().fromSi(curve.points().get(i).x().si());
      y[i] = kind.y().unit().fromSi(curve.points().get(i).y().si());
      rows.add(row(x[i] + "", QuantityFormat.plain(x[i]), QuantityFormat.plain(y[i]), yUnit));
    }
    for (LinesDrawing.Mark mark : marks) {
      rows.add(
          row(
              mark.told(),
              mark.told() + ", " + QuantityFormat.plain(round(mark.x())),
              Double.isNaN(mark.y()) ? "not read" : QuantityFormat.plain(round(mark.y())),
              yUnit));
    }
    String title =
        words.apply(StepText.sentence(Component.words(component.id())) + ": " + kind.title());
    LinesDrawing.About about =
        new LinesDrawing.About(
            "curve-" + number,
            title,
            "The curve that the job states, and what was read before and after the work.",
            kind.x().name() + ", " + xUnit,
            kind.y().name() + ", " + yUnit);
    return Optional.of(
        Map.of(
            "title", title,
            "drawing",
                LinesDrawing.of(about, List.of(new LinesDrawing.Line("stated", x, y)), marks),
            "x", words.apply(kind.x().name() + ", " + xUnit),
            "y", words.apply(kind.y().name() + ", " + yUnit),
            "rows", rows));
  }

  private static Map<String, Object> row(String id, String x, String y, String unit) {
    return Map.of("id", id, "x", x, "y", y, "label", unit);
  }

  private static double round(double value) {
    return Math.round(1000 * value) / 1000.0;
  }

  private List<LinesDrawing.Mark> marks(Component component, CurveKind kind) {
    List<LinesDrawing.Mark> marks = new ArrayList<>();
    for (Measurement each : machine.job().measurements()) {
      Optional<Observable> observable =
          machine.vocabulary().observable(component.kind(), each.observable());
      if (each.component().equals(component.id()) && observable.isPresent()) {
        mark(each, observable.get(), kind).ifPresent(marks::add);
      }
    }
    return marks;
  }

  private Optional<LinesDrawing.Mark> mark(
      Measurement measurement, Observable observable, CurveKind kind) {
    boolean left = measurement.stage() == Stage.AS_LEFT;
    String name = left ? "as left" : "as found";
    String told = observable.title() + " " + name;
    Optional<Double> value =
        Evaluation.of(machine.job(), measurement, observable).map(each -> each.estimate().value());
    String axis = axis(kind);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (observable.id().equals(kind.id()) && measurement.conditions().figure(axis).isPresent()) {
      double x = measurement.conditions().figure(axis).get().si();
      return Optional.of(
          new LinesDrawing.Mark(
              name, told, kind.x().unit().fromSi(x), kind.y().unit().fromSi(value.get()), left));
    }
    return observable.id().equals(axis)
        ? Optional.of(
            new LinesDrawing.Mark(
                kind.x().name() + " " + name,
                told,
                kind.x().unit().fromSi(value.get()),
                Double.NaN,
                left))
        : Optional.empty();
  }

  /** The word for what runs along the axis, as readings and their conditions have it. */
  private static String axis(CurveKind kind) {
    return kind.x().name().startsWith("flow") ? "flow" : kind.x().name().replace(' ', '-');
  }
}
