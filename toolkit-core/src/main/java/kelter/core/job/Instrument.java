package kelter.core.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.problem.Required;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Unit;
import kelter.core.source.Source;
import kelter.core.uncertainty.ErrorModel;
import kelter.core.vocabulary.Ids;

/**
 * What a reading was taken with.
 *
 * @param id its name within the job
 * @param title what it is, may be empty
 * @param functions what it measures, and how well; one for each range
 * @param notes what else matters of it, such as its input resistance or test voltage, may be empty
 * @param typical where its figures come from if it is not the user's own but typical of its class
 */
public record Instrument(
    String id, String title, List<Function> functions, String notes, Optional<Source> typical) {

  /** What an instrument can measure, by the words of a job file. */
  public static final Map<String, QuantityKind> MEASURES = measures();

  /** The pressure of a metre of cold water, Pa. */
  private static final double METRE = Unit.of("m[H2O]").factor();

  private static Map<String, QuantityKind> measures() {
    Map<String, QuantityKind> words = new LinkedHashMap<>();
    words.put("resistance", QuantityKind.RESISTANCE);
    words.put("insulation-resistance", QuantityKind.INSULATION_RESISTANCE);
    words.put("voltage", QuantityKind.VOLTAGE);
    words.put("current", QuantityKind.CURRENT);
    words.put("power", QuantityKind.POWER);
    words.put("capacitance", QuantityKind.CAPACITANCE);
    words.put("frequency", QuantityKind.FREQUENCY);
    words.put("temperature", QuantityKind.TEMPERATURE);
    words.put("heating-rate", QuantityKind.HEATING_RATE);
    words.put("length", QuantityKind.LENGTH);
    words.put("head", QuantityKind.HEAD);
    words.put("pressure", QuantityKind.GAUGE_PRESSURE);
    words.put("flow", QuantityKind.FLOW);
    words.put("volume", QuantityKind.VOLUME);
    words.put("mass", QuantityKind.MASS);
    words.put("time", QuantityKind.TIME);
    words.put("speed", QuantityKind.ROTATIONAL_SPEED);
    return Collections.unmodifiableMap(words);
  }

  /** Checks the id. */
  public Instrument {
    Ids.require(Required.value(id, "id of an instrument"));
    Required.value(title, "title of an instrument");
    Required.value(notes, "notes of an instrument");
    Required.optional(typical, "source of an instrument");
    functions = Required.list(functions, "functions of an instrument");
  }

  /**
   * An instrument of the user's own.
   *
   * @param id its name within the job
   * @param title what it is, may be empty
   * @param functions what it measures, and how well
   */
  public Instrument(String id, String title, List<Function> functions) {
    this(id, title, functions, "", Optional.empty());
  }

  /**
   * One thing that an instrument measures, in one range.
   *
   * @param kind what it measures
   * @param error how far a reading may be off
   * @param resolution the size of one count in the coherent SI unit, 0 if it is not stated
   * @param end the greatest reading of the range in the coherent SI unit, infinite if it is not
   *     stated
   */
  public record Function(QuantityKind kind, ErrorModel error, double resolution, double end) {

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if the resolution is negative or the range has no end above
     *     zero
     */
    public Function {
      Required.value(kind, "what an instrument measures");
      Required.value(error, "limits of error of an instrument");
      if (!(resolution >= 0) || !(end > 0)) {
        throw new IllegalArgumentException(
            "a resolution is not negative and a range ends above zero");
      }
    }

    /**
     * A function of which neither resolution nor range are stated.
     *
     * @param kind what it measures
     * @param error how far a reading may be off
     */
    public Function(QuantityKind kind, ErrorModel error) {
      this(kind, error, 0, Double.POSITIVE_INFINITY);
    }

    /**
     * Whether a value can be read in this range.
     *
     * @param si a value in the coherent SI unit
     * @return true if it can
     */
    public boolean reaches(double si) {
      return Math.abs(si) <= end;
    }

    /**
     * What a reading in this range is worth, its rounding to the resolution included (rectangular,
     * JCGM 100:2008, F.2.2.1).
     *
     * @param si the reading in the coherent SI unit
     * @return the standard uncertainty in the coherent SI unit
     */
    public double standardUncertainty(double si) {
      return Math.hypot(error.standardUncertainty(si), resolution / Math.sqrt(12));
    }
  }

  /**
   * The functions that measure a kind of quantity.
   *
   * @param kind what is measured
   * @return those for that very kind, else those for its dimension, but never resistance for
   *     insulation resistance or the other way round; for a head, gauges of pressure too; may be
   *     empty
   */
  public List<Function> functions(QuantityKind kind) {
    List<Function> exact = new ArrayList<>();
    List<Function> fitting = new ArrayList<>();
    for (Function function : functions) {
      if (function.kind().name().equals(kind.name())) {
        exact.add(function);
      }
      if (function.kind().accepts(kind.unit())
          && isInsulation(function.kind()) == isInsulation(kind)) {
        fitting.add(function);
      }
    }
    if (fitting.isEmpty() && kind.name().equals(QuantityKind.HEAD.name())) {
      return heads();
    }
    return List.copyOf(exact.isEmpty() ? fitting : exact);
  }

  /** What gauges of pressure tell of the head of cold water. */
  private List<Function> heads() {
    List<Function> heads = new ArrayList<>();
    for (Function function : functions) {
      if (function.kind().name().equals(QuantityKind.GAUGE_PRESSURE.name())) {
        heads.add(
            new Function(
                QuantityKind.HEAD,
                head -> function.error().standardUncertainty(head * METRE) / METRE,
                function.resolution() / METRE,
                function.end() / METRE));
      }
    }
    return List.copyOf(heads);
  }

  /** Insulation is tested at 500 V or so, which no ohmmeter has, and no tester of it reads ohms. */
  private static boolean isInsulation(QuantityKind kind) {
    return kind.name().equals(QuantityKind.INSULATION_RESISTANCE.name());
  }

  /**
   * The range in which a value is read: the smallest that reaches it, else the largest there is.
   *
   * @param kind what is measured
   * @param si the value in the coherent SI unit
   * @return the function, or empty if it measures no such thing
   */
  public Optional<Function> range(QuantityKind kind, double si) {
    Function best = null;
    for (Function function : functions(kind)) {
      boolean better =
          best == null
              || (function.reaches(si)
                  ? !best.reaches(si) || function.end() < best.end()
                  : !best.reaches(si) && function.end() > best.end());
      best = better ? function : best;
    }
    return Optional.ofNullable(best);
  }
}
