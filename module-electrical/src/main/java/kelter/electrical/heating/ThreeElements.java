package kelter.electrical.heating;

import kelter.core.quantity.QuantityFormat;
import kelter.electrical.rating.HeaterRating;
import kelter.electrical.rating.RatedInput;

/**
 * What is read on a heater of three like elements on three phases. With R = U²/P of all its power,
 * one element has R in star and 3 R in delta, and between two of its terminals one reads 2 R in
 * star as in delta (Kirchhoff). With one element open, two pairs of terminals read 3 R and one 6 R
 * in delta; in star two read over range.
 */
final class ThreeElements {

  /** What is read between two terminals as they are connected, over U²/P. */
  static final double BETWEEN_TERMINALS = 2;

  /**
   * How far it may be off that, as a natural logarithm, since nobody states the connection and
   * where it was read: from R to 3 R.
   */
  static final double OF_PLACE = 0.5;

  /** The highest of the three pairs over the lowest with one element of a delta open. */
  static final double ONE_OPEN_IN_DELTA = 2;

  private static final double[] SOUND = {1, BETWEEN_TERMINALS, 3};

  private ThreeElements() {}

  /** Which of the sound readings over U²/P lies nearest to one, by the ratio. */
  static double nearest(double ohms, double rated) {
    double nearest = BETWEEN_TERMINALS;
    for (double sound : SOUND) {
      if (Math.abs(Math.log(ohms / (sound * rated)))
          < Math.abs(Math.log(ohms / (nearest * rated)))) {
        nearest = sound;
      }
    }
    return nearest;
  }

  /** What the sound readings are, for a person. */
  static String told(RatedInput input) {
    double rated = input.assumed().voltage() * input.assumed().voltage() / input.assumed().power();
    return "three like elements: between two terminals, links as found, "
        + ohms(BETWEEN_TERMINALS * rated)
        + " in star as in delta; one element by itself "
        + ohms(rated)
        + " in star, "
        + ohms(3 * rated)
        + " in delta. Read all three: they are alike unless one is open";
  }

  /** Whether a heater by its nameplate has them. */
  static boolean are(RatedInput input, int elements) {
    return HeaterRating.isThreePhase(input.assumed().voltage(), input.assumed().power(), elements);
  }

  private static String ohms(double ohms) {
    return QuantityFormat.plain(Math.round(10 * ohms) / 10.0) + " ohm";
  }
}
