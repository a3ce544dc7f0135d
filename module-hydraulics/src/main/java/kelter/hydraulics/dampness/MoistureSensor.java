package kelter.hydraulics.dampness;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.power;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
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
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.part.WaterSide;

/**
 * Moisture bars with their wires, all read at the plug of the control. Film and cloth lie in series
 * between the bars, a broken wire in series with all, a shorted one beside all. Resistances are
 * from memory; half of the broken wires are open, half shorted.
 */
public final class MoistureSensor implements Part {

  private static final Source SOURCE =
      Source.fromMemory(
          "across the bars: wet cloth less than 100 kohm, dry more than 5 Mohm, a wire less than 10"
              + " ohm");

  static final Observable WET_CLOTH =
      resistance("wet-resistance", "resistance with a wet cloth on the bars")
          .how("Unplug its wires from the control. Lay a wet cloth over both bars and measure.")
          .by(Procedure.dead(5, new Accuracy(0.02, 0.5)));

  static final Observable JOINED =
      resistance("joined-resistance", "resistance with the bars joined by a wire")
          .provingFrom(1e6)
          .how(
              "Unplug its wires from the control. Press the bare ends of a wire hard on both bars and"
                  + " measure.")
          .by(Procedure.dead(4, new Accuracy(0.02, 0.5)));

  static final Observable DRY =
      resistance("dry-resistance", "resistance with nothing on the bars")
          .how("Unplug its wires from the control. Dry the bars and measure.")
          .by(Procedure.dead(3, new Accuracy(0.02, 0.5)));

  private static final ComponentKind KIND =
      new ComponentKind(
          "moisture-sensor",
          "moisture sensor",
          List.of(WET_CLOTH, JOINED, DRY),
          List.of(),
          List.of());

  private static final double CLOTH = 20e3; // Ohm
  private static final double FILM = 20e3; // Ohm, of one that just begins
  private static final double OPEN = 5e7; // Ohm
  private static final double CONTACT = 1; // Ohm, a wire pressed through the film

  /** What faults change. */
  private static final class Bars {
    static final FigureSet ALL = new FigureSet("moisture-sensor");
    static final Figure FILM = ALL.figure("film on the bars, Ohm", 0);
    static final Figure SERIES = ALL.figure("what lies in series in the wires, Ohm", 0.5);
    static final Figure BESIDE = ALL.figure("what lies beside the bars, Ohm", OPEN);
  }

  /** A wire that is broken in milder cases, shorted in worse ones. */
  private enum Wire implements Course {
    SERIES {
      @Override
      public double at(double severity) {
        return severity < SHORTED ? OPEN : 0.5;
      }
    },
    BESIDE {
      @Override
      public double at(double severity) {
        return severity < SHORTED ? OPEN : 1;
      }
    };

    private static final double SHORTED = 0.5;
  }

  private static final Work CLEAN =
      Work.byHand("clean-moisture-bars", "clean the bars with vinegar", 8, 0.9, Caution.UNPLUG);

  private static final Work REPAIR =
      Work.withPart(
          "renew-moisture-wire", "renew wire or plug of the sensor", 25, 0.9, Caution.UNPLUG);

  private static final FaultRow FILMED =
      fault("filmed", "film on the moisture sensor", 0.035)
          .wears(Wear.DEPOSIT)
          .changes(Bars.FILM.becomes(power(FILM, 500)))
          .makes(Symptoms.POOR_RESULT, chance(0.05, 0.65, 0.95))
          .makes(Symptoms.DOES_NOT_DRY, chance(0.05, 0.6, 0.95))
          .makes(Symptoms.STOPS_IN_CYCLE, chance(0.05, 0.5, 0.9))
          .makes(Symptoms.RUNS_WITHOUT_END, chance(0.05, 0.22, 0.3))
          .curedBy(CLEAN);

  private static final FaultRow BROKEN =
      fault("broken", "wire of the moisture sensor broken or shorted", 0.01)
          .wears(Wear.WIRE)
          .changes(Bars.SERIES.becomes(Wire.SERIES), Bars.BESIDE.becomes(Wire.BESIDE))
          .makes(Symptoms.POOR_RESULT, 0.4)
          .makes(Symptoms.DOES_NOT_DRY, 0.3)
          .makes(Symptoms.STOPS_IN_CYCLE, 0.25)
          .makes(Symptoms.RUNS_WITHOUT_END, 0.65)
          .curedBy(REPAIR);

  private static Observable.Draft resistance(String id, String title) {
    return Observable.named(id, title).logarithmic(QuantityKind.RESISTANCE, new Span(0.5, 1e8));
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("moisture-wet", "Do the bars feel a wet cloth?")
            .on(KIND, WET_CLOTH, m -> allowed("bars with a wet cloth", Limits.atMost(100e3))),
        LimitCheck.named("moisture-joined", "Are the wires of the moisture sensor whole?")
            .on(KIND, JOINED, m -> allowed("bars joined by a wire", Limits.atMost(10))),
        LimitCheck.named("moisture-dry", "Are the dry bars apart?")
            .on(KIND, DRY, m -> allowed("dry bars", Limits.atLeast(5e6))));
  }

  private static Optional<Allowed> allowed(String title, Limits limits) {
    return Optional.of(Allowed.of(title, SOURCE, limits));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component sensor) {
    return Optional.of(
        PartModel.of(sensor, KIND, WaterSide.PRIORS, Bars.ALL)
            .faults(FILMED, BROKEN)
            .looks(WET_CLOTH, s -> atPlug(s, CLOTH + s.of(Bars.FILM)), Spread.constant(0.6))
            .looks(JOINED, s -> atPlug(s, CONTACT), Spread.constant(0.5))
            .looks(DRY, s -> atPlug(s, OPEN), Spread.constant(0.5))
            .build());
  }

  /** Resistance at the plug with something across the bars, Ohm. */
  private static double atPlug(State state, double across) {
    double beside = state.of(Bars.BESIDE);
    return state.of(Bars.SERIES) + across * beside / (across + beside);
  }
}
