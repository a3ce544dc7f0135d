package kelter.core.catalogue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Curve;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Nameplate;
import kelter.core.job.Reading;
import kelter.core.law.Celsius;
import kelter.core.law.CopperResistance;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;

/**
 * What a machine in order teaches of its model. Nameplates, figures and curves that its job states
 * are carried over. A reading becomes a figure where observable and figure have one id, and points
 * of a curve where they have one id and a condition is what the curve runs over. Several readings
 * count as their mean. What was over or under a range teaches nothing.
 */
public final class Learning {

  /** Figures of copper, which a module states for 20 °C. */
  private static final Set<String> COPPER =
      Set.of("winding-resistance", "auxiliary-resistance", "coil-resistance");

  private static final MathContext FOUR_DIGITS = new MathContext(4);

  private static final String TEMPERATURE = "temperature";

  /** The law of copper holds so far, K: -50 °C to 200 °C. */
  private static final double COLDEST = Celsius.ZERO - 50;

  private static final double HOTTEST = Celsius.ZERO + 200;

  private final Job job;
  private final Appliance stated;
  private final Vocabulary vocabulary;
  private final Source measured;

  private Learning(Job job, Appliance stated, Vocabulary vocabulary) {
    this.job = job;
    this.stated = stated;
    this.vocabulary = vocabulary;
    String day = job.date().isEmpty() ? "" : ", " + job.date();
    this.measured =
        new Source("measured on a machine in order, job " + job.id() + day, Standing.MEASURED);
  }

  /**
   * The model of a machine that is in order.
   *
   * @param job its job, in which all of its readings are of the machine in order
   * @param stated the machine as the job states it, without what was filled from elsewhere
   * @param vocabulary the words of all modules
   * @return the model; resistances of copper are brought to 20 °C where the reading tells its
   *     temperature, and taken as read where it does not
   * @throws IllegalArgumentException if the job tells no maker or no model
   */
  public static MachineModel of(Job job, Appliance stated, Vocabulary vocabulary) {
    return new Learning(job, stated, vocabulary).model();
  }

  private MachineModel model() {
    List<Component> components = new ArrayList<>();
    for (Component component : job.appliance().components()) {
      learned(component).ifPresent(components::add);
    }
    return new MachineModel(
        stated.kind(),
        stated.maker(),
        stated.model(),
        List.of(),
        stated.nameplate(),
        components,
        Map.of(),
        measured);
  }

  /** What the job states and shows of a component; empty if that is nothing. */
  private Optional<Component> learned(Component component) {
    ComponentKind kind = vocabulary.kind(component.kind()).orElseThrow();
    Optional<Component> own = stated.component(component.id());
    Map<String, Quantity> figures =
        new LinkedHashMap<>(own.map(Component::figures).orElse(Map.of()));
    Map<String, Curve> curves = new LinkedHashMap<>(own.map(Component::curves).orElse(Map.of()));
    int carried = figures.size() + curves.size();
    for (Characteristic figure : kind.figures()) {
      if (!figures.containsKey(figure.id())) {
        figure(component, figure).ifPresent(value -> figures.put(figure.id(), value));
      }
    }
    for (CurveKind curve : kind.curves()) {
      if (!curves.containsKey(curve.id())) {
        curve(component, curve).ifPresent(points -> curves.put(curve.id(), points));
      }
    }
    boolean more = figures.size() + curves.size() > carried;
    if (own.isEmpty() && !more) {
      return Optional.empty();
    }
    return Optional.of(
        new Component(
            component.id(),
            component.kind(),
            own.map(Component::nameplate).orElse(Nameplate.UNREADABLE),
            figures,
            curves,
            carried == 0 ? measured : source(own.orElseThrow(), more)));
  }

  private Source source(Component own, boolean more) {
    return more ? own.source().with(measured) : own.source();
  }

  private Optional<Quantity> figure(Component component, Characteristic figure) {
    Optional<Observable> observable = vocabulary.observable(component.kind(), figure.id());
    if (observable.isEmpty() || !isOneKind(observable.get().kind(), figure.kind())) {
      return Optional.empty();
    }
    List<Quantity> values = new ArrayList<>();
    for (Measurement measurement : job.measurements(component.id(), figure.id())) {
      double factor = COPPER.contains(figure.id()) ? toTwenty(measurement) : 1;
      List<Quantity> read = values(measurement);
      if (read.isEmpty() || Double.isNaN(factor)) {
        return Optional.empty();
      }
      read.forEach(each -> values.add(times(each, factor)));
    }
    return values.isEmpty()
        ? Optional.empty()
        : Optional.of(mean(values)).filter(value -> canBe(value, figure));
  }

  /** Whether a figure can be this at all; readings may lie farther than figures. */
  private static boolean canBe(Quantity value, Characteristic figure) {
    double si = value.si();
    return figure.span().isEmpty()
        || si >= figure.span().get().low() && si <= figure.span().get().high();
  }

  /** What brings a reading to 20 °C; 1 where it tells no temperature, NaN beyond the law. */
  private static double toTwenty(Measurement measurement) {
    double kelvin = measurement.conditions().si(TEMPERATURE, Celsius.TWENTY);
    return kelvin < COLDEST || kelvin > HOTTEST ? Double.NaN : 1 / CopperResistance.factor(kelvin);
  }

  private Optional<Curve> curve(Component component, CurveKind curve) {
    Optional<Observable> observable = vocabulary.observable(component.kind(), curve.id());
    if (observable.isEmpty() || !isOneKind(observable.get().kind(), curve.y())) {
      return Optional.empty();
    }
    Map<Double, List<Quantity>> at = new TreeMap<>();
    Map<Double, Quantity> places = new LinkedHashMap<>();
    for (Measurement measurement : job.measurements(component.id(), curve.id())) {
      Optional<Quantity> x = condition(measurement, observable.get(), curve.x());
      if (x.isPresent()) {
        places.putIfAbsent(x.get().si(), x.get());
        at.computeIfAbsent(x.get().si(), any -> new ArrayList<>()).addAll(values(measurement));
      }
    }
    List<Curve.Point> points = new ArrayList<>();
    at.forEach(
        (x, values) -> {
          if (!values.isEmpty()) {
            points.add(new Curve.Point(places.get(x), mean(values)));
          }
        });
    return points.size() < 2 ? Optional.empty() : Optional.of(new Curve(points));
  }

  private static Optional<Quantity> condition(
      Measurement measurement, Observable observable, QuantityKind kind) {
    for (Characteristic condition : observable.conditions()) {
      if (isOneKind(condition.kind(), kind)) {
        return measurement.conditions().figure(condition);
      }
    }
    return Optional.empty();
  }

  private static boolean isOneKind(QuantityKind one, QuantityKind other) {
    return one.name().equals(other.name());
  }

  /** The values that were read; none if one reading is no value. */
  private static List<Quantity> values(Measurement measurement) {
    List<Quantity> values = new ArrayList<>();
    for (Reading reading : measurement.readings()) {
      if (!(reading instanceof Reading.Value value)) {
        return List.of();
      }
      values.add(value.quantity());
    }
    return values;
  }

  private static Quantity times(Quantity quantity, double factor) {
    return Quantity.ofSi(quantity.si() * factor, 0, quantity.kind()).in(quantity.unit());
  }

  /** The mean to four digits, which is more than a meter of the trade tells. */
  private static Quantity mean(List<Quantity> values) {
    double sum = 0;
    for (Quantity value : values) {
      sum += value.si();
    }
    Quantity first = values.get(0);
    Quantity mean = Quantity.ofSi(sum / values.size(), 0, first.kind()).in(first.unit());
    double rounded = new BigDecimal(mean.value()).round(FOUR_DIGITS).doubleValue();
    return new Quantity(rounded, 0, mean.unit(), mean.kind());
  }
}
