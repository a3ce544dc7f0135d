package kelter.electrical.heating;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Conditions;
import kelter.core.safety.Caution;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.heater.HeatUp;

/** What a heater heats, and what that does with the heat. Usual amounts are from memory. */
enum Medium {
  /** Water, with what is heated along in a machine of the kind ({@link HeatBalance}). */
  WATER(HeaterWords.WATER, 2000),
  /** Air. */
  AIR(HeaterWords.AIR, 2300);

  /** Flow of air where nothing is stated, m³/s. */
  private static final double USUAL_AIRFLOW = 0.05;

  /** How uncertain the flow of air is where it is stated, as a ratio. */
  private static final double OF_AIRFLOW = 0.12;

  /** How uncertain the water is where it is stated, as a ratio. */
  private static final double OF_WATER = 0.08;

  /** How uncertain the amount is where nothing is stated, as a ratio. */
  private static final double GUESSED = 0.4;

  private final HeaterWords words;
  private final double usualPower;

  /**
   * How a medium is warmed.
   *
   * @param byWatt by how much it is warmed for each watt, K/(W s), or K/W of air
   * @param uncertainty how uncertain that is, as a ratio
   */
  record Warming(double byWatt, double uncertainty) {}

  Medium(HeaterWords words, double usualPower) {
    this.words = words;
    this.usualPower = usualPower;
  }

  /** What a kind of component heats; empty if it is no heater. */
  static Optional<Medium> of(String kind) {
    if (kind.equals(HeaterWords.WATER.kind().id())) {
      return Optional.of(WATER);
    }
    return kind.equals(HeaterWords.AIR.kind().id()) ? Optional.of(AIR) : Optional.empty();
  }

  /** What to mind near its heater. */
  Caution hot() {
    return this == AIR ? ElectricalCautions.HOT_PART : Caution.HOT_WATER;
  }

  /** A usual power of its heaters, W; from memory. */
  double usualPower() {
    return usualPower;
  }

  HeaterWords words() {
    return words;
  }

  /**
   * How it is warmed.
   *
   * @param balance what is heated along with water
   * @param conditions what is stated with the reading
   */
  Warming warming(HeatBalance balance, Conditions conditions) {
    double stated = conditions.si(words.amount(), Double.NaN);
    boolean isStated = stated > 0;
    if (this == AIR) {
      double airflow = isStated ? stated : USUAL_AIRFLOW;
      return new Warming(1 / (airflow * HeatUp.AIR_HEAT_CAPACITY), isStated ? OF_AIRFLOW : GUESSED);
    }
    Limits capacity =
        balance.capacity(
            isStated ? stated : balance.water(), conditions.si(HeaterWords.LOAD, Double.NaN));
    return new Warming(
        HeatBalance.MOSTLY_STAYS * 2 / (capacity.low() + capacity.high()),
        Math.hypot(isStated ? OF_WATER : GUESSED, HeatBalance.uncertainty(capacity)));
  }
}
