package kelter.core.instrument;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.job.Instrument;
import kelter.core.job.Instrument.Function;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.uncertainty.ErrorModel;

/**
 * Instruments of any trade that are typical of their class: no product is meant and the names are
 * invented. Modules add those of their own.
 *
 * <p>A job may name one of them by its id without describing it. The limits of error, ranges and
 * resolutions are of the size that makers state for such instruments, common practice without a
 * source; who has the data of his own instrument should describe that in the job.
 */
public final class InstrumentLibrary {

  /** Where the figures come from. */
  public static final Source SOURCE =
      Source.commonPractice("limits of error of the size usual for instruments of this class");

  private static final Map<String, Instrument> ALL = all();

  private InstrumentLibrary() {}

  /**
   * The ids of all instruments.
   *
   * @return the ids, coarse instruments of a class before fine ones
   */
  public static Set<String> ids() {
    return ALL.keySet();
  }

  /**
   * An instrument by its id.
   *
   * @param id the id
   * @return the instrument, or empty if the library has none of that id
   */
  public static Optional<Instrument> find(String id) {
    return Optional.ofNullable(ALL.get(id));
  }

  /**
   * All instruments.
   *
   * @return the instruments, in the order of the ids
   */
  public static List<Instrument> instruments() {
    return List.copyOf(ALL.values());
  }

  private static Map<String, Instrument> all() {
    Map<String, Instrument> byId = new LinkedHashMap<>();
    for (List<Instrument> some : List.of(meters(), testers(), others())) {
      for (Instrument instrument : some) {
        byId.put(instrument.id(), instrument);
      }
    }
    return Collections.unmodifiableMap(byId);
  }

  private static Instrument of(String id, String title, String notes, Function... functions) {
    return new Instrument(id, title, List.of(functions), notes, Optional.of(SOURCE));
  }

  /** Per cent of the reading and counts of the resolution; all but the first in SI units. */
  private static Function range(
      QuantityKind kind, double percent, int counts, double resolution, double end) {
    return new Function(kind, accuracy(percent, counts, resolution), resolution, end);
  }

  private static Accuracy accuracy(double percent, int counts, double resolution) {
    return new Accuracy(percent / 100, counts * resolution);
  }

  /** A resistance range with what is left of the test leads, in ohm. */
  private static Function ohms(
      double percent, int counts, double resolution, double end, double leads) {
    ErrorModel error = new Connection(accuracy(percent, counts, resolution), leads, 0);
    return new Function(QuantityKind.RESISTANCE, error, resolution, end);
  }

  /** A temperature that is displayed in Cel: per cent of that figure and kelvins. */
  private static Function celsius(double percent, double kelvins, double resolution, double end) {
    Accuracy error = new Accuracy(percent / 100, kelvins, 273.15);
    return new Function(QuantityKind.TEMPERATURE, error, resolution, 273.15 + end);
  }

  private static List<Instrument> meters() {
    return List.of(
        of(
            "pocket-meter",
            "pocket multimeter of 2000 counts",
            "input resistance 1 MOhm; test leads read and taken off by hand, 0.3 ohm may be left",
            ohms(1.2, 5, 0.1, 200, 0.3),
            ohms(1.0, 4, 1, 2e3, 0.3),
            ohms(1.0, 4, 10, 20e3, 0.3),
            ohms(1.0, 4, 100, 200e3, 0.3),
            ohms(1.5, 6, 1000, 2e6, 0.3),
            range(QuantityKind.VOLTAGE, 1.2, 10, 0.1, 200),
            range(QuantityKind.VOLTAGE, 1.2, 10, 1, 600)),
        of(
            "true-rms-meter",
            "multimeter of 6000 counts, true effective values",
            "input resistance 10 MOhm; test leads taken off by its own null, 0.1 ohm may be left",
            ohms(0.8, 3, 0.1, 600, 0.1),
            ohms(0.8, 2, 1, 6e3, 0.1),
            ohms(0.8, 2, 10, 60e3, 0.1),
            ohms(0.8, 2, 100, 600e3, 0.1),
            ohms(1.5, 3, 1000, 6e6, 0.1),
            range(QuantityKind.VOLTAGE, 1.0, 3, 0.01, 60),
            range(QuantityKind.VOLTAGE, 1.0, 3, 0.1, 600),
            range(QuantityKind.CURRENT, 1.5, 3, 0.001, 6),
            range(QuantityKind.CURRENT, 1.5, 3, 0.01, 10),
            range(QuantityKind.CAPACITANCE, 2.0, 5, 1e-8, 60e-6),
            range(QuantityKind.CAPACITANCE, 2.0, 5, 1e-7, 600e-6),
            range(QuantityKind.FREQUENCY, 0.1, 2, 0.01, 600)),
        of(
            "fine-meter",
            "multimeter of 50000 counts",
            "input resistance 10 MOhm; test leads taken off by its own null, 0.02 ohm may be left",
            ohms(0.05, 10, 0.01, 500, 0.02),
            ohms(0.05, 5, 0.1, 5e3, 0.02),
            ohms(0.05, 5, 1, 50e3, 0.02),
            ohms(0.1, 5, 10, 500e3, 0.02),
            ohms(0.3, 10, 100, 5e6, 0.02),
            range(QuantityKind.VOLTAGE, 0.4, 30, 0.001, 50),
            range(QuantityKind.VOLTAGE, 0.4, 30, 0.01, 500),
            range(QuantityKind.CURRENT, 0.7, 20, 0.0001, 5),
            range(QuantityKind.CAPACITANCE, 1.0, 5, 1e-8, 50e-6),
            range(QuantityKind.FREQUENCY, 0.01, 1, 0.001, 500)),
        of(
            "milliohmmeter",
            "milliohmmeter with four leads",
            "four leads, so that their resistance does not count",
            ohms(0.2, 3, 0.0001, 2, 0),
            ohms(0.2, 3, 0.001, 20, 0),
            ohms(0.2, 3, 0.01, 200, 0),
            ohms(0.2, 3, 0.1, 2e3, 0)),
        of(
            "clamp-meter",
            "clamp meter",
            "1 % by where in the jaws the conductor lies",
            clamp(2.0, 5, 0.01, 40),
            clamp(2.0, 5, 0.1, 400)),
        of(
            "plug-in-wattmeter",
            "energy meter for the socket",
            "",
            range(QuantityKind.POWER, 2.0, 10, 0.1, 3680),
            range(QuantityKind.VOLTAGE, 1.0, 5, 0.1, 250),
            range(QuantityKind.CURRENT, 2.0, 10, 0.001, 16)),
        of(
            "fine-wattmeter",
            "power meter, wired in",
            "",
            range(QuantityKind.POWER, 0.3, 10, 0.01, 400),
            range(QuantityKind.POWER, 0.3, 10, 0.1, 4000),
            range(QuantityKind.VOLTAGE, 0.2, 5, 0.01, 500),
            range(QuantityKind.CURRENT, 0.3, 5, 0.001, 16)));
  }

  private static Function clamp(double percent, int counts, double resolution, double end) {
    ErrorModel error = new Connection(accuracy(percent, counts, resolution), 0, 0.01);
    return new Function(QuantityKind.CURRENT, error, resolution, end);
  }

  private static List<Instrument> testers() {
    return List.of(
        of(
            "insulation-tester",
            "insulation tester, up to 200 MOhm",
            "test voltage 500 V direct, up to a quarter more when nothing is connected",
            range(QuantityKind.INSULATION_RESISTANCE, 5.0, 5, 1e4, 20e6),
            range(QuantityKind.INSULATION_RESISTANCE, 5.0, 5, 1e5, 200e6)),
        of(
            "fine-insulation-tester",
            "insulation tester, up to 4 GOhm",
            "test voltage 250 V or 500 V direct",
            range(QuantityKind.INSULATION_RESISTANCE, 2.0, 3, 1e3, 4e6),
            range(QuantityKind.INSULATION_RESISTANCE, 2.0, 3, 1e4, 40e6),
            range(QuantityKind.INSULATION_RESISTANCE, 2.0, 3, 1e5, 400e6),
            range(QuantityKind.INSULATION_RESISTANCE, 5.0, 3, 1e6, 4e9)),
        of(
            "earth-tester",
            "tester for protective conductors at 0.2 A",
            "test leads taken off by its own null, 0.02 ohm may be left",
            ohms(3.0, 3, 0.01, 20, 0.02)));
  }

  private static List<Instrument> others() {
    return List.of(
        of(
            "contact-thermometer",
            "thermocouple thermometer",
            "the probe itself 2 K, wetted or pressed on",
            celsius(0.5, 2.0, 0.1, 300)),
        of("platinum-thermometer", "platinum thermometer", "", celsius(0.1, 0.3, 0.1, 200)),
        of(
            "stopwatch",
            "watch started and stopped by hand",
            "0.3 s for starting and for stopping",
            new Function(
                QuantityKind.TIME, new Connection(new Accuracy(0, 0.3), 0.3, 0), 0.01, 36e3)),
        of(
            "tape-measure",
            "tape measure",
            "",
            new Function(QuantityKind.LENGTH, new Accuracy(0.0005, 0.001), 0.001, 5),
            new Function(QuantityKind.HEAD, new Accuracy(0.0005, 0.001), 0.001, 5)),
        of(
            "scales",
            "kitchen scales",
            "",
            new Function(QuantityKind.MASS, new Accuracy(0.002, 0.003), 0.001, 10)),
        of(
            "tachometer",
            "optical tachometer",
            "",
            range(QuantityKind.ROTATIONAL_SPEED, 0.05, 1, turns(1), turns(20e3))));
  }

  private static double turns(double perMinute) {
    return perMinute * QuantityKind.ROTATIONAL_SPEED.unit().factor();
  }
}
