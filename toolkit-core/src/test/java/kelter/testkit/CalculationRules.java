package kelter.testkit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.module.Parameter;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormatException;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Scale;
import kelter.core.quantity.Unit;

/** What a module computes by itself. */
public final class CalculationRules {

  /** Where a range spans more than this ratio, its middle is the geometric one. */
  private static final double DECADES = 100;

  /** A limit beyond this is no limit: no appliance has a figure of that size in any unit. */
  private static final double UNLIMITED = 1e100;

  private CalculationRules() {}

  /**
   * A parameter must have a range above a point, a unit that can be read, and, if it may be left
   * out, a usual value that can be read and lies inside the range.
   *
   * @param module the module
   * @return the breaches
   */
  public static List<String> parameters(CalculationModule module) {
    List<String> breaches = new ArrayList<>();
    for (Calculation calculation : module.calculations()) {
      for (Parameter parameter : calculation.parameters()) {
        String where = calculation.id() + ", parameter " + parameter.id() + ": ";
        if (parameter.choices().isEmpty()) {
          figure(where, parameter, breaches);
        } else {
          choice(where, parameter, breaches);
        }
      }
      calculation
          .outputs()
          .forEach(o -> unit(calculation.id() + ", output " + o.id() + ": ", o.kind(), breaches));
    }
    return breaches;
  }

  private static void choice(String where, Parameter parameter, List<String> breaches) {
    List<String> words = parameter.choices();
    if (new HashSet<>(words).size() < 2 || new HashSet<>(words).size() < words.size()) {
      breaches.add(where + "a choice has two words or more, each once, not " + words);
    }
    if (words.stream().anyMatch(String::isBlank)) {
      breaches.add(where + "a word of a choice is blank");
    }
    if (parameter.usual().isPresent() && !words.contains(parameter.usual().get())) {
      breaches.add(where + "the usual '" + parameter.usual().get() + "' is not one of " + words);
    }
  }

  private static void figure(String where, Parameter parameter, List<String> breaches) {
    QuantityKind kind = parameter.kind();
    unit(where, kind, breaches);
    if (!(parameter.low() < parameter.high())) {
      breaches.add(where + "its range from " + parameter.low() + " is a point");
    }
    boolean absolute = kind.scale() == Scale.TEMPERATURE || kind.scale() == Scale.ABSOLUTE_PRESSURE;
    if (absolute && parameter.low() < 0) {
      breaches.add(where + "its range starts below absolute zero, at " + parameter.low());
    }
    if (parameter.usual().isEmpty()) {
      return;
    }
    String usual = parameter.usual().get();
    try {
      double si = parameter.read(usual).value();
      if (!(si >= parameter.low() && si <= parameter.high())) {
        breaches.add(
            "%sthe usual '%s' is %s in SI, outside %s to %s"
                .formatted(where, usual, si, parameter.low(), parameter.high()));
      }
    } catch (QuantityFormatException unreadable) {
      breaches.add(where + "the usual '" + usual + "' cannot be read: " + unreadable.getMessage());
    }
  }

  private static void unit(String where, QuantityKind kind, List<String> breaches) {
    try {
      if (!Unit.of(kind.unit().code()).equals(kind.unit())) {
        breaches.add(where + "the unit " + kind.unit().code() + " is not the one of that code");
      }
    } catch (QuantityFormatException unknown) {
      breaches.add(where + unknown.getMessage());
    }
  }

  /**
   * With usual or middle values, and with each parameter at either end of its range, a calculation
   * must give one finite figure for each output, inside the scale of its kind, or throw an
   * IllegalArgumentException that says why. It must not change what it is given.
   *
   * @param module the module
   * @return the breaches
   */
  public static List<String> results(CalculationModule module) {
    List<String> breaches = new ArrayList<>();
    for (Calculation calculation : module.calculations()) {
      for (double[] values : tries(calculation)) {
        result(calculation, values, breaches);
      }
    }
    return breaches;
  }

  private static void result(Calculation calculation, double[] values, List<String> breaches) {
    String where = calculation.id() + Arrays.toString(values) + ": ";
    double[] given = values.clone();
    try {
      double[] outputs = calculation.law().apply(given);
      if (outputs.length != calculation.outputs().size()) {
        breaches.add(
            "%s%d results for %d outputs"
                .formatted(where, outputs.length, calculation.outputs().size()));
        return;
      }
      for (int i = 0; i < outputs.length; i++) {
        output(where + calculation.outputs().get(i).id(), calculation, i, outputs[i], breaches);
      }
    } catch (IllegalArgumentException refused) {
      String message = refused.getMessage();
      if (message == null || message.isBlank() || message.equals("null")) {
        breaches.add(where + "refused without saying why");
      }
    } catch (RuntimeException defect) {
      breaches.add(where + "threw " + defect);
    }
    if (!Arrays.equals(given, values)) {
      breaches.add(where + "changed the values that it was given");
    }
  }

  private static void output(
      String where, Calculation calculation, int place, double value, List<String> breaches) {
    if (!Double.isFinite(value)) {
      breaches.add(where + " is " + value);
      return;
    }
    try {
      Quantity.ofSi(value, 0, calculation.outputs().get(place).kind());
    } catch (QuantityFormatException outside) {
      breaches.add(where + ": " + outside.getMessage());
    }
  }

  /**
   * A calculation must answer the same again, after other values, and from two threads at once.
   *
   * @param module the module
   * @return the breaches
   */
  public static List<String> memory(CalculationModule module) {
    List<String> breaches = new ArrayList<>();
    for (Calculation calculation : module.calculations()) {
      List<double[]> tries = tries(calculation);
      if (!Repeated.isSame(() -> answers(calculation, tries))) {
        breaches.add(calculation.id() + " answers differently when asked again");
      }
    }
    return breaches;
  }

  private static List<String> answers(Calculation calculation, List<double[]> tries) {
    return tries.stream().map(values -> answer(calculation, values)).toList();
  }

  private static String answer(Calculation calculation, double[] values) {
    try {
      return Arrays.toString(calculation.law().apply(values.clone()));
    } catch (RuntimeException refused) {
      return refused.toString();
    }
  }

  private static List<double[]> tries(Calculation calculation) {
    List<Parameter> parameters = calculation.parameters();
    double[] middle = parameters.stream().mapToDouble(CalculationRules::ordinary).toArray();
    List<double[]> tries = new ArrayList<>();
    tries.add(middle);
    for (int i = 0; i < middle.length; i++) {
      for (double end : ends(parameters.get(i))) {
        double[] values = middle.clone();
        values[i] = end;
        tries.add(values);
      }
    }
    return tries;
  }

  private static double[] ends(Parameter parameter) {
    if (!parameter.choices().isEmpty()) {
      double[] places = new double[parameter.choices().size()];
      Arrays.setAll(places, place -> place);
      return places;
    }
    return Arrays.stream(new double[] {parameter.low(), parameter.high()})
        .filter(end -> !isUnlimited(end))
        .toArray();
  }

  private static double ordinary(Parameter parameter) {
    if (!parameter.choices().isEmpty()) {
      return Math.max(0, parameter.choices().indexOf(parameter.usual().orElse("")));
    }
    if (parameter.usual().isPresent()) {
      try {
        return parameter.read(parameter.usual().get()).value();
      } catch (QuantityFormatException unreadable) {
        return middle(parameter.low(), parameter.high()); // told by the rule on parameters
      }
    }
    return middle(parameter.low(), parameter.high());
  }

  private static double middle(double low, double high) {
    if (isUnlimited(low) && isUnlimited(high)) {
      return 1;
    }
    if (isUnlimited(high)) {
      return low + 1;
    }
    if (isUnlimited(low)) {
      return high - 1;
    }
    return low > 0 && high / low > DECADES ? Math.sqrt(low) * Math.sqrt(high) : low / 2 + high / 2;
  }

  private static boolean isUnlimited(double limit) {
    return Math.abs(limit) > UNLIMITED;
  }
}
