package kelter.core.oracle;

import aima.core.probability.proposition.AssignmentProposition;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kelter.core.oracle.decision.Repairs;

/**
 * Two networks about a heating circuit. Their probabilities are invented; what follows from them
 * was worked out in exact fractions, outside the project, by adding up all combinations.
 *
 * <p>In A every observable hangs on the fault alone. In B the rise of temperature also hangs on the
 * power, and the code on the resistance of the sensor, both of which can be observed.
 */
public final class Networks {

  /** The causes; the last stands for all that has no name. */
  public static final String[] FAULTS = {
    "heater_open", "heater_degraded", "sensor_drift", "relay_stuck_open", "supply_wiring", "other"
  };

  /** The chance of each before anything is observed. */
  public static final double[] PRIOR = {.28, .12, .18, .14, .08, .20};

  private static final String[] HEATER_R = {"open", "high", "nominal"};
  private static final String[] INSULATION = {"low", "ok"};
  private static final String[] SENSOR_R = {"below", "band", "above"};
  private static final String[] HEATER_V = {"none", "low", "nominal"};
  private static final String[] POWER = {"idle", "reduced", "rated"};
  private static final String[] SUPPLY_V = {"low", "ok"};
  private static final String[] TEMP_RISE = {"none", "slow", "normal"};
  private static final String[] CODE = {"none", "heat", "sensor"};

  private static final double[][] HEATER_R_TABLE = {
    {.96, .02, .02},
    {.03, .82, .15},
    {.01, .04, .95},
    {.01, .04, .95},
    {.02, .05, .93},
    {.08, .12, .80}
  };
  private static final double[][] INSULATION_TABLE = {
    {.12, .88}, {.25, .75}, {.02, .98}, {.02, .98}, {.06, .94}, {.10, .90}
  };
  private static final double[][] SENSOR_R_TABLE = {
    {.03, .94, .03},
    {.03, .94, .03},
    {.38, .14, .48},
    {.03, .94, .03},
    {.04, .92, .04},
    {.10, .80, .10}
  };
  private static final double[][] HEATER_V_TABLE = {
    {.03, .03, .94},
    {.02, .05, .93},
    {.45, .03, .52},
    {.93, .03, .04},
    {.30, .58, .12},
    {.30, .15, .55}
  };
  private static final double[][] POWER_TABLE = {
    {.94, .04, .02},
    {.05, .80, .15},
    {.44, .04, .52},
    {.93, .04, .03},
    {.28, .62, .10},
    {.35, .20, .45}
  };
  private static final double[][] SUPPLY_V_TABLE = {
    {.04, .96}, {.04, .96}, {.04, .96}, {.04, .96}, {.45, .55}, {.08, .92}
  };
  private static final double[][] TEMP_RISE_TABLE = {
    {.93, .05, .02},
    {.06, .86, .08},
    {.35, .25, .40},
    {.92, .05, .03},
    {.28, .60, .12},
    {.35, .30, .35}
  };
  private static final double[][] CODE_TABLE = {
    {.15, .82, .03},
    {.55, .42, .03},
    {.25, .20, .55},
    {.18, .79, .03},
    {.45, .52, .03},
    {.60, .30, .10}
  };

  /** By fault, then power. */
  private static final double[][][] TEMP_RISE_BY_POWER = {
    {{.90, .07, .03}, {.10, .80, .10}, {.03, .07, .90}},
    {{.90, .07, .03}, {.10, .80, .10}, {.04, .16, .80}},
    {{.85, .10, .05}, {.15, .70, .15}, {.05, .35, .60}},
    {{.90, .07, .03}, {.10, .80, .10}, {.03, .07, .90}},
    {{.90, .07, .03}, {.10, .80, .10}, {.03, .07, .90}},
    {{.75, .15, .10}, {.20, .60, .20}, {.15, .35, .50}},
  };

  /** By fault, with the resistance of the sensor in its band. */
  private static final double[][] CODE_IN_BAND = {
    {.15, .83, .02},
    {.56, .42, .02},
    {.50, .30, .20},
    {.18, .80, .02},
    {.46, .52, .02},
    {.62, .33, .05}
  };

  /** By fault, with the resistance of the sensor below or above its band. */
  private static final double[][] CODE_OUT_OF_BAND = {
    {.10, .60, .30},
    {.30, .35, .35},
    {.20, .18, .62},
    {.10, .60, .30},
    {.30, .35, .35},
    {.35, .25, .40}
  };

  /** Of the repairs of heater, sensor, relay and wiring, and of the service. */
  static final Repairs REPAIRS =
      Repairs.of(
          new double[] {95, 45, 70, 55},
          new double[][] {
            {1, 1, 0, 0, 0, 0}, {0, 0, 1, 0, 0, 0}, {0, 0, 0, 1, 0, 0}, {0, 0, 0, 0, 1, 0}
          },
          260);

  private static final Map<String, Double> PRICES =
      Map.of(
          "heaterR",
          4.0,
          "heaterV",
          6.0,
          "power",
          3.0,
          "sensorR",
          5.0,
          "supplyV",
          2.0,
          "insulation",
          3.0,
          "code",
          1.0,
          "tempRise",
          0.0);

  /** What was observed in each of the queries. */
  static final Map<String, String> QUERIES =
      new TreeMap<>(
          Map.of(
              "Q0", "",
              "Q1", "tempRise=slow",
              "Q2", "tempRise=slow heaterR=nominal",
              "Q3", "tempRise=slow heaterR=nominal heaterV=low",
              "Q4", "heaterR=open power=rated",
              "Q5",
                  "heaterR=nominal insulation=ok sensorR=band heaterV=low power=reduced"
                      + " supplyV=low tempRise=slow code=heat",
              "Q6", "tempRise=none code=heat"));

  private final List<String> names = new ArrayList<>();
  private final List<String[]> outcomes = new ArrayList<>();
  private final List<Block> blocks = new ArrayList<>();
  private final AimaNetwork aima = new AimaNetwork();
  private final List<Integer> nodes = new ArrayList<>();

  /** For each observable the chance of each outcome by fault and outcome of what it hangs on. */
  private final List<double[][][]> tables = new ArrayList<>();

  /** For each observable the number of what it hangs on beside the fault, or itself. */
  private final List<Integer> hangsOn = new ArrayList<>();

  private DiscreteModel model;

  private Networks() {
    aima.add(PRIOR.length, PRIOR);
  }

  /**
   * Network A.
   *
   * @return the network
   */
  public static Networks a() {
    Networks a = new Networks();
    a.single("heaterR", HEATER_R, HEATER_R_TABLE);
    a.single("insulation", INSULATION, INSULATION_TABLE);
    a.single("sensorR", SENSOR_R, SENSOR_R_TABLE);
    a.single("heaterV", HEATER_V, HEATER_V_TABLE);
    a.single("power", POWER, POWER_TABLE);
    a.single("supplyV", SUPPLY_V, SUPPLY_V_TABLE);
    a.single("tempRise", TEMP_RISE, TEMP_RISE_TABLE);
    a.single("code", CODE, CODE_TABLE);
    return a.done();
  }

  /**
   * Network B.
   *
   * @return the network
   */
  public static Networks b() {
    Networks b = new Networks();
    b.single("heaterR", HEATER_R, HEATER_R_TABLE);
    b.single("insulation", INSULATION, INSULATION_TABLE);
    b.single("heaterV", HEATER_V, HEATER_V_TABLE);
    b.single("supplyV", SUPPLY_V, SUPPLY_V_TABLE);
    b.pair("power", POWER, POWER_TABLE, "tempRise", TEMP_RISE, TEMP_RISE_BY_POWER);
    double[][][] code = new double[FAULTS.length][][];
    for (int s = 0; s < code.length; s++) {
      code[s] = new double[][] {CODE_OUT_OF_BAND[s], CODE_IN_BAND[s], CODE_OUT_OF_BAND[s]};
    }
    b.pair("sensorR", SENSOR_R, SENSOR_R_TABLE, "code", CODE, code);
    return b.done();
  }

  private void single(String name, String[] values, double[][] table) {
    hang(name, values, names.size(), once(table));
    blocks.add(Block.single(table));
    nodes.add(aima.add(values.length, flat(table), 0));
  }

  private void pair(
      String name,
      String[] values,
      double[][] table,
      String after,
      String[] afterValues,
      double[][][] afterTable) {
    int first = names.size();
    hang(name, values, first, once(table));
    hang(after, afterValues, first, afterTable);
    blocks.add(Block.sharing(table, Block.sharedItself(FAULTS.length, values.length), afterTable));
    nodes.add(aima.add(values.length, flat(table), 0));
    double[] flat =
        Arrays.stream(afterTable).flatMapToDouble(t -> Arrays.stream(flat(t))).toArray();
    nodes.add(aima.add(afterValues.length, flat, 0, nodes.get(nodes.size() - 1)));
  }

  private void hang(String name, String[] values, int on, double[][][] table) {
    names.add(name);
    outcomes.add(values);
    hangsOn.add(on);
    tables.add(table);
  }

  /** A table by fault alone. */
  private static double[][][] once(double[][] table) {
    return Arrays.stream(table).map(row -> new double[][] {row}).toArray(double[][][]::new);
  }

  private Networks done() {
    model = new DiscreteModel(PRIOR, blocks);
    return this;
  }

  static double[] flat(double[][] table) {
    return Arrays.stream(table).flatMapToDouble(Arrays::stream).toArray();
  }

  /**
   * The network for the kernel.
   *
   * @return the model
   */
  DiscreteModel model() {
    return model;
  }

  /**
   * The network of the other library.
   *
   * @return the network
   */
  public AimaNetwork aima() {
    return aima;
  }

  /**
   * The number of an observable.
   *
   * @param name its name
   * @return the number
   */
  int number(String name) {
    return names.indexOf(name);
  }

  /**
   * How many observables there are.
   *
   * @return the number
   */
  public int observables() {
    return names.size();
  }

  /**
   * What an observable is called.
   *
   * @param observable its number
   * @return the name
   */
  public String name(int observable) {
    return names.get(observable);
  }

  /**
   * What an observable can show.
   *
   * @param observable its number
   * @return the outcomes
   */
  public String[] outcomes(int observable) {
    return outcomes.get(observable).clone();
  }

  /**
   * The chance of an outcome given the fault and what was observed of that on which the observable
   * hangs; where that was not observed, it is summed out. So the chances of all that was observed,
   * multiplied, are the chance of all of it together.
   *
   * @param fault the number of the fault
   * @param observable the number of the observable
   * @param outcome the number of its outcome
   * @param evidence what was observed, for the kernel
   * @return the chance, 0 to 1
   */
  public double chance(int fault, int observable, int outcome, int[] evidence) {
    int on = hangsOn.get(observable);
    double[][] table = tables.get(observable)[fault];
    if (on == observable) {
      return table[0][outcome];
    }
    if (evidence[on] >= 0) {
      return table[evidence[on]][outcome];
    }
    double sum = 0;
    for (int above = 0; above < table.length; above++) {
      sum += tables.get(on)[fault][0][above] * table[above][outcome];
    }
    return sum;
  }

  double[] prices() {
    return names.stream().mapToDouble(PRICES::get).toArray();
  }

  /**
   * What was observed in a query, for the kernel.
   *
   * @param query its name
   * @return the outcomes
   */
  public int[] evidence(String query) {
    int[] evidence = model.nothingObserved();
    for (String part : QUERIES.get(query).split(" ")) {
      if (!part.isEmpty()) {
        String[] pair = part.split("=");
        int number = number(pair[0]);
        evidence[number] = Arrays.asList(outcomes.get(number)).indexOf(pair[1]);
      }
    }
    return evidence;
  }

  /**
   * The node of the other library that stands for an observable.
   *
   * @param observable the number of the observable
   * @return the number of the node
   */
  int node(int observable) {
    return nodes.get(observable);
  }

  /**
   * What was observed, for the other library.
   *
   * @param evidence the outcomes
   * @return the same
   */
  public AssignmentProposition[] findings(int[] evidence) {
    List<AssignmentProposition> findings = new ArrayList<>();
    for (int f = 0; f < evidence.length; f++) {
      if (evidence[f] >= 0) {
        findings.add(aima.finding(nodes.get(f), evidence[f]));
      }
    }
    return findings.toArray(new AssignmentProposition[0]);
  }
}
