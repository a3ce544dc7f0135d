package kelter.electrical.control;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.RatedRange;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;

/**
 * A control board, told by its outputs and inputs: a load that measures right and does nothing
 * while it is called for speaks against the board. Chances and spreads are from memory.
 */
public final class ControlBoard implements Part {

  /** From what an ordinary meter just tells to the highest mains, V. */
  private static final Span VOLTS = new Span(1, 500);

  /** The mains where no nameplate tells them, V; from memory. */
  private static final double USUAL_MAINS = 230;

  static final Observable DARK =
      Observable.named("dark", "no sign of life although supply reaches it")
          .how(
              "Measure the way from the plug to the board dead first: it must conduct. Then close the"
                  + " machine, plug it in and look: no display, no lamp, no click of a relay?")
          .by(Electrical.running(6, Electrical.BY_EYE));

  static final Observable BUTTONS =
      Observable.named("buttons-dead", "how many of its buttons do nothing")
          .graded("none", "one", "some", "all")
          .asked(3, "Try each button and each setting of the knob, child lock off.");

  static final Observable IGNORED =
      Observable.named("load-ignored", "a load that measures right stays dead while called for")
          .how(
              "Measure the load dead first. Then close the machine and start the test programme or a"
                  + " short one: does the load act, and does a power meter at the plug rise?")
          .by(Electrical.running(8, Electrical.BY_EYE));

  static final Observable STAYS_ON =
      Observable.named("load-stays-on", "a load runs although nothing calls for it")
          .how(
              "Plug in, start nothing, look and listen. A power meter at the plug should show a few"
                  + " watts at most.")
          .by(Electrical.running(3, Electrical.BY_EYE));

  static final Observable ACROSS =
      Observable.named("output-resistance", "resistance across the output of a load, board off")
          .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
          .how(
              "Pull the plug of the load off the board. Measure between its pin and the line that"
                  + " feeds it, both ways round.")
          .by(Electrical.dead(6, Electrical.OHMMETER, ElectricalCautions.CHARGED_CAPACITOR));

  static final Observable BURNS =
      Observable.named("burns", "burnt look of tracks, solder joints and parts")
          .graded("none", "dark", "brown", "charred")
          .how("Look at both sides of the board with a lens, at relays and connectors first.")
          .by(Electrical.inside(8, ElectricalCautions.CHARGED_CAPACITOR));

  static final Observable VOLTAGE =
      Observable.named("load-voltage", "voltage at a load while it is called for")
          .logarithmic(QuantityKind.VOLTAGE, VOLTS)
          .how(
              "Clips on the terminals of the load, its wires left on. Start what calls for it and"
                  + " read.")
          .by(Electrical.live(10, Electrical.VOLTMETER));

  static final Observable NO_DEFROST =
      Observable.named("defrost-ignored", "a forced defrost heats nothing")
          .how(
              "Measure the defrost heater dead first. Then close the machine, force a defrost and"
                  + " watch a power meter at the plug.")
          .by(Electrical.running(10, Electrical.BY_EYE));

  static final ComponentKind BOARD =
      new ComponentKind(
          "control-board",
          "control board",
          List.of(DARK, BUTTONS, IGNORED, STAYS_ON, ACROSS, BURNS, VOLTAGE, NO_DEFROST),
          List.of(),
          List.of());

  /** A snubber across an output may conduct a little; common practice, no source. */
  private static final double OFF = 1e5;

  private static final Source OFF_SOURCE =
      Source.commonPractice("an output that is off has more than 100 kohm, snubber included");

  /** Parts that only machines have which defrost. */
  private static final List<String> OF_DEFROST =
      List.of("defrost-sensor", "defrost-timer", "evaporator");

  @Override
  public List<ComponentKind> kinds() {
    return List.of(BOARD);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("board-output-off", "Is the output of the board open while it is off?")
            .on(
                BOARD,
                ACROSS,
                Allowed.of(
                        "resistance across an output that is off", OFF_SOURCE, Limits.atLeast(OFF))
                    .butIfNot(ElectricalCautions.SWITCHES_BY_ITSELF)));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component board) {
    double mains = mains(appliance);
    PartModel model =
        PartModel.of(board, BOARD, Electrical.PRIORS, BoardFigure.ALL)
            .faults(BoardFaults.all())
            .looks(DARK, BoardFigure.DARK)
            .looks(BUTTONS, BoardFigure.BUTTONS)
            .looks(IGNORED, BoardFigure.IGNORED)
            .looks(STAYS_ON, BoardFigure.STAYS_ON)
            .looks(ACROSS, BoardFigure.ACROSS, Spread.constant(0.9))
            .looks(BURNS, BoardFigure.BURNS)
            .looks(VOLTAGE, BoardFigure.OUTPUT.of(mains), Spread.constant(0.5));
    if (defrosts(appliance)) {
      model.faults(BoardFaults.defrostDead()).looks(NO_DEFROST, BoardFigure.NO_DEFROST);
    }
    return Optional.of(model.build());
  }

  private static double mains(Appliance appliance) {
    Optional<RatedRange> rated = appliance.nameplate().voltage();
    return rated.isPresent() ? (rated.get().low().si() + rated.get().high().si()) / 2 : USUAL_MAINS;
  }

  private static boolean defrosts(Appliance appliance) {
    for (String kind : OF_DEFROST) {
      if (!appliance.componentsOf(kind).isEmpty()) {
        return true;
      }
    }
    return false;
  }
}
