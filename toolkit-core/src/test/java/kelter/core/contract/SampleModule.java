package kelter.core.contract;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Nameplate;
import kelter.core.module.About;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.module.Part;
import kelter.core.module.Parts;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;

/**
 * A small module that keeps the contract, made of parts that a test can exchange for broken ones.
 */
public final class SampleModule implements CalculationModule {

  static final Source LAW = Source.published("Ohm, Die galvanische Kette, 1827");
  static final Source INVENTED = new Source("made up for a test", Standing.INVENTED);

  static final Observable RESISTANCE =
      Observable.named("resistance", "resistance between the terminals")
          .quantity(QuantityKind.RESISTANCE, 0, 1e6)
          .by(procedure(Hazard.DEAD, List.of()));
  static final Observable HUM =
      Observable.named("hum", "a hum").by(procedure(Hazard.NONE, List.of()));

  static final ComponentKind KIND =
      new ComponentKind("buzzer", "buzzer", List.of(RESISTANCE, HUM), List.of(), List.of());

  final About about;
  final List<Calculation> calculations;
  final List<ComponentKind> kinds;
  final List<Check> checks;
  final List<FaultModel> models;

  /** The module that keeps the contract. */
  public SampleModule() {
    this(calculation(), KIND, check(), model());
  }

  SampleModule(Calculation calculation, ComponentKind kind, Check check, FaultModel... models) {
    this(
        new About("sample", "a sample", "1"),
        List.of(calculation),
        List.of(kind),
        List.of(check),
        List.of(models));
  }

  SampleModule(
      About about,
      List<Calculation> calculations,
      List<ComponentKind> kinds,
      List<Check> checks,
      List<FaultModel> models) {
    this.about = about;
    this.calculations = calculations;
    this.kinds = kinds;
    this.checks = checks;
    this.models = models;
  }

  static SampleModule with(Calculation... calculations) {
    return new SampleModule(
        new About("sample", "a sample", "1"),
        List.of(calculations),
        List.of(KIND),
        List.of(),
        List.of());
  }

  static SampleModule with(FaultModel... models) {
    return new SampleModule(calculation(), KIND, check(), models);
  }

  static SampleModule with(Observable observable) {
    return new SampleModule(
        calculation(),
        new ComponentKind("buzzer", "buzzer", List.of(observable), List.of(), List.of()),
        check());
  }

  @Override
  public About about() {
    return about;
  }

  @Override
  public List<Calculation> calculations() {
    return calculations;
  }

  @Override
  public Parts parts() {
    return Parts.of(new Buzzer(kinds, checks, models));
  }

  private record Buzzer(List<ComponentKind> kinds, List<Check> checks, List<FaultModel> models)
      implements Part {
    @Override
    public List<FaultModel> faultModels(Appliance appliance) {
      return models;
    }
  }

  static Appliance appliance() {
    Component buzzer =
        new Component("buzzer", "buzzer", Nameplate.UNREADABLE, Map.of(), Map.of(), INVENTED);
    return new Appliance(
        "doorbell", "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of(buzzer));
  }

  static Procedure procedure(Hazard hazard, List<Caution> cautions) {
    return new Procedure("Read the meter.", 1, hazard, new Accuracy(0.01, 0.1), cautions);
  }

  static Calculation calculation() {
    return calculation("ohms-law", voltage("12 V"), x -> new double[] {x[0] / x[1]});
  }

  static Parameter voltage(String usual) {
    return Parameter.optional("voltage", "voltage", QuantityKind.VOLTAGE, 0, 1000, usual);
  }

  static Calculation calculation(String id, Parameter first, Calculation.Law law) {
    return calculation(id, "current through a resistor", LAW, first, law);
  }

  static Calculation calculation(
      String id, String title, Source source, Parameter first, Calculation.Law law) {
    return new Calculation(
        id,
        title,
        "I = voltage / resistance",
        "any resistor",
        source,
        List.of(
            first, Parameter.required("resistance", "resistance", QuantityKind.RESISTANCE, 1, 1e6)),
        List.of(new Output("current", "current", QuantityKind.CURRENT)),
        List.of(),
        law);
  }

  static Check check() {
    return check("resistance-check", List.of());
  }

  static Check check(String id, List<Finding> findings) {
    return new Check() {
      @Override
      public String id() {
        return id;
      }

      @Override
      public String title() {
        return "resistance against its limits";
      }

      @Override
      public List<Finding> apply(Job job, DecisionRule rule) {
        return findings;
      }
    };
  }

  static Question question(Observable observable) {
    return new Question("buzzer", observable, Conditions.NONE);
  }

  static Fault fault(String id, String component, double prior, Source source) {
    Remedy renew =
        new Remedy(
            "renew",
            component,
            "renew the buzzer",
            10,
            Remedy.Restores.COMPONENT,
            true,
            0.9,
            List.of(Caution.UNPLUG));
    return new Fault(
        id, component, "the coil is open", prior, source, List.of(renew), Optional.empty());
  }

  static FaultModel model() {
    return model(
        (severity, value, spread) -> {
          value[0] = 10 + 1e5 * severity[0];
          spread[0] = 1;
        });
  }

  /** A model with one fault and the forecaster given, which answers for the resistance. */
  static FaultModel model(Forecaster forecaster) {
    return model(
        "coil",
        List.of(fault("open", "buzzer", 0.1, Source.commonPractice("one in ten"))),
        List.of(question(RESISTANCE)),
        forecaster);
  }

  static FaultModel model(
      String id, List<Fault> faults, List<Question> questions, Forecaster forecaster) {
    return new FaultModel() {
      @Override
      public String id() {
        return id;
      }

      @Override
      public List<Fault> faults() {
        return faults;
      }

      @Override
      public List<Question> questions() {
        return questions;
      }

      @Override
      public Forecaster forecaster(List<Question> asked) {
        return forecaster;
      }
    };
  }
}
