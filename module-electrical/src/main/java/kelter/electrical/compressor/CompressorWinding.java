package kelter.electrical.compressor;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.Course.step;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
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
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactWords;
import kelter.electrical.copper.CopperCoil;
import kelter.electrical.insulation.EarthLeak;
import kelter.electrical.insulation.InsulationRule;

/**
 * The motor of a compressor by its three terminals: common, run, start. To renew it is work on the
 * refrigerant circuit, which this toolkit leaves to others. Chances, those of symptoms too, spreads
 * and figures that a job lacks are from memory.
 */
public final class CompressorWinding implements Part {

  static final Characteristic RUN = winding("run-resistance", "run");
  static final Characteristic START = winding("start-resistance", "start");

  static final Characteristic RUN_CURRENT =
      new Characteristic(
              "run-current", "current of the machine while it runs", QuantityKind.CURRENT)
          .within(new Span(0.05, 100));

  static final Observable RUN_RESISTANCE =
      resistance("run-resistance", "resistance of the run winding", "common to run");

  static final Observable START_RESISTANCE =
      resistance("start-resistance", "resistance of the start winding", "common to start");

  static final Observable ENDS_RESISTANCE =
      resistance("end-to-end-resistance", "resistance from run to start", "run to start");

  static final Observable INSULATION =
      Observable.named("insulation-resistance", "insulation resistance to its shell")
          .logarithmic(QuantityKind.INSULATION_RESISTANCE, Electrical.INSULATION)
          .how(
              "Pull relay and overload off. Measure with 500 V from a terminal to bare copper pipe,"
                  + " one minute.")
          .by(Electrical.insulation());

  static final Observable CURRENT =
      Observable.named("current", "current at the plug two seconds after it should start")
          .quantity(QuantityKind.CURRENT, 0, 100)
          .how("Plug-in meter. Let it rest for ten minutes, switch on, and read after two seconds.")
          .by(Electrical.running(12, new Accuracy(0.02, 0.02)));

  static final Observable HUMS =
      Observable.named("hums-and-clicks", "it hums for some seconds, clicks off, and tries again")
          .asked(5, "Listen at the back of the closed machine while it should start.");

  static final ComponentKind COMPRESSOR_WINDING =
      new ComponentKind(
          "compressor-winding",
          "motor of the compressor",
          List.of(HUMS, RUN_RESISTANCE, START_RESISTANCE, ENDS_RESISTANCE, INSULATION, CURRENT),
          List.of(RUN, START, RUN_CURRENT),
          List.of());

  /** Taken where a job does not state them, Ohm. */
  private static final double USUAL_RUN = 12;

  private static final double USUAL_START = 20;

  private static final Spread<Object> OF_ANY = Spread.constant(0.8);

  private static final Spread<Object> OF_KIND = Spread.constant(0.06);

  /** What a rotor that stands draws, as a ratio of the running current. */
  private static final double LOCKED = 6;

  private static Characteristic winding(String id, String name) {
    return new Characteristic(
            id, "resistance of the " + name + " winding at 20 °C", QuantityKind.RESISTANCE)
        .within(new Span(0.05, 1e4));
  }

  private static Observable resistance(String id, String title, String between) {
    return Observable.named(id, title)
        .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
        .provingFrom(ContactWords.OPEN)
        .at(Electrical.TEMPERATURE)
        .how("Pull relay and overload off its terminals. Measure " + between + ", leads nulled.")
        .by(
            Electrical.dead(
                5,
                Electrical.OHMMETER,
                ElectricalCautions.CHARGED_CAPACITOR,
                ElectricalCautions.REFRIGERANT));
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(COMPRESSOR_WINDING);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("compressor-sum", "Do the windings of the compressor add up?")
            .on(COMPRESSOR_WINDING, ENDS_RESISTANCE, CompressorChecks::sum),
        LimitCheck.named("compressor-insulation", "Does the compressor leak to earth?")
            .on(COMPRESSOR_WINDING, INSULATION, new InsulationRule(false)));
  }

  private static List<FaultRow> faults() {
    Work renew =
        Work.renewing(
            "renew-compressor",
            "renew the compressor, work for people licensed for refrigerant",
            180,
            0.9,
            Caution.UNPLUG,
            ElectricalCautions.REFRIGERANT);
    return List.of(
        fault("shorted", "turns shorted in the compressor", 0.005)
            .wears(Wear.WINDING)
            .changes(
                CompressorFigure.RUN.times(line(0.85, 0.3)),
                CompressorFigure.CURRENT.becomes(line(2, LOCKED)),
                CompressorFigure.HUMS.becomes(0.5))
            .makes(Symptoms.TOO_WARM_INSIDE, 0.95)
            .makes(Symptoms.TRIPS_BREAKER, 0.4, 0.9)
            .makes(Symptoms.HUMS_ONLY, 0.5)
            .makes(Symptoms.SHORT_CYCLES, 0.5)
            .curedBy(renew),
        fault("open", "winding of the compressor open", 0.006)
            .wears(Wear.WINDING)
            .apartFrom("shorted")
            .changes(
                CompressorFigure.RUN.becomes(step(CopperCoil.OPEN, 1)),
                CompressorFigure.START.becomes(step(1, CopperCoil.OPEN)),
                CompressorFigure.CURRENT.becomes(step(0.3, LOCKED)),
                CompressorFigure.HUMS.becomes(step(0.1, 0.8)))
            .makes(Symptoms.TOO_WARM_INSIDE, 0.95)
            .makes(Symptoms.HUMS_ONLY, step(0.1, 0.8))
            .makes(Symptoms.SHORT_CYCLES, step(0.05, 0.5))
            .curedBy(renew),
        fault("seized", "compressor seized", 0.006)
            .wears(Wear.BEARING)
            .changes(CompressorFigure.CURRENT.atLeast(LOCKED), CompressorFigure.HUMS.becomes(0.92))
            .makes(Symptoms.TOO_WARM_INSIDE, 0.95)
            .makes(Symptoms.HUMS_ONLY, 0.9)
            .makes(Symptoms.SHORT_CYCLES, 0.7)
            .makes(Symptoms.TRIPS_BREAKER, 0.2)
            .curedBy(renew),
        fault("to-earth", "winding of the compressor to earth", 0.004)
            .wears(Wear.WINDING)
            .changes(CompressorFigure.LEAK.plus(EarthLeak.CONDUCTANCE))
            .makes(Symptoms.TRIPS_RCD, EarthLeak.TRIPS)
            .makes(Symptoms.TOO_WARM_INSIDE, 0.9)
            .makes(Symptoms.TRIPS_BREAKER, 0, 0.6)
            .curedBy(renew));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component compressor) {
    CopperCoil run = new CopperCoil(compressor.si(RUN, USUAL_RUN), CompressorFigure.RUN);
    CopperCoil start = new CopperCoil(compressor.si(START, USUAL_START), CompressorFigure.START);
    boolean stated = compressor.si(RUN) > 0 && compressor.si(START) > 0;
    Spread<Object> spread = stated ? OF_KIND : OF_ANY;
    PartModel model =
        PartModel.of(compressor, COMPRESSOR_WINDING, Electrical.PRIORS, CompressorFigure.ALL)
            .faults(faults())
            .looks(HUMS, CompressorFigure.HUMS)
            .looks(
                INSULATION,
                state -> EarthLeak.insulation(state.of(CompressorFigure.LEAK)),
                EarthLeak.SPREAD);
    model.under(run).observe(RUN_RESISTANCE, Double::doubleValue, spread);
    model.under(start).observe(START_RESISTANCE, Double::doubleValue, spread);
    model.under(new EndToEnd(run, start)).observe(ENDS_RESISTANCE, Double::doubleValue, spread);
    double current = compressor.si(RUN_CURRENT);
    if (current > 0) {
      model.looks(
          CURRENT, CompressorFigure.CURRENT.of(current), Spread.relative(0.25).atLeast(0.05));
    }
    return Optional.of(model.build());
  }
}
