package kelter.electrical.heating;

import kelter.core.check.Limits;
import kelter.electrical.heater.HeatUp;
import kelter.electrical.heater.LoadHeatCapacity;

/**
 * What a heater of water warms in a machine of one kind: water, what of the machine the water wets,
 * and the load. Masses are from memory.
 *
 * @param water the water where nothing is stated, m³
 * @param machine heat capacity of the machine that the water does not tell, J/K
 * @param machineByWater the same for each cubic metre of water, J/(m³ K)
 * @param full heat capacity of a full load that the water does not tell, J/K
 * @param fullByWater the same for each cubic metre of water, J/(m³ K)
 * @param perKilogram specific heat capacity of the load, J/(kg K); 0 where there is none
 * @param lags whether the load warms behind the water
 */
record HeatBalance(
    double water,
    double machine,
    double machineByWater,
    double full,
    double fullByWater,
    double perKilogram,
    boolean lags) {

  /** Share of the heat that stays, at least and at most, as a ratio: 5 % to 10 % goes astray. */
  static final Limits STAYS = new Limits(0.90, 1);

  /** The same in the mean. */
  static final double MOSTLY_STAYS = 0.925;

  /** How far masses of machines differ, as a ratio. */
  private static final double OF_MASSES = 0.30;

  /** Half-width over standard deviation of a rectangular distribution (JCGM 100:2008, 4.3.7). */
  private static final double RECTANGULAR = Math.sqrt(3);

  /** A litre, m³. */
  private static final double LITRE = 1e-3;

  /** Water, J/(m³ K): 992.2 kg/m³ at 40 °C, within 0.7 % from 10 °C to 60 °C (IAPWS R6-95). */
  private static final double OF_WATER = 992.2 * HeatUp.WATER_HEAT_CAPACITY;

  /** A drum of 6 kg and 3.2 kg of tub; up to 0.45 kg of wash in a litre. */
  private static final HeatBalance WASHING_MACHINE =
      new HeatBalance(
          12 * LITRE,
          LoadHeatCapacity.capacity(0, 0, 6, 3.2),
          0,
          0,
          0.45 * LoadHeatCapacity.COTTON / LITRE,
          LoadHeatCapacity.COTTON,
          false);

  /** 60 kg of drum and tub to 72 L of bath; up to 0.33 kg of wash in a litre. */
  private static final HeatBalance WASHER_EXTRACTOR =
      new HeatBalance(
          12 * LITRE,
          0,
          60.0 / 72 * LoadHeatCapacity.STEEL / LITRE,
          0,
          0.33 * LoadHeatCapacity.COTTON / LITRE,
          LoadHeatCapacity.COTTON,
          false);

  /** 12.5 kg of steel, 1.2 kg of plastic, up to 13 kg of crockery. */
  private static final HeatBalance DISHWASHER =
      new HeatBalance(
          3.4 * LITRE,
          LoadHeatCapacity.capacity(0, 0, 12.5, 1.2),
          0,
          LoadHeatCapacity.capacity(0, 13, 0, 0),
          0,
          LoadHeatCapacity.CROCKERY,
          true);

  /** 10 kg of steel to 15 L in the tank, up to 5 kg of glasses in the rack. */
  private static final HeatBalance GLASSWASHER =
      new HeatBalance(
          15 * LITRE,
          0,
          10.0 / 15 * LoadHeatCapacity.STEEL / LITRE,
          LoadHeatCapacity.capacity(0, 5, 0, 0),
          0,
          LoadHeatCapacity.CROCKERY,
          true);

  /** 25 kg of steel to 80 L, and nothing in it. */
  private static final HeatBalance BOILER =
      new HeatBalance(12 * LITRE, 0, 25.0 / 80 * LoadHeatCapacity.STEEL / LITRE, 0, 0, 0, false);

  /** Nobody knows what is heated along: from nothing to four tenths of the water. */
  private static final HeatBalance UNKNOWN =
      new HeatBalance(12 * LITRE, 0, 0, 0, 0.4 * OF_WATER, LoadHeatCapacity.COTTON, false);

  /**
   * The balance of a kind of appliance.
   *
   * @param kind the word for it
   * @return its own; that of a machine of which nothing is known for other kinds
   */
  static HeatBalance of(String kind) {
    return switch (kind) {
      case "washing-machine", "washer-dryer" -> WASHING_MACHINE;
      case "washer-extractor" -> WASHER_EXTRACTOR;
      case "dishwasher" -> DISHWASHER;
      case "glasswasher" -> GLASSWASHER;
      case "water-boiler", "water-heater" -> BOILER;
      default -> UNKNOWN;
    };
  }

  /** Whether it is known what is heated along. */
  boolean isKnown() {
    return this != UNKNOWN;
  }

  /** Whether it holds a load of which the mass counts. */
  boolean hasLoad() {
    return isKnown() && perKilogram > 0;
  }

  /**
   * What has to be warmed, at least and at most.
   *
   * @param volume the water, m³
   * @param load the load, kg; NaN where it is not stated
   * @return heat capacities, J/K
   */
  Limits capacity(double volume, double load) {
    double wetted = machine + machineByWater * volume;
    Limits loads = load(volume, load);
    return new Limits(
        OF_WATER * volume + (1 - OF_MASSES) * wetted + loads.low(),
        OF_WATER * volume + (1 + OF_MASSES) * wetted + loads.high());
  }

  private Limits load(double volume, double load) {
    if (load >= 0 && hasLoad()) {
      return new Limits(lags ? 0 : perKilogram * load, perKilogram * load);
    }
    return new Limits(0, full + fullByWater * volume);
  }

  /**
   * How uncertain a rate of warming is by what has to be warmed.
   *
   * @param capacity at least and at most, J/K
   * @return the standard uncertainty as a ratio
   */
  static double uncertainty(Limits capacity) {
    return (capacity.high() - capacity.low()) / (capacity.high() + capacity.low()) / RECTANGULAR;
  }
}
