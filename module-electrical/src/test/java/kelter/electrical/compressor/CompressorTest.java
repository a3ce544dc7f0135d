package kelter.electrical.compressor;

import static kelter.electrical.DriveMachines.COLD;
import static kelter.electrical.DriveMachines.forecast;
import static kelter.electrical.DriveMachines.inOrder;
import static kelter.electrical.DriveMachines.read;
import static kelter.electrical.DriveMachines.verdicts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.job.Measurement;
import kelter.electrical.ElectricalModule;
import kelter.electrical.Jobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What faults of the motor of a compressor move, by hand from the law of resistances in series. */
class CompressorTest {

  private static final double OPEN = 1e8;

  /** Run and start winding of 16 and 25 ohm in series: 41 ohm from end to end. */
  @ParameterizedTest
  @CsvSource({"0.25, 1e8, 25", "0.75, 16, 1e8"})
  void anOpenCompressorIsOpenFromEndToEnd(double severity, double run, double start) {
    String open = "compressor-winding.open";
    assertEquals(41, inOrder(COLD, "compressor-winding.end-to-end-resistance"), 1e-9);
    assertEquals(run, forecast(COLD, "compressor-winding.run-resistance", open, severity), 1e-6);
    assertEquals(
        start, forecast(COLD, "compressor-winding.start-resistance", open, severity), 1e-6);
    assertEquals(
        OPEN, forecast(COLD, "compressor-winding.end-to-end-resistance", open, severity), 1e-6);
  }

  /** A rotor that stands draws 4 to 8 times the running current, its windings measure as ever. */
  @Test
  void aSeizedCompressorDrawsTheCurrentOfALockedRotor() {
    double current = forecast(COLD, "compressor-winding.current", "compressor-winding.seized", 0.5);
    assertTrue(current >= 4 * 0.7 && current <= 8 * 0.7, current + " A");
    assertEquals(
        16,
        forecast(COLD, "compressor-winding.run-resistance", "compressor-winding.seized", 1),
        1e-9);
    assertTrue(
        forecast(
                COLD,
                "compressor-winding.insulation-resistance",
                "compressor-winding.to-earth",
                0.9)
            < 1e5);
  }

  /** 16 + 25 = 41 ohm within 5 %; without the two there is nothing to hold it against. */
  @Test
  void theWindingsOfACompressorAddUp() {
    Measurement run = read("compressor-winding", "run-resistance", "16 Ohm");
    Measurement start = read("compressor-winding", "start-resistance", "25 Ohm");
    Measurement right = read("compressor-winding", "end-to-end-resistance", "41.2 Ohm");
    Measurement wrong = read("compressor-winding", "end-to-end-resistance", "60 Ohm");
    assertEquals(Set.of(Verdict.CONFORMS), verdicts(COLD, run, start, right));
    assertEquals(Set.of(Verdict.DOES_NOT_CONFORM), verdicts(COLD, run, start, wrong));
    assertEquals(Set.of(Verdict.NOT_MEASURED), verdicts(COLD, right));
  }

  /** What a plate states is known better than what is usual; the sum of both windings as well. */
  @Test
  void statedWindingsAreForecastMoreNarrowlyThanUsualOnes() {
    Appliance unstated = Jobs.appliance(Jobs.component("compressor-winding", "compressor-winding"));
    for (String question : List.of("run-resistance", "start-resistance", "end-to-end-resistance")) {
      assertTrue(
          spread(COLD, "compressor-winding." + question)
              < spread(unstated, "compressor-winding." + question),
          question);
    }
  }

  private static double spread(Appliance machine, String question) {
    for (FaultModel model : new ElectricalModule().parts().faultModels(machine)) {
      List<Question> questions = model.questions();
      for (int i = 0; i < questions.size(); i++) {
        Question asked = questions.get(i);
        if ((asked.component() + "." + asked.observable().id()).equals(question)) {
          double[] spread = new double[questions.size()];
          double[] none = new double[model.faults().size() + model.shared().size()];
          model.forecaster(questions).forecast(none, new double[spread.length], spread);
          return spread[i];
        }
      }
    }
    throw new AssertionError("no forecast of " + question);
  }
}
