package kelter.electrical.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Observable.Type;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.ElectricalModule;
import kelter.electrical.SampleMachines;

/**
 * The table of what each fault moves at severity 0.3 and 0.8. Its main method writes it, run in the
 * folder of the module.
 */
public final class FaultEffects {

  static final Path FILE = Path.of("fault-effects.md");

  private static final double SLIGHT = 0.3;
  private static final double SEVERE = 0.8;

  /** What moves by less than this share of the spread is left out. */
  private static final double SHARE_OF_SPREAD = 0.5;

  /** What moves the chance of a yes by less than this is left out. */
  private static final double CHANCE = 0.1;

  private FaultEffects() {}

  public static void main(String[] arguments) throws IOException {
    Files.writeString(FILE, table(), StandardCharsets.UTF_8);
  }

  static String table() {
    StringBuilder text =
        new StringBuilder(
            """
            # What each electrical fault moves

            Made by the code (`kelter.electrical.bench.FaultEffects`) for the machines that were made up for the
            tests. The value of a machine in order, then at severity 0.3 and 0.8. A yes or no is told as the chance
            of a yes, a grade on a scale from 0 to 1, an open circuit as "open". What moves by less than half of the
            spread between machines, or the chance of a yes by less than 0.1, is left out. Below each, which symptoms
            of the whole machine a fault alone makes, with the chance at 0.3 and at 0.8.
            """);
    for (Appliance appliance : SampleMachines.all()) {
      for (FaultModel model : new ElectricalModule().parts().faultModels(appliance)) {
        append(text, model);
      }
    }
    return text.toString();
  }

  private static void append(StringBuilder text, FaultModel model) {
    text.append("\n## ").append(model.id()).append("\n\n");
    text.append("| fault | part | observable | in order | at 0.3 | at 0.8 |\n");
    text.append("|---|---|---|---|---|---|\n");
    double[][] healthy = forecast(model, -1, 0);
    for (int f = 0; f < model.faults().size(); f++) {
      double[][] slight = forecast(model, f, SLIGHT);
      double[][] severe = forecast(model, f, SEVERE);
      for (int i = 0; i < model.questions().size(); i++) {
        Question question = model.questions().get(i);
        if (moves(question.observable(), healthy, slight, i)
            || moves(question.observable(), healthy, severe, i)) {
          text.append(
              "| %s | %s | %s | %s | %s | %s |\n"
                  .formatted(
                      model.faults().get(f).title(),
                      question.component(),
                      question.observable().title(),
                      told(question.observable(), healthy[0][i]),
                      told(question.observable(), slight[0][i]),
                      told(question.observable(), severe[0][i])));
        }
      }
    }
    appendSymptoms(text, model);
  }

  private static void appendSymptoms(StringBuilder text, FaultModel model) {
    text.append("\n| fault | part | the machine | at 0.3 | at 0.8 |\n|---|---|---|---|---|\n");
    for (Fault fault : model.faults()) {
      for (FaultSymptom symptom : fault.symptoms()) {
        text.append(
            String.format(
                Locale.ROOT,
                "| %s | %s | %s | %.2f | %.2f |\n",
                fault.title(),
                fault.component(),
                title(symptom.symptom()),
                symptom.at(SLIGHT),
                symptom.at(SEVERE)));
      }
    }
  }

  private static String title(String symptom) {
    return Symptoms.ALL.stream()
        .filter(s -> s.id().equals(symptom))
        .findFirst()
        .orElseThrow()
        .title();
  }

  static double[][] forecast(FaultModel model, int fault, double severity) {
    List<Question> questions = model.questions();
    double[] state = new double[model.faults().size() + model.shared().size()];
    if (fault >= 0) {
      state[fault] = severity;
    }
    double[][] answer = new double[2][questions.size()];
    model.forecaster(questions).forecast(state, answer[0], answer[1]);
    return answer;
  }

  private static boolean moves(Observable observable, double[][] a, double[][] b, int i) {
    if (observable.type() == Type.YES_NO) {
      return Math.abs(b[0][i] - a[0][i]) >= CHANCE;
    }
    double step = observable.logarithmic() ? Math.log(b[0][i] / a[0][i]) : b[0][i] - a[0][i];
    return Math.abs(step) >= SHARE_OF_SPREAD * a[1][i];
  }

  private static String told(Observable observable, double si) {
    if (observable.logarithmic() && si >= observable.span().high()) {
      return "open";
    }
    double value = observable.kind().fromSi(si, observable.kind().unit());
    String number = String.format(Locale.ROOT, Math.abs(value) < 10 ? "%.2f" : "%.0f", value);
    String unit = observable.kind().unit().symbol();
    return unit.isEmpty() ? number : number + " " + unit;
  }
}
