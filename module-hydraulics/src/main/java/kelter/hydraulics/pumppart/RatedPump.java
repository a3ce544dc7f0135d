package kelter.hydraulics.pumppart;

import java.util.Optional;
import java.util.function.Function;
import kelter.core.diagnosis.SharedQuantity;
import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.Look;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Section;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Curve;
import kelter.core.job.Nameplate;
import kelter.core.law.Celsius;
import kelter.core.quantity.QuantityFormat;
import kelter.core.source.Source;
import kelter.hydraulics.circuit.Circuit;
import kelter.hydraulics.circuit.MotorInput;
import kelter.hydraulics.circuit.OperatingPoint;
import kelter.hydraulics.circuit.PumpAgainstCircuit;
import kelter.hydraulics.circuit.PumpCondition;
import kelter.hydraulics.circuit.PumpSet;
import kelter.hydraulics.circuit.Supply;
import kelter.hydraulics.part.WaterSide;
import kelter.hydraulics.pump.HydraulicPower;
import kelter.hydraulics.pump.PumpCurve;
import kelter.hydraulics.water.StandardGravity;
import kelter.hydraulics.water.Water;

/**
 * A pump with its motor as the figures of the job give it, and what it shows in any state.
 *
 * @param type what is taken where the job does not say
 * @param set the pump with its motor in order
 * @param point its operating point in order at 20 °C, which is its rated point
 * @param power its rated electric power, W; where the job does not say, that of its type
 * @param powerKnown whether the job says it
 * @param input what its motor takes, or empty if power, voltage or current are not known
 * @param winding the winding of its motor, by its figure or a typical one
 * @param supply what it was made for
 * @param known whether its curve, and what its flow hangs on most, are those of the job and not
 *     typical ones
 */
public record RatedPump(
    PumpType type,
    PumpSet set,
    OperatingPoint point,
    double power,
    boolean powerKnown,
    Optional<MotorInput> input,
    PumpWinding winding,
    RatedSupply supply,
    boolean known) {

  private static final double CURRENT_FLOOR = 0.01; // A

  private static final Source STRENGTH =
      Source.commonPractice(
          "four fifths of the variance of the head between pumps of one kind are the pump's own");

  /**
   * A pump.
   *
   * @param pump the component
   * @param machine the nameplate of the machine that it sits in
   * @param type what is taken where the job does not say
   * @param circuit what it works against in order
   * @param circuitKnown whether what its flow hangs on most in that is known
   * @return the pump; at no flow if it could not lift the water even in order
   * @throws IllegalArgumentException if its curve rises or a figure is impossible
   */
  public static RatedPump of(
      Component pump, Nameplate machine, PumpType type, Circuit circuit, boolean circuitKnown) {
    RatedSupply supply = RatedSupply.of(pump, machine);
    Optional<Curve> own = pump.curve(PumpWords.HEAD_CURVE);
    PumpCurve curve = own.isPresent() ? curve(own.get()) : type.curve();
    Water water = Water.at(Celsius.TWENTY);
    OperatingPoint point = PumpAgainstCircuit.solve(curve, circuit, water.kinematicViscosity());
    double flow = point.flow() > 0 ? point.flow() : curve.runOut();
    double rated = RatedSupply.mean(pump.nameplate().power(), Double.NaN);
    boolean powerKnown = !Double.isNaN(rated);
    double torque =
        type.noFlowTorque(HydraulicPower.of(flow, curve.shutOffHead(), water.density()) / rated);
    return new RatedPump(
        type,
        new PumpSet(curve, supply.motor(type.motor()), flow, torque, PumpCondition.GOOD),
        point,
        powerKnown ? rated : type.power(),
        powerKnown,
        input(pump, rated, supply),
        PumpWinding.of(pump, supply),
        supply,
        own.isPresent() && circuitKnown);
  }

  /**
   * Why a pump that cannot lift the water even in order is judged by nothing.
   *
   * @param pump the component
   * @param type what is taken where the job does not say
   * @param name the name of the figure that tells the lift
   * @param lift the height to which it would have to lift, m
   * @return why, for a person, without a full stop
   * @throws IllegalArgumentException if its curve rises
   */
  public static String tooHigh(Component pump, PumpType type, String name, double lift) {
    Optional<Curve> own = pump.curve(PumpWords.HEAD_CURVE);
    PumpCurve curve = own.isPresent() ? curve(own.get()) : type.curve();
    return "%s lifts %s m at most, and its %s is %s m, so that even in order nothing would flow: %s"
        .formatted(
            own.isPresent() ? "by its curve the pump" : "without a curve, a usual pump",
            QuantityFormat.plain(Math.rint(100 * curve.shutOffHead()) / 100),
            name,
            QuantityFormat.plain(lift),
            own.isPresent()
                ? "correct the curve or the " + name
                : "give the 'head' curve of this pump, or correct the " + name);
  }

  /**
   * The curve through points of a job.
   *
   * @param points flow rates and heads
   * @return the curve
   * @throws IllegalArgumentException if it rises
   */
  public static PumpCurve curve(Curve points) {
    return PumpCurve.through(points.xSi(), points.ySi());
  }

  private static Optional<MotorInput> input(Component pump, double power, RatedSupply supply) {
    return Double.isNaN(power) || pump.nameplate().current().isEmpty() || supply.voltage().isEmpty()
        ? Optional.empty()
        : Optional.of(
            MotorInput.rated(power, supply.voltage().get(), pump.nameplate().current().get().si()));
  }

  /**
   * The water of a reading.
   *
   * @param conditions its conditions
   * @return water of the stated temperature, or of 20 °C
   * @throws IllegalArgumentException if the temperature is impossible
   */
  public static Water water(Conditions conditions) {
    return Water.at(conditions.si(WaterSide.AT_TEMPERATURE, Celsius.TWENTY));
  }

  /**
   * The operating point in order.
   *
   * @param circuit what the pump works against
   * @param conditions the conditions of a reading: temperature of the water, supply
   * @return the point under them
   * @throws IllegalArgumentException if a condition is impossible
   */
  public OperatingPoint point(Circuit circuit, Conditions conditions) {
    return set.on(supply.supply(conditions))
        .against(circuit, water(conditions).kinematicViscosity());
  }

  /**
   * Adds what every pump shows to a model: all that is solved from its figures, its winding and its
   * motor.
   *
   * @param model a model whose whole are the {@link PumpFigure figures of a pump}
   * @param words what it is called on this pump
   * @param circuit what the pump works against in a state
   * @return the section of the operating point, to which the part adds its own
   */
  public Section<Running> shown(
      PartModel model, PumpWords words, Function<State, Circuit> circuit) {
    Section<Running> section =
        model
            .moves(strength(), PumpFigure.STRENGTH.times(Course.power(1, 1 + spreadOfStrength())))
            .looks(words.debris(), PumpFigure.DEBRIS)
            .looks(words.turns(), PumpFigure.STIFFNESS)
            .looks(words.loose(), new Look.Noticed(PumpFigure.SLIP, 0.28, 0.064))
            .under(winding)
            .observe(words.winding(), Double::doubleValue, winding)
            .under(atGivenFlow())
            .observe(
                words.head(),
                RatedPump::head,
                PumpSpread.turning(headShare(), headFloor()).following(1))
            .under(against(circuit))
            .observe(words.noise(), PumpNoise::of, new PumpNoise());
    if (!Double.isNaN(power)) {
      double share = powerKnown ? PumpSpread.POWER : PumpSpread.POWER_OF_A_TYPICAL_PUMP;
      section.observe(words.power(), this::power, PumpSpread.drawn(share, type.powerFloor()));
    }
    if (input.isPresent()) {
      section.observe(
          words.current(), this::current, PumpSpread.drawn(PumpSpread.CURRENT, CURRENT_FLOOR));
    }
    return section;
  }

  /**
   * The strength of this very pump moves its head, its flow rate and all that follows from them.
   * What mains and water do to a pump at work is less than a quarter of what pumps differ.
   */
  private SharedQuantity strength() {
    long percent = Math.round(100 * spreadOfStrength());
    return new SharedQuantity(
        "pump-strength",
        "strength of this pump among its kind, " + percent + " % of its head at no flow",
        STRENGTH);
  }

  /** How far pumps of this kind differ in strength, told as the head at no flow, ratio. */
  private double spreadOfStrength() {
    return headShare() * Math.sqrt(PumpSpread.OF_THE_PUMP);
  }

  /**
   * How far heads of pumps in order differ.
   *
   * @return the standard deviation, ratio
   */
  public double headShare() {
    return known ? PumpSpread.HEAD : PumpSpread.HEAD_OF_A_TYPICAL_PUMP;
  }

  /**
   * By how much heads differ at least, what the curve leaves open included.
   *
   * @return the standard deviation, m
   */
  public double headFloor() {
    return Math.hypot(type.headFloor(), set.curve().scatter());
  }

  private Circumstances<Running> against(Function<State, Circuit> circuit) {
    return conditions -> {
      Water water = water(conditions);
      double viscosity = water.kinematicViscosity();
      Supply fed = supply.supply(conditions);
      return state -> {
        OperatingPoint at = in(state).on(fed).against(circuit.apply(state), viscosity);
        return new Running(state, at, fed, water);
      };
    };
  }

  private Circumstances<Running> atGivenFlow() {
    return conditions -> {
      Water water = water(conditions);
      Supply fed = supply.supply(conditions);
      double flow = conditions.si(PumpWords.AT_FLOW, 0);
      return state -> new Running(state, in(state).on(fed).atFlow(flow), fed, water);
    };
  }

  private PumpSet in(State state) {
    double strength = state.of(PumpFigure.STRENGTH);
    double leak =
        state.of(PumpFigure.LEAK) * point.flow() / Math.sqrt(2 * StandardGravity.G * point.head());
    return (strength == 1 ? set : set.stronger(strength))
        .in(
            new PumpCondition(
                state.of(PumpFigure.OPEN_PASSAGES),
                1 - state.of(PumpFigure.SLIP),
                state.of(PumpFigure.HEAD),
                state.of(PumpFigure.DENSITY),
                leak,
                Running.isDead(state) ? PumpFaults.LOCKED : state.of(PumpFigure.DRAG),
                state.of(PumpFigure.SPEED)));
  }

  private static double head(Running pump) {
    return pump.point().head();
  }

  private double power(Running pump) {
    return pump.isDead()
        ? 0
        : power * MotorInput.powerShare(set.motor(), pump.point(), pump.supply());
  }

  private double current(Running pump) {
    return pump.isDead()
        ? 0
        : input.orElseThrow().current(set.motor(), pump.point(), pump.supply());
  }
}
