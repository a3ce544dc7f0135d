package kelter.electrical.heating;

import java.util.Optional;
import kelter.core.job.Conditions;
import kelter.core.safety.Caution;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.heater.HeatUp;

/** What a heater heats, and what that does with the heat. Usual amounts are from memory. */
enum Medium {
  /** Water, 12 L where nothing is stated; 15 % of the heat goes elsewhere, from memory. */
  WATER(HeaterWords.WATER, 0.012, 998 * HeatUp.WATER_HEAT_CAPACITY, 0.85),
  /** Air, 50 L/s where nothing is stated. */
  AIR(HeaterWords.AIR, 0.05, HeatUp.AIR_HEAT_CAPACITY, 1);

  private final HeaterWords words;
  private final double usual;
  private final double capacity;
  private final double kept;

  /**
   * How it is warmed.
   *
   * @param words what can be observed on its heater
   * @param usual how much there is of it where nothing is stated, m³ or m³/s
   * @param capacity what a cubic metre takes up for each kelvin, J/(m³ K); water of 998 kg/m³,
   *     which is close enough here
   * @param kept share of the heat that stays in it
   */
  Medium(HeaterWords words, double usual, double capacity, double kept) {
    this.words = words;
    this.usual = usual;
    this.capacity = capacity;
    this.kept = kept;
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

  HeaterWords words() {
    return words;
  }

  /** Whether it is stated with a reading how much there is of it. */
  boolean isStated(Conditions conditions) {
    return conditions.si(words.amount(), Double.NaN) > 0;
  }

  /** By how much it is warmed for each watt, K/(W s), or K/W of air. */
  double warming(Conditions conditions) {
    double amount = isStated(conditions) ? conditions.si(words.amount(), usual) : usual;
    return kept / (amount * capacity);
  }
}
