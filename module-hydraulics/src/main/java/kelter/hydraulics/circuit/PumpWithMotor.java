package kelter.hydraulics.circuit;

import java.util.List;
import kelter.core.law.InductionMachine;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.water.Water;

/**
 * Pump, motor and circuit solved together, with the drag, leak and blockage that are to be tried:
 * what a fault does to flow rate, head, speed and load at once.
 *
 * <p>It holds as {@link PumpSet} does, with the operating point in order as the rated point.
 *
 * <p>Source: {@link PumpSet} and {@link PumpMotor}.
 */
public final class PumpWithMotor {

  private static final List<String> MOTORS = List.of("induction", "synchronous", "inverter");
  private static final double NO_FLOW_TORQUE = 0.5; // ratio; judgement, radial impellers

  private static final Parameter SLIP =
      share("rated-slip", "slip of an induction motor", 0.005, 0.3);
  private static final Parameter LIMIT =
      ratio(
          "torque-limit", "pull-out torque, or limit of an inverter, by the rated torque", 1.05, 5);
  private static final Parameter DRAG =
      share("drag", "torque of the drag by the rated torque", 0, 5);
  private static final Parameter OPEN =
      share("open-passages", "share of the vane passages that is open", 0.02, 1);
  private static final Parameter GRIP =
      share("grip", "speed of the impeller by the shaft's", 0.05, 1);

  private static final Parameter FREQUENCY =
      ratio(
          "supply-frequency",
          "frequency of the supply by the rated one (60 Hz on 50 Hz: 1.2)",
          0.55,
          1.45);
  private static final Parameter VOLTAGE =
      ratio("supply-voltage", "voltage of the supply by the rated one", 0.55, 1.45);

  private PumpWithMotor() {}

  private static Parameter share(String id, String title, double low, double high) {
    return Parameter.required(id, title, QuantityKind.PERCENT, low, high);
  }

  private static Parameter ratio(String id, String title, double low, double high) {
    return Parameter.required(id, title, QuantityKind.RATIO, low, high);
  }

  /**
   * The point by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "pump-with-motor",
        "Flow rate, head, speed and load of pump, motor and circuit together",
        "head n^2 Hc(q) meets the circuit at the flow n open-passages q; n where the load meets the"
            + " motor: induction by Kloss's formula, synchronous up to the limit, inverter as the limit allows;"
            + " synchronous speed by supply-frequency, pull-out by the flux (squared for induction)",
        "Outlet above the water; the rated point is the operating point in order; half of the rated torque"
            + " at no flow; whether it starts is not covered; a motor that is held has speed 0 and its torque at"
            + " standstill",
        Source.fromMemory(
            "Affinity laws, Crane TP-410, chapter 7; Kloss's formula, from the equivalent circuit of the"
                + " induction machine"),
        List.of(
            PumpAgainstCircuit.SHUT_OFF,
            PumpAgainstCircuit.FLOW_1,
            PumpAgainstCircuit.HEAD_1,
            PumpAgainstCircuit.FLOW_2,
            PumpAgainstCircuit.HEAD_2,
            Circuit.LIFT,
            Hose.LENGTH,
            Hose.BORE,
            Hose.LOSS.optional("2"),
            PumpAgainstCircuit.JETS.optional("0 mm2"),
            Parameter.choice("motor", "kind of motor", MOTORS, "induction"),
            SLIP.optional("8 %"),
            LIMIT.optional("2"),
            DRAG.optional("0 %"),
            OPEN.optional("100 %"),
            GRIP.optional("100 %"),
            Water.TEMPERATURE.optional("20 Cel"),
            FREQUENCY.optional("1"),
            VOLTAGE.optional("1")),
        List.of(
            new Output("flow", "flow rate", QuantityKind.FLOW),
            new Output("head", "head of the pump", QuantityKind.HEAD),
            new Output("speed", "speed by the rated one", QuantityKind.PERCENT),
            new Output("torque", "torque of the motor by the rated one", QuantityKind.PERCENT),
            new Output("shaft-power", "power on the shaft by the rated one", QuantityKind.PERCENT),
            new Output("head-at-no-flow", "head at no flow", QuantityKind.HEAD)),
        List.of(Caution.HOT_WATER),
        PumpWithMotor::compute);
  }

  private static double[] compute(double[] p) {
    double jets = PumpAgainstCircuit.JETS.check(p[9]);
    Circuit circuit =
        new Circuit(
            Math.max(0, Circuit.LIFT.check(p[5])),
            List.of(new Hose(p[6], p[7], 0, p[8])),
            jets <= 0 ? Double.POSITIVE_INFINITY : jets);
    double viscosity = Water.at(p[16]).kinematicViscosity();
    double rated = PumpAgainstCircuit.solve(PumpAgainstCircuit.curve(p), circuit, viscosity).flow();
    if (rated <= 0) {
      throw new IllegalArgumentException(
          "lift: even in order the pump lifts %s m at most".formatted(QuantityFormat.plain(p[0])));
    }
    PumpSet set =
        new PumpSet(
            PumpAgainstCircuit.curve(p),
            motor(p),
            rated,
            NO_FLOW_TORQUE,
            condition(p),
            new Supply(FREQUENCY.check(p[17]), VOLTAGE.check(p[18])));
    OperatingPoint point = set.against(circuit, viscosity);
    return new double[] {
      point.flow(),
      point.head(),
      point.speed(),
      point.torque(),
      point.shaftPower(),
      set.atFlow(0).head()
    };
  }

  private static PumpMotor motor(double[] p) {
    double limit = LIMIT.check(p[12]);
    return switch (MOTORS.get((int) Math.round(p[10]))) {
      case "induction" -> new PumpMotor.Induction(new InductionMachine(SLIP.check(p[11]), limit));
      case "synchronous" -> new PumpMotor.Synchronous(limit);
      default -> new PumpMotor.Inverter(limit);
    };
  }

  private static PumpCondition condition(double[] p) {
    return new PumpCondition(
        Math.min(1, OPEN.check(p[14])),
        Math.min(1, GRIP.check(p[15])),
        1,
        1,
        0,
        Math.max(0, DRAG.check(p[13])),
        1);
  }
}
