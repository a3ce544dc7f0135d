package kelter.hydraulics.bench;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.vocabulary.Observable;
import kelter.hydraulics.AirSamples;
import kelter.hydraulics.HydraulicsModule;
import kelter.hydraulics.SampleMachines;
import kelter.hydraulics.SampleWaterParts;

/**
 * The table of what each fault moves, at severity 0.3 and 0.8, on the machines that were made up
 * for the tests. Its main method writes it into the documentation of the module.
 */
public final class FaultEffects {

  /** Where the table stands, from the folder of the module. */
  public static final Path FILE = Path.of("fault-effects.md");

  private static final double SLIGHT = 0.3;
  private static final double SEVERE = 0.8;

  /** An effect below this share of the spread is told as none. */
  private static final double TELLING = 0.5;

  private FaultEffects() {}

  /**
   * Writes the table.
   *
   * @param arguments none
   * @throws java.io.IOException if the file cannot be written
   */
  public static void main(String[] arguments) throws java.io.IOException {
    Files.writeString(FILE, table(), StandardCharsets.UTF_8);
  }

  /**
   * The table in Markdown.
   *
   * @return the text
   */
  public static String table() {
    StringBuilder text = new StringBuilder();
    text.append(
        """
        # What each hydraulic fault moves

        Made by the code (`kelter.hydraulics.bench.FaultEffects`), for the machines that were made up for the
        tests. First the value of a machine in order, then by how much it moves at severity 0.3 and 0.8. Yes or
        no is told as the chance of a yes, a grade on a scale from 0 to 1. What moves by less than half of the
        spread between machines at both severities is left out.
        """);
    List<Appliance> machines = new ArrayList<>(SampleMachines.all());
    machines.addAll(AirSamples.all());
    machines.addAll(SampleWaterParts.all());
    for (Appliance appliance : machines) {
      for (FaultModel model : new HydraulicsModule().parts().faultModels(appliance)) {
        append(text, model);
      }
    }
    return text.toString();
  }

  private static void append(StringBuilder text, FaultModel model) {
    List<Question> questions = model.questions();
    Forecaster forecaster = model.forecaster(questions);
    int faults = model.faults().size();
    double[][] healthy = forecast(forecaster, questions.size(), none(model));
    text.append("\n## ").append(model.id()).append("\n\n");
    text.append("| fault | observable | in order | at 0.3 | at 0.8 |\n|---|---|---|---|---|\n");
    for (int f = 0; f < faults; f++) {
      double[][] slight = forecast(forecaster, questions.size(), only(model, f, SLIGHT));
      double[][] severe = forecast(forecaster, questions.size(), only(model, f, SEVERE));
      for (int i = 0; i < questions.size(); i++) {
        Observable observable = questions.get(i).observable();
        double first = slight[0][i] - healthy[0][i];
        double second = severe[0][i] - healthy[0][i];
        double spread = observable.type() == Observable.Type.YES_NO ? 0.2 : TELLING * healthy[1][i];
        if (Math.max(Math.abs(first), Math.abs(second)) >= spread) {
          text.append(
              "| %s | %s | %s | %s | %s |\n"
                  .formatted(
                      model.faults().get(f).title(),
                      observable.title(),
                      told(observable, healthy[0][i]),
                      moved(observable, healthy[0][i], slight[0][i]),
                      moved(observable, healthy[0][i], severe[0][i])));
        }
      }
    }
  }

  private static double[] none(FaultModel model) {
    return new double[model.faults().size() + model.shared().size()];
  }

  private static double[] only(FaultModel model, int fault, double severity) {
    double[] state = none(model);
    state[fault] = severity;
    return state;
  }

  private static double[][] forecast(Forecaster forecaster, int questions, double[] severity) {
    double[] value = new double[questions];
    double[] spread = new double[questions];
    forecaster.forecast(severity, value, spread);
    return new double[][] {value, spread};
  }

  private static String told(Observable observable, double si) {
    if (isOpen(observable, si)) {
      return "open";
    }
    double value = observable.kind().fromSi(si, observable.kind().unit());
    String number = String.format(Locale.ROOT, Math.abs(value) < 10 ? "%.2f" : "%.1f", value);
    String unit = observable.kind().unit().symbol();
    return unit.isEmpty() ? number : number + " " + unit;
  }

  private static boolean isOpen(Observable observable, double si) {
    return observable.logarithmic() && si >= observable.span().high();
  }

  private static String moved(Observable observable, double healthy, double now) {
    List<String> parts = new ArrayList<>();
    parts.add(told(observable, now));
    double healthyShown = observable.kind().fromSi(healthy, observable.kind().unit());
    double nowShown = observable.kind().fromSi(now, observable.kind().unit());
    boolean figure = observable.type() == Observable.Type.QUANTITY;
    if (figure && Math.abs(healthyShown) > 0.3 && !isOpen(observable, now)) {
      parts.add(
          String.format(Locale.ROOT, "(%+d %%)", Math.round(100 * (nowShown / healthyShown - 1))));
    }
    return String.join(" ", parts);
  }
}
