package kelter.hydraulics.measuring;

import java.util.List;
import java.util.Optional;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Instrument;
import kelter.core.job.Instrument.Function;
import kelter.core.quantity.QuantityKind;
import kelter.core.uncertainty.Accuracy;

/**
 * Instruments for head, flow and pressure of water that are typical of their class: no product is
 * meant and the names are invented. Limits of error, ranges and resolutions are common practice
 * without a source, see {@link InstrumentLibrary#SOURCE}.
 */
public final class WaterInstruments {

  private WaterInstruments() {}

  /**
   * All of them.
   *
   * @return the instruments, coarse ones before fine ones
   */
  public static List<Instrument> all() {
    return List.of(
        typical(
            "standpipe",
            "clear hose held upright beside a tape measure",
            "marks 1 mm, hose 15 mm before the tape, eye up to 20 % off the level, 5 mm in the point"
                + " it is counted from, 5 mm of swing",
            new Function(QuantityKind.HEAD, new Standpipe(0.001, 0.015, 0.2, 0.005, 0.005), 0, 4)),
        typical(
            "bucket-and-watch",
            "bucket with a mark at 10 L, and a watch",
            "0.2 L at the mark, 0.3 s for starting and for stopping",
            new Function(QuantityKind.FLOW, new BucketAndWatch(0.010, 0.0002, 0.3), 0, 60 / 6e4)),
        typical(
            "jug-and-watch",
            "measuring jug filled to 2 L, and a watch",
            "0.02 L at the mark, 0.3 s for starting and for stopping",
            new Function(QuantityKind.FLOW, new BucketAndWatch(0.002, 0.00002, 0.3), 0, 12 / 6e4)),
        typical(
            "pressure-gauge",
            "pressure gauge of class 1.6, 250 kPa",
            "1.6 % of its range",
            new Function(QuantityKind.GAUGE_PRESSURE, new Accuracy(0, 4e3), 1e3, 250e3)),
        typical(
            "water-manometer",
            "digital manometer for small pressures",
            "",
            new Function(QuantityKind.GAUGE_PRESSURE, new Accuracy(0.01, 2 * 10), 10, 20e3)),
        typical(
            "flow-meter",
            "turbine flow meter in the hose",
            "",
            new Function(
                QuantityKind.FLOW, new Accuracy(0.015, 2 * 0.01 / 6e4), 0.01 / 6e4, 30 / 6e4)));
  }

  private static Instrument typical(String id, String title, String notes, Function function) {
    return new Instrument(
        id, title, List.of(function), notes, Optional.of(InstrumentLibrary.SOURCE));
  }
}
