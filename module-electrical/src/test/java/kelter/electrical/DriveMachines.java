package kelter.electrical;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Vocabulary;

/** Made-up machines with drives, doors, seals and what holds them, and what they forecast. */
public final class DriveMachines {

  /** What turns a drum by brushes and a belt. */
  public static final Appliance WASHER =
      Jobs.appliance(
          of("brushed-motor", "rotor-resistance", ohm(2.5), "field-resistance", ohm(2)),
          of("brushes", "new-length", mm(36), "change-length", mm(12)),
          of("tacho", "coil-resistance", ohm(180)),
          of("belt", "span-frequency", Quantity.of(40, "Hz", QuantityKind.FREQUENCY)),
          of("drum-bearing"),
          of("drum-seal"),
          of("damper"),
          of("spring"),
          of("door"),
          of("door-lock", "coil-resistance", ohm(1000)),
          of("door-gasket"));

  /** A large one with a drive, bolted to the floor. */
  public static final Appliance EXTRACTOR =
      Jobs.appliance(
          of("inverter-drive"),
          of("imbalance-switch"),
          of("anchor-bolts"),
          of("drum-roller"),
          of("idler"));

  /** A hob that heats the pan by induction. */
  public static final Appliance INDUCTION_HOB =
      Jobs.appliance(
          of("glass"),
          of("pan"),
          of("induction-coil"),
          of("inverter-drive"),
          of("dc-fan"),
          of(
              "temperature-sensor",
              "r25",
              ohm(1e5),
              "beta",
              Quantity.of(3950, "K", QuantityKind.of("thermistor constant", "K"))));

  /** What turns a tray. */
  public static final Appliance TURNTABLE = Jobs.appliance(of("roller-ring"), of("coupler"));

  /** A cold machine. */
  public static final Appliance COLD =
      Jobs.appliance(
          of(
              "compressor-winding",
              "run-resistance",
              ohm(16),
              "start-resistance",
              ohm(25),
              "run-current",
              Quantity.of(0.7, "A", QuantityKind.CURRENT)),
          of("fan"),
          of("condenser-fan-wheel"));

  /** Parts of which a job tells nothing. */
  public static final Appliance UNTOLD =
      Jobs.appliance(
          of("brushes"),
          of("tacho"),
          of("belt"),
          of("door-lock"),
          of("compressor-winding"),
          of("brush-roll"),
          of("seal"),
          of("gasket"),
          of("body"));

  /** A motor with brushes of which a job tells nothing. */
  public static final Appliance MOTOR_ALONE = Jobs.appliance(of("brushed-motor"));

  private DriveMachines() {}

  /** All of them. */
  public static List<Appliance> all() {
    return List.of(WASHER, EXTRACTOR, INDUCTION_HOB, COLD, UNTOLD, MOTOR_ALONE);
  }

  /** A part whose id is its kind. */
  public static Component of(String kind) {
    return Jobs.component(kind, kind);
  }

  private static Component of(String kind, Object... figures) {
    Map<String, Quantity> all = new HashMap<>();
    for (int i = 0; i < figures.length; i += 2) {
      all.put((String) figures[i], (Quantity) figures[i + 1]);
    }
    return Jobs.component(kind, kind, Optional.empty(), all);
  }

  private static Quantity ohm(double value) {
    return Quantity.of(value, "Ohm", QuantityKind.RESISTANCE);
  }

  private static Quantity mm(double value) {
    return Quantity.of(value, "mm", QuantityKind.LENGTH);
  }

  /**
   * What is forecast of one question, in the coherent SI unit.
   *
   * @param machine the machine
   * @param question component and observable, with a point between
   * @param fault component and fault; empty for a machine in order
   * @param severity how bad it is
   */
  public static double forecast(Appliance machine, String question, String fault, double severity) {
    for (FaultModel model : new ElectricalModule().parts().faultModels(machine)) {
      List<String> asked = model.questions().stream().map(DriveMachines::key).toList();
      List<String> faults = model.faults().stream().map(Fault::key).toList();
      if (asked.contains(question)) {
        double[] state = new double[faults.size() + model.shared().size()];
        if (!fault.isEmpty()) {
          state[faults.indexOf(fault)] = severity;
        }
        double[] value = new double[asked.size()];
        model.forecaster(model.questions()).forecast(state, value, new double[value.length]);
        return value[asked.indexOf(question)];
      }
    }
    throw new AssertionError("no forecast of " + question);
  }

  /** The same of a machine in order. */
  public static double inOrder(Appliance machine, String question) {
    return forecast(machine, question, "", 0);
  }

  /**
   * A reading.
   *
   * @param part the part
   * @param observable what was read
   * @param reading value and unit with a space between
   */
  public static Measurement read(String part, String observable, String reading) {
    String[] words = reading.split(" ");
    QuantityKind kind =
        new Vocabulary(new ElectricalModule().parts().kinds())
            .observable(part, observable)
            .orElseThrow()
            .kind();
    return Jobs.measurement(
        part, observable, Jobs.value(Double.parseDouble(words[0]), words[1], kind, 0.01));
  }

  /** What the checks say of readings, each verdict once. */
  public static Set<Verdict> verdicts(Appliance machine, Measurement... all) {
    Set<Verdict> verdicts = new TreeSet<>();
    findings(Jobs.job(machine, all)).forEach(finding -> verdicts.add(finding.verdict()));
    return verdicts;
  }

  /** What the checks find in a job. */
  public static List<Finding> findings(Job job) {
    List<Finding> findings = new ArrayList<>();
    for (Check check : new ElectricalModule().parts().on(job.appliance()).checks()) {
      findings.addAll(check.apply(job, DecisionRule.USUAL));
    }
    return findings;
  }

  private static String key(Question question) {
    return question.component() + "." + question.observable().id();
  }
}
