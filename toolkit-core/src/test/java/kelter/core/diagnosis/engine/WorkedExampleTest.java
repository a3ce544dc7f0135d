package kelter.core.diagnosis.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.likelihood.LinearModel;
import kelter.core.job.Conditions;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Observable;
import org.junit.jupiter.api.Test;

/** The example that the page on the method works by hand, weighed by the engine. */
class WorkedExampleTest {

  private static final Path PAGE = Path.of("method.md");

  private static final double NOTHING = 0.10;
  private static final double SOMETHING_ELSE = 0.05;
  private static final double SCALED = 0.55;
  private static final double AGED = 0.30;
  private static final double IN_ORDER = 26.5; // ohm
  private static final double OF_AGED = 29; // ohm
  private static final double SPREAD = 0.6; // ohm
  private static final double READING = 28.4; // ohm
  private static final double U = 0.3; // ohm

  private static final Observable RESISTANCE =
      Observable.named("resistance", "resistance")
          .quantity(QuantityKind.RESISTANCE, 5, 200)
          .by(LinearModel.PROCEDURE);

  /** A heater that is scaled, which its resistance does not show, or aged; never both. */
  private record Heater() implements FaultModel {

    @Override
    public String id() {
      return "heater";
    }

    @Override
    public List<Fault> faults() {
      return List.of(fault("scaled", SCALED), fault("aged", AGED));
    }

    private static Fault fault(String id, double share) {
      return LinearModel.fault(id, share / (1 + share));
    }

    @Override
    public boolean mayMeet(int one, int other) {
      return false;
    }

    @Override
    public List<Question> questions() {
      return List.of(new Question("part", RESISTANCE, Conditions.NONE));
    }

    @Override
    public Forecaster forecaster(List<Question> questions) {
      return (severity, value, spread) -> {
        for (int k = 0; k < questions.size(); k++) {
          value[k] = severity[1] > 0 ? OF_AGED : IN_ORDER;
          spread[k] = SPREAD;
        }
      };
    }
  }

  private static Diagnosis diagnosis(double reading) {
    return new DiagnosisEngine(EngineSettings.USUAL.forKind(NOTHING, SOMETHING_ELSE, 1))
        .diagnose(
            LinearModel.job(
                "heats slowly", List.of(RESISTANCE), new double[] {reading}, new double[] {U}),
            List.of(new Heater()));
  }

  private static double of(Diagnosis diagnosis, String id) {
    return diagnosis.faults().stream()
        .filter(each -> each.fault().id().equals(id))
        .findFirst()
        .orElseThrow()
        .probability();
  }

  /** By hand, with the figures of the page. */
  private static double[] byHand() {
    double deviation = Math.sqrt(SPREAD * SPREAD + U * U);
    double anything = 1 / (200.0 - 5);
    double else_ = SOMETHING_ELSE * (1 + 0.1 * (SCALED + AGED));
    double nothing = NOTHING / (1 - NOTHING) * (SCALED + AGED + else_);
    double inOrder = likelihood((READING - IN_ORDER) / deviation, deviation, anything);
    double aged = likelihood((READING - OF_AGED) / deviation, deviation, anything);
    double[] weight = {AGED * aged, SCALED * inOrder, nothing * inOrder, else_ * anything};
    double sum = weight[0] + weight[1] + weight[2] + weight[3];
    for (int i = 0; i < weight.length; i++) {
      weight[i] /= sum;
    }
    return weight;
  }

  private static double likelihood(double z, double deviation, double anything) {
    return 0.99 * Math.exp(-z * z / 2) / (deviation * Math.sqrt(2 * Math.PI)) + 0.01 * anything;
  }

  @Test
  void theEngineSaysWhatTheFormulasSay() {
    Diagnosis diagnosis = diagnosis(READING);
    double[] expected = byHand();

    assertEquals(expected[0], of(diagnosis, "aged"), 1e-9);
    assertEquals(expected[1], of(diagnosis, "scaled"), 1e-9);
    assertEquals(expected[2], diagnosis.healthy(), 1e-9);
    assertEquals(expected[3], diagnosis.unexplained().probability(), 1e-9);
  }

  @Test
  void thePageHasWhatTheEngineSays() throws IOException {
    String page = Files.readString(PAGE, StandardCharsets.UTF_8);
    Diagnosis before = diagnosis(Double.NaN);
    Diagnosis after = diagnosis(READING);

    requireRow(page, "aged", of(before, "aged"), of(after, "aged"));
    requireRow(page, "scaled", of(before, "scaled"), of(after, "scaled"));
    requireRow(page, "nothing wrong", before.healthy(), after.healthy());
    requireRow(
        page,
        "something else",
        before.unexplained().probability(),
        after.unexplained().probability());
  }

  private static void requireRow(String page, String state, double before, double after) {
    String begins = "| " + state + " | " + percent(before) + " |";
    String ends = "| " + percent(after) + " |";
    assertTrue(
        page.lines().anyMatch(line -> line.startsWith(begins) && line.endsWith(ends)),
        begins + " ... " + ends);
  }

  private static String percent(double probability) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * probability);
  }
}
