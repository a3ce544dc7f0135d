package kelter.hydraulics.circuit;

import kelter.core.law.InductionMachine;

/**
 * How fast a motor turns under a load. Speeds are ratios of the rated speed, torques ratios of the
 * torque at the rated point of the pump.
 */
public sealed interface PumpMotor {

  /**
   * The speed at which motor and load agree.
   *
   * @param hydraulic the torque that the water would take at rated speed; it grows with the square
   *     of the speed; not negative
   * @param drag the torque of bearings, seals and rubbing, whatever the speed; not negative
   * @param supply what the motor is fed with
   * @return the speed as a ratio of the rated one; 0 if the motor cannot turn the load
   */
  double speed(double hydraulic, double drag, Supply supply);

  /**
   * The torque of the motor while its rotor is held.
   *
   * @param supply what the motor is fed with
   * @return the mean torque, as a ratio of the rated one
   */
  double standstillTorque(Supply supply);

  /**
   * An induction motor: its torque over the lag behind the field follows Kloss's formula, and it
   * stalls where water and drag together ask for more than its pull-out torque. The synchronous
   * speed goes with the frequency, the torque for a given lag, and the pull-out torque, with the
   * square of the flux.
   *
   * <p>Whether it also starts is not covered, nor that it could creep beyond its pull-out where the
   * drag is small: both are told as for a motor that comes down from its speed.
   *
   * <p>Source: {@link InductionMachine}; the square of the voltage as in E. E. Kimberly, Electrical
   * Engineering, section 20.16.
   *
   * @param machine its slip at the rated point and its pull-out torque
   */
  record Induction(InductionMachine machine) implements PumpMotor {

    /** Steps of Newton's method: each at least halves what is left, at pull-out itself. */
    private static final int MOST_STEPS = 50;

    private static final double TOLERANCE = 1e-12; // of the slip

    @Override
    public double speed(double hydraulic, double drag, Supply supply) {
      double most = Math.min(machine.pullOutSlip(), supply.frequency());
      if (missing(most, hydraulic, drag, supply) > 0) {
        return 0;
      }
      // What is missing falls and bends upward up to pull-out: from 0 the steps stay below the
      // root.
      double slip = 0;
      for (int step = 0; step < MOST_STEPS; step++) {
        double by = missing(slip, hydraulic, drag, supply) / closing(slip, hydraulic, supply);
        slip += by;
        if (!(by > TOLERANCE)) {
          break;
        }
      }
      return speed(Math.min(most, slip), supply);
    }

    /** The speed at a lag behind the field. */
    private double speed(double slip, Supply supply) {
      return (supply.frequency() - slip) / (1 - machine.ratedSlip());
    }

    /** By how much the load exceeds the torque of the motor at a lag. */
    private double missing(double slip, double hydraulic, double drag, Supply supply) {
      double speed = speed(slip, supply);
      double flux = supply.flux();
      return hydraulic * speed * speed + drag - machine.torque(slip) * flux * flux;
    }

    /** By how much less is missing for each unit of the lag. */
    private double closing(double slip, double hydraulic, Supply supply) {
      double flux = supply.flux();
      double load = 2 * hydraulic * speed(slip, supply) / (1 - machine.ratedSlip());
      return load + machine.stiffness(slip) * flux * flux;
    }

    @Override
    public double standstillTorque(Supply supply) {
      return machine.torque(supply.frequency()) * supply.flux() * supply.flux();
    }

    /**
     * The lag behind the field at an operating point.
     *
     * @param point the point
     * @param supply what the motor is fed with
     * @return the lag as a ratio of the rated synchronous speed
     */
    double slip(OperatingPoint point, Supply supply) {
      return supply.frequency() - point.speed() * (1 - machine.ratedSlip());
    }
  }

  /**
   * A synchronous motor: the speed of the supply up to its pull-out torque, and then none. A
   * permanent magnet pulls in proportion to the flux that the supply makes.
   *
   * @param pullOut the greatest torque, as a ratio of the rated one, above 1; small
   *     permanent-magnet drain pumps have about 1.5 to 2 (from memory)
   */
  record Synchronous(double pullOut) implements PumpMotor {

    /**
     * Checks the figure.
     *
     * @throws IllegalArgumentException if the pull-out is not above 1
     */
    public Synchronous {
      if (!(pullOut > 1)) {
        throw new IllegalArgumentException("a pull-out torque lies above 1, not at " + pullOut);
      }
    }

    @Override
    public double speed(double hydraulic, double drag, Supply supply) {
      double ratio = supply.frequency();
      return hydraulic * ratio * ratio + drag <= pullOut * supply.flux() ? ratio : 0;
    }

    /** It pulls to and fro as the field passes: none on the mean. */
    @Override
    public double standstillTorque(Supply supply) {
      return 0;
    }
  }

  /**
   * A motor behind an inverter that holds its speed until the current, and with it the torque,
   * reaches its limit, and then gives way. What the inverter itself is fed with makes no
   * difference.
   *
   * @param limit the greatest torque, as a ratio of the rated one, 1 or more
   */
  record Inverter(double limit) implements PumpMotor {

    /**
     * Checks the figure.
     *
     * @throws IllegalArgumentException if the limit is below 1
     */
    public Inverter {
      if (!(limit >= 1)) {
        throw new IllegalArgumentException("a torque limit is 1 or more, not " + limit);
      }
    }

    @Override
    public double speed(double hydraulic, double drag, Supply supply) {
      if (hydraulic + drag <= limit) {
        return 1;
      }
      return drag >= limit ? 0 : Math.sqrt((limit - drag) / hydraulic);
    }

    @Override
    public double standstillTorque(Supply supply) {
      return limit;
    }
  }
}
