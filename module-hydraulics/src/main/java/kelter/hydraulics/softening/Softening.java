package kelter.hydraulics.softening;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.function.ToDoubleFunction;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.Look;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.State;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.leak.LeakHunt;
import kelter.hydraulics.leak.LeakHunt.Leak;
import kelter.hydraulics.part.WaterSide;

/**
 * Softener and its valve as one circuit: hard water behind it comes of missing salt, of a valve
 * that lets no brine through, or of a spent resin. Hardness is told as calcium carbonate; 1 °dH is
 * 17.8 mg/L. Figures and chances are from memory, minutes judgement: common practice, no source.
 */
public final class Softening implements Part {

  private static final QuantityKind HARDNESS = QuantityKind.of("hardness of water", "mg/L");
  private static final double MG_PER_L = 1e-3; // kg/m3
  private static final double RAW = 300 * MG_PER_L; // from memory
  private static final double SOFT = 30 * MG_PER_L; // from memory

  static final Characteristic RAW_HARDNESS =
      new Characteristic("raw-hardness", "hardness of the water that comes in, as CaCO3", HARDNESS)
          .within(new Span(0, 2000 * MG_PER_L));

  static final Observable SOFTENED =
      Observable.named("softened", "hardness of the water in the machine, as CaCO3")
          .quantity(HARDNESS, 0, 2000 * MG_PER_L)
          .how(
              "Dip a hardness strip into the water of the machine after a fill; 1 °dH is 17.8 mg/L.")
          .by(Procedure.running(4, new Accuracy(0.1, 15 * MG_PER_L), Caution.HOT_WATER));

  static final Observable NO_SALT =
      Observable.named("no-salt", "there is no salt in the container, or it is a hard lump")
          .asked(1, "Open the container and feel with a spoon.");

  static final Observable NO_BRINE =
      Observable.named("no-brine", "no water runs through the container at a regeneration")
          .how("Start a regeneration in the service menu; watch the water in the container.")
          .by(WaterSide.running(8));

  private static final LeakHunt HUNT =
      LeakHunt.at("the softener and its hoses", WaterSide.opened(6));

  private static final ComponentKind SOFTENER =
      new ComponentKind(
          "softener",
          "water softener",
          List.of(NO_SALT, SOFTENED, HUNT.tracks(), HUNT.wet()),
          List.of(RAW_HARDNESS),
          List.of());

  private static final ComponentKind VALVE =
      new ComponentKind(
          "softener-valve", "valve of the softener", List.of(NO_BRINE), List.of(), List.of());

  /** What faults change of the whole. */
  private static final class Soft {
    static final FigureSet ALL = new FigureSet("softening");
    static final Figure KEPT =
        ALL.figure("what of its hardness the water keeps beyond the usual, 0 to 1", 0);
    static final Figure SALT_GONE = ALL.figure("how far the salt is gone, 0 to 1", 0);
    static final Figure SHUT =
        ALL.figure("how far the valve is shut when it should open, 0 to 1", 0);
  }

  /**
   * Hardness behind the softener.
   *
   * @param raw that before it, kg/m3
   */
  private record Behind(double raw) implements ToDoubleFunction<State> {
    @Override
    public double applyAsDouble(State state) {
      double soft = Math.min(SOFT, raw);
      return soft + (raw - soft) * Math.min(1, state.of(Soft.KEPT));
    }
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(SOFTENER, VALVE);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("softened-water", "Is the water in the machine soft?")
            .on(
                SOFTENER,
                SOFTENED,
                Allowed.of(
                    "hardness of the water in the machine",
                    Source.commonPractice("at most 90 mg/L as CaCO3, which is 5 °dH"),
                    Limits.atMost(90 * MG_PER_L))));
  }

  @Override
  public List<FaultModel> faultModels(Appliance appliance) {
    List<Component> softeners = appliance.componentsOf(SOFTENER.id());
    List<Component> valves = appliance.componentsOf(VALVE.id());
    if (softeners.isEmpty() && valves.isEmpty()) {
      return List.of();
    }
    PartModel model = PartModel.of("softening", WaterSide.PRIORS, Soft.ALL);
    if (!softeners.isEmpty()) {
      Component softener = softeners.get(0);
      HUNT.seen(
          model
              .on(softener, SOFTENER, Leak.ALL)
              .faults(ofSoftener())
              .looks(NO_SALT, new Look.Noticed(Soft.SALT_GONE, 0.3, 0.08))
              .looks(
                  SOFTENED,
                  new Behind(softener.si(RAW_HARDNESS, RAW)),
                  Spread.relative(0.15).atLeast(15 * MG_PER_L)));
    }
    if (!valves.isEmpty()) {
      model
          .on(valves.get(0), VALVE)
          .faults(stuck())
          .looks(NO_BRINE, new Look.Noticed(Soft.SHUT, 0.35, 0.08));
    }
    return List.of(model.build());
  }

  private static List<FaultRow> ofSoftener() {
    Work renew =
        Work.renewing(
            "renew-softener", "renew the softener", 60, 0.95, HydraulicCautions.DRAIN_FIRST);
    return List.of(
        hard(fault("salt-out", "water softener without salt", 0.02))
            .changes(Soft.KEPT.plus(early(0, 1)), Soft.SALT_GONE.becomes(early(0, 1)))
            .curedBy(Work.byHand("fill-salt", "fill in salt and regenerate", 10, 0.95)),
        hard(fault("spent", "water softener spent", 0.01))
            .wears(Wear.DEPOSIT)
            .changes(Soft.KEPT.plus(early(0, 1)))
            .curedBy(renew),
        fault("leaks", "water softener leaks", 0.007)
            .wears(Wear.RUBBER)
            .changes(LeakHunt.effects())
            .makes(Symptoms.LEAKS, chance(0.1, 0.5, 0.9))
            .makes(Meaning.LEAK.symptom(), chance(0.05, 0.78, 0.9))
            .makes(Symptoms.STOPS_IN_CYCLE, 0, 0.6)
            .curedBy(renew));
  }

  private static FaultRow stuck() {
    return hard(fault("stuck", "valve of the water softener stuck", 0.01))
        .wears(Wear.DEPOSIT)
        .changes(Soft.KEPT.plus(early(0, 1)), Soft.SHUT.becomes(early(0, 1)))
        .curedBy(
            Work.renewing(
                "renew-softener-valve",
                "renew the valve of the softener",
                40,
                0.95,
                Caution.UNPLUG));
  }

  private static FaultRow hard(FaultRow row) {
    return row.makes(Symptoms.POOR_RESULT, chance(0.1, 0.7, 0.9))
        .makes(Symptoms.DISCOLOURED_WATER, 0, 0.5);
  }
}
