package kelter.hydraulics.found;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.law.Celsius;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.part.WaterSide;

/** The room that a dehumidifier stands in: below 15 °C its coil ices. */
public final class Room implements Part {

  private static final double ICES = Celsius.ZERO + 15; // K, from memory

  static final Observable TEMPERATURE =
      Observable.named("temperature", "temperature of the room")
          .quantity(QuantityKind.TEMPERATURE, Celsius.ZERO - 10, Celsius.ZERO + 45)
          .how(
              "Hold a thermometer a metre from the machine, out of its air, until it stands still.")
          .by(new Procedure("", 3, Hazard.NONE, new Accuracy(0, 0.7), List.of()));

  private static final ComponentKind KIND =
      new ComponentKind(
          "room", "room in which it stands", List.of(TEMPERATURE), List.of(), List.of());

  /** What is otherwise in the room. */
  private static final class Air {
    static final FigureSet ALL = new FigureSet("room");
    static final Figure TEMPERATURE = ALL.figure("temperature, K", Celsius.TWENTY);
  }

  private static final FaultRow TOO_COLD =
      fault("too-cold", "room too cold for it", 0.05)
          .changes(Air.TEMPERATURE.becomes(line(ICES, Celsius.ZERO + 4)))
          .makes(Symptoms.ICES_UP, chance(0.1, 0.88, 0.97))
          .makes(Symptoms.POOR_RESULT, chance(0.1, 0.78, 0.95))
          .curedBy(
              Work.byHand(
                  "warm-room", "warm the room, or set up a machine for cold rooms", 10, 0.9));

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("room-temperature", "Is the room warm enough?")
            .on(
                KIND,
                TEMPERATURE,
                Allowed.of(
                    "room of a dehumidifier",
                    Source.fromMemory("a dehumidifier ices up in rooms below 15 °C"),
                    Limits.atLeast(ICES))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component room) {
    return Optional.of(
        PartModel.of(room, KIND, WaterSide.PRIORS, Air.ALL)
            .faults(TOO_COLD)
            .looks(TEMPERATURE, Air.TEMPERATURE, Spread.constant(2.5))
            .build());
  }
}
