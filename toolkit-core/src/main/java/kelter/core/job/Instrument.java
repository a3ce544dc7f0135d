package kelter.core.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import kelter.core.quantity.QuantityKind;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Ids;

/**
 * What a reading was taken with.
 *
 * @param id its name within the job
 * @param title what it is, may be empty
 * @param functions what it measures, and how well
 */
public record Instrument(String id, String title, List<Function> functions) {

  /** What an instrument can measure, by the words of a job file. */
  public static final Map<String, QuantityKind> MEASURES = measures();

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
    Ids.require(id);
    Objects.requireNonNull(title);
    functions = List.copyOf(functions);
  }

  /**
   * One thing that an instrument measures.
   *
   * @param kind what it measures
   * @param accuracy how well
   */
  public record Function(QuantityKind kind, Accuracy accuracy) {}

  /**
   * How well the instrument measures a kind of quantity.
   *
   * @param kind what is measured
   * @return the accuracy of its function for that very kind, else of its first for that dimension,
   *     or empty if it has neither
   */
  public Optional<Accuracy> accuracy(QuantityKind kind) {
    Optional<Function> exact =
        functions.stream().filter(f -> f.kind().name().equals(kind.name())).findFirst();
    return exact
        .or(() -> functions.stream().filter(f -> f.kind().accepts(kind.unit())).findFirst())
        .map(Function::accuracy);
  }
}
