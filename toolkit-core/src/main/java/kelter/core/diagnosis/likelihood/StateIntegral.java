package kelter.core.diagnosis.likelihood;

import kelter.core.diagnosis.Diagnosis;

/**
 * How likely all readings are in a state, integrated over the severities of the faults that are
 * there, and what they say of these severities. The faults of the state are counted from 0.
 */
sealed interface StateIntegral permits StateIntegral.NoFault, StateIntegral.OneFault, PairIntegral {

  /** The natural logarithm of the integral. */
  double logIntegral();

  /** How the severity of one of the faults is distributed. */
  Diagnosis.Severity distribution(int fault);

  /** The severities of the faults at which the readings are likeliest. */
  double[] mode();

  /**
   * The shares of the nodes at which the integral was taken, 0 or more, 1 in all; one node where
   * there is no severity.
   */
  double[] shares();

  /** The severity of one of the faults at a node of the integral. */
  double severity(int node, int fault);

  /**
   * The severities of the faults at a few nodes that stand for equal shares of the posterior; one
   * node where nothing is to choose.
   *
   * @param count how many
   * @param shares the shares of the nodes of the integral, in their order, 1 in all
   */
  double[][] nodes(int count, double[] shares);

  /** The natural logarithm of the likelihood of one reading, whatever the others say. */
  double logAlone(int item);

  /**
   * Nothing is wrong, or nothing that is known: no severities.
   *
   * @param logIntegral the natural logarithm of the likelihood of all readings
   * @param ofEach the natural logarithm of the likelihood of each reading by itself
   */
  record NoFault(double logIntegral, double[] ofEach) implements StateIntegral {

    @Override
    public Diagnosis.Severity distribution(int fault) {
      throw new IllegalArgumentException("no fault " + fault + " in this state");
    }

    @Override
    public double[] mode() {
      return new double[0];
    }

    @Override
    public double[] shares() {
      return new double[] {1};
    }

    @Override
    public double severity(int node, int fault) {
      throw new IllegalArgumentException("no fault " + fault + " in this state");
    }

    @Override
    public double[][] nodes(int count, double[] shares) {
      return new double[1][0];
    }

    @Override
    public double logAlone(int item) {
      return ofEach[item];
    }
  }

  /**
   * One fault.
   *
   * @param table its forecasts
   * @param integral the integral over its severity
   */
  record OneFault(ForecastTable table, SeverityIntegral integral) implements StateIntegral {

    OneFault(ForecastTable table) {
      this(
          table,
          table.isLevel()
              ? SeverityIntegral.flat(table.logLikelihood(1))
              : SeverityIntegral.of(table::logLikelihood, table.edges()));
    }

    @Override
    public double logIntegral() {
      return integral.logIntegral();
    }

    @Override
    public Diagnosis.Severity distribution(int fault) {
      return integral.distribution();
    }

    @Override
    public double[] mode() {
      return new double[] {integral.mode()};
    }

    @Override
    public double[] shares() {
      return integral.weight();
    }

    @Override
    public double severity(int node, int fault) {
      return integral.severity()[node];
    }

    @Override
    public double[][] nodes(int count, double[] shares) {
      double[] severities = integral.quantiles(count, shares);
      double[][] nodes = new double[count][];
      for (int i = 0; i < count; i++) {
        nodes[i] = new double[] {severities[i]};
      }
      return nodes;
    }

    @Override
    public double logAlone(int item) {
      return table.isLevel()
          ? table.logLikelihood(1, item)
          : SeverityIntegral.of(s -> table.logLikelihood(s, item), table.edges(item)).logIntegral();
    }
  }
}
