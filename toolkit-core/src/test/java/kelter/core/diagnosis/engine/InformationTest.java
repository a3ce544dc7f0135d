package kelter.core.diagnosis.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultHistory;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.likelihood.Group;
import kelter.core.diagnosis.likelihood.LinearModel;
import kelter.core.diagnosis.likelihood.Priors;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import org.junit.jupiter.api.Test;

class InformationTest {

  private static final Procedure EXACT =
      new Procedure("Read it.", 2, Hazard.DEAD, new Accuracy(0, 0), List.of());

  private static final Observable CURRENT =
      Observable.named("current", "current").quantity(QuantityKind.CURRENT, -100, 100).by(EXACT);

  /** Two states, healthy and one fault, whose forecasts have these means and spreads. */
  private static double bits(double mean0, double sd0, double mean1, double sd1) {
    FaultModel model =
        new FaultModel() {
          @Override
          public String id() {
            return "two";
          }

          @Override
          public List<Fault> faults() {
            return List.of(LinearModel.fault("other", 0.5));
          }

          @Override
          public List<Question> questions() {
            return List.of(new Question("part", CURRENT, kelter.core.job.Conditions.NONE));
          }

          @Override
          public Forecaster forecaster(List<Question> questions) {
            return (severity, value, spread) -> {
              for (int k = 0; k < value.length; k++) {
                value[k] = severity[0] > 0 ? mean1 : mean0;
                spread[k] = severity[0] > 0 ? sd1 : sd0;
              }
            };
          }
        };
    Priors priors = new Priors(LinearModel.job("", List.of()).appliance(), FaultHistory.NONE);
    Group group = Group.of(model, List.of(), priors, List.of(), EngineSettings.USUAL).withPairs();
    return new Information(
            group,
            new double[] {0.5, 0.5, 0},
            model.questions(),
            (state, count) -> group.nodes(state, count, group.shares(state)))
        .outcomes(0)
        .bits();
  }

  /**
   * N(0, 1) against N(0, 10) at even odds: 0.62514 bits, by a midpoint rule of 200,000 points
   * written outside the project. Eight nodes for each state come within a tenth.
   */
  @Test
  void unequalSpreadsTell() {
    assertEquals(0.625, bits(0, 1, 0, 10), 0.0625);
  }

  /** Far apart, a reading tells all there is: one bit at even odds. */
  @Test
  void statesFarApartTellOneBit() {
    assertEquals(1, bits(0, 1, 50, 1), 1e-6);
  }

  @Test
  void statesThatAreAlikeTellNothing() {
    assertEquals(0, bits(3, 1, 3, 1), 1e-12);
  }

  @Test
  void aWiderSpreadNeverTellsMore() {
    double before = 2;
    for (double sd = 0.2; sd < 20; sd *= 1.5) {
      double now = bits(0, sd, 2, sd);
      assertTrue(now <= before + 1e-9, "at " + sd);
      before = now;
    }
  }
}
