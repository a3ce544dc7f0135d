package coffee.grinder;

import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptoms;

/** The burrs of a coffee grinder. Chances, spreads and usual figures are from memory. */
final class Burrs implements Part {

  /** It takes longer for a dose than it did. */
  static final Symptom GRINDS_SLOWLY =
      new Symptom(
          "grinds-slowly",
          "grinds slowly",
          "Does a dose take longer than it did?",
          0.02,
          0.1,
          Symptom.Misreports.OF_DEGREE,
          List.of(Symptoms.DOES_NOT_START.id()));

  /** Less comes out than goes in. */
  static final Symptom DOSES_SHORT =
      new Symptom(
          "doses-short",
          "gives less coffee than was filled in",
          "Does less coffee come out than you fill in?",
          0.02,
          0.1,
          Symptom.Misreports.SUBTLE,
          List.of(Symptoms.DOES_NOT_START.id()));

  private static final Caution FINGERS =
      new Caution(
          "hopper-and-chute",
          Signal.WARNING,
          "Moving parts. Keep fingers and tools out of the hopper and the chute.");
  private static final Caution SHARP =
      new Caution("sharp-burrs", Signal.CAUTION, "Burrs are sharp. Hold them by the rim.");

  static final List<Caution> CAUTIONS = List.of(FINGERS, SHARP);

  private static final double USUAL_DOSE = 0.018; // kg
  private static final double USUAL_RATE = 0.002; // kg/s
  private static final double LONGEST = 1.5; // ratio to the time in order
  private static final double MOST_KEPT = 0.1; // ratio to the dose

  private static final Characteristic DOSE =
      new Characteristic("dose", "coffee that is filled in", QuantityKind.MASS);
  private static final Characteristic RATE =
      new Characteristic("rated-rate", "grinding rate with sharp burrs", GrindTime.RATE);

  private static final Observable TIME =
      Observable.named("grind-time", "time for a dose")
          .quantity(QuantityKind.TIME, 0.5, 300)
          .at(DOSE)
          .how("Fill in a weighed dose, let it run empty and take the time.")
          .by(Procedure.running(2, new Accuracy(0, 0.5), FINGERS));
  private static final Observable OUT =
      Observable.named("dose-out", "coffee that comes out of a dose")
          .quantity(QuantityKind.MASS, 0, 0.2)
          .at(DOSE)
          .how("Fill in a weighed dose, let it run empty and weigh what comes out.")
          .by(Procedure.running(2, new Accuracy(0, 1e-4), FINGERS));
  private static final Observable EDGE =
      Observable.named("edge", "edges of the burrs")
          .graded("sharp", "dull", "chipped")
          .how("Take the upper burr out and run a fingernail along the edges.")
          .by(Procedure.inside(8, SHARP));

  private static final ComponentKind KIND =
      new ComponentKind("burrs", "burrs", List.of(TIME, OUT, EDGE), List.of(RATE), List.of());

  private static final Source PRIORS = Source.fromMemory("faults of burrs");

  private static final Work RENEW =
      Work.renewing("renew-burrs", "renew the burrs", 25, 0.97, Caution.UNPLUG, SHARP);
  private static final Work CLEAN =
      Work.byHand("clean-burrs", "clean burrs and chute", 15, 0.95, Caution.UNPLUG, SHARP);

  private static final List<FaultRow> FAULTS =
      List.of(
          fault("worn", "burrs worn", 0.2)
              .wears(new Wear(2.5, 6, PRIORS))
              .changes(BurrFigure.RATE.times(0.4), BurrFigure.EDGE.plus(0.35))
              .makes(GRINDS_SLOWLY, 0.2, 0.9)
              .curedBy(RENEW),
          fault("clogged", "old coffee in burrs and chute", 0.15)
              .changes(BurrFigure.RATE.times(0.6), BurrFigure.KEPT.plus(0.4))
              .makes(GRINDS_SLOWLY, 0.1, 0.6)
              .makes(DOSES_SHORT, 0.2, 0.9)
              .curedBy(CLEAN),
          fault("chipped", "burrs chipped by a stone", 0.05)
              .changes(BurrFigure.RATE.times(0.7), BurrFigure.EDGE.atLeast(0.9))
              .makes(Symptoms.LOUD, 0.4, 0.8)
              .makes(GRINDS_SLOWLY, 0.2, 0.6)
              .curedBy(RENEW));

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("burrs-grind-time", "Do the burrs grind quickly enough?")
            .on(KIND, TIME, Burrs::quick),
        LimitCheck.named("burrs-dose-out", "Does a dose come out?").on(KIND, OUT, Burrs::whole));
  }

  private static Optional<Allowed> quick(Measured measured) {
    double rate = measured.component().si(RATE);
    if (!(rate > 0)) {
      return Optional.empty();
    }
    double dose = measured.conditions().si(DOSE, USUAL_DOSE);
    return Optional.of(
        Allowed.of(
            "time for a dose against that with sharp burrs",
            Source.commonPractice("burrs are due when a dose takes half as long again"),
            Limits.atMost(LONGEST * GrindTime.time(dose, rate))));
  }

  private static Optional<Allowed> whole(Measured measured) {
    double dose = measured.conditions().si(DOSE, USUAL_DOSE);
    return Optional.of(
        Allowed.of(
            "coffee that comes out against the dose",
            Source.commonPractice("a clean grinder keeps less than a tenth of a dose"),
            Limits.atLeast((1 - MOST_KEPT) * dose)));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component burrs) {
    double rate = burrs.si(RATE, USUAL_RATE);
    if (!(rate > 0)) {
      throw new IllegalArgumentException("'rated-rate' lies above 0 g/s");
    }
    return Optional.of(
        PartModel.of(burrs, KIND, PRIORS, BurrFigure.ALL)
            .faults(FAULTS)
            .looks(EDGE, BurrFigure.EDGE, Spread.constant(0.12))
            .under(conditions -> state -> new Ground(state, conditions.si(DOSE, USUAL_DOSE), rate))
            .observe(TIME, Ground::time, Spread.relative(0.12))
            .observe(OUT, Ground::out, Spread.relative(0.02))
            .build());
  }
}
