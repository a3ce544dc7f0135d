package kelter.hydraulics.brew;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.part.WaterSide;

/** The words for the way of the brewing water. */
final class BrewWords {

  static final double ML_PER_MIN = 1e-6 / 60; // m3/s
  static final double BAR = 1e5; // Pa

  private static final Accuracy GAUGE = new Accuracy(0.025, 0.2 * BAR);

  static final Characteristic FREE_FLOW_FIGURE =
      new Characteristic("free-flow", "flow rate of the pump without pressure", QuantityKind.FLOW)
          .within(new Span(ML_PER_MIN, 1e-3));

  static final Characteristic DEAD_PRESSURE =
      new Characteristic(
              "dead-pressure", "pressure of the pump without flow", QuantityKind.GAUGE_PRESSURE)
          .within(new Span(BAR, 50 * BAR));

  static final Characteristic SET_PRESSURE =
      new Characteristic(
              "set-pressure", "pressure at which the valve opens", QuantityKind.GAUGE_PRESSURE)
          .within(new Span(BAR, 50 * BAR));

  static final Observable FREE_FLOW =
      Observable.named("free-flow", "flow rate of the pump without pressure")
          .quantity(QuantityKind.FLOW, 0, 2000 * ML_PER_MIN)
          .how("Machine cold. Let it pump from the wide open hot-water outlet or wand for 30 s.")
          .by(WaterSide.caught(4));

  static final Observable BLIND_PRESSURE =
      Observable.named("blind-pressure", "pressure at the brew head against a blind gauge")
          .quantity(QuantityKind.GAUGE_PRESSURE, 0, 25 * BAR)
          .how("Lock a portafilter with a gauge in, brew for 10 s, and read where it settles.")
          .by(
              Procedure.running(
                  5, GAUGE, Caution.HOT_WATER, HydraulicCautions.PORTAFILTER_PRESSURE));

  static final Observable SOUND =
      Observable.named("sound", "sound of the pump")
          .graded("silent", "hums", "as usual", "rattles loud")
          .how("Listen while it should pump, with water in the tank.")
          .by(WaterSide.running(2));

  static final Observable COIL_OPEN =
      Observable.named("coil-open", "the coil conducts in neither direction")
          .how(
              "Take one wire off and measure the coil, then with the leads the other way round: it has a"
                  + " diode, so that one direction is enough.")
          .by(WaterSide.behindCovers(4));

  static final Observable PRIMES =
      Observable.named("pumps-once-primed", "it pumps only once water was pushed into it")
          .how("Push water into the intake of the tank with a syringe, then brew.")
          .by(WaterSide.running(5));

  static final Observable TANK_VALVE =
      Observable.named("passage", "what the valve of the tank lets through")
          .graded("free", "slow", "blocked")
          .asked(2, "Lift the tank over a sink and push its valve in with a finger.");

  static final Observable OPENS_AT =
      Observable.named("opens-at", "pressure at which it opens")
          .quantity(QuantityKind.GAUGE_PRESSURE, 0, 25 * BAR)
          .how(
              "Blind gauge at the brew head, return hose of the valve in a beaker: read the gauge when"
                  + " water begins to run from the hose.")
          .by(
              Procedure.running(
                  8, GAUGE, Caution.HOT_WATER, HydraulicCautions.PORTAFILTER_PRESSURE));

  static final Observable RETURNS =
      Observable.named("runs-back", "water runs back into the tank all through a usual shot")
          .how("Look at the return into the tank while a usual shot is drawn.")
          .by(WaterSide.running(3));

  static final Observable JET =
      Observable.named("jet", "the brew jet or the hot-water valve")
          .graded("clean", "partly", "blocked")
          .how("Unscrew the jet and hold it against the light.")
          .by(WaterSide.behindCovers(8));

  static final Observable SCREEN =
      Observable.named("screen", "the screen of the group")
          .graded("clean", "partly", "clogged")
          .asked(3, "Machine cold. Unscrew the screen and hold it against the light.");

  static final Observable WITH_SCREEN =
      Observable.named("flow-with", "flow rate at the group with the screen in")
          .quantity(QuantityKind.FLOW, 0, 2000 * ML_PER_MIN)
          .how("Without a portafilter, let it pump through the group for 30 s.")
          .by(WaterSide.caught(3));

  static final Observable WITHOUT_SCREEN =
      Observable.named("flow-without", "flow rate at the group with the screen out")
          .quantity(QuantityKind.FLOW, 0, 2000 * ML_PER_MIN)
          .how("Machine cold. Unscrew the screen and let it pump through the group for 30 s.")
          .by(WaterSide.caught(5));

  static final Observable EXHAUST =
      Observable.named("exhaust-runs", "water runs from its exhaust while it brews")
          .how("Look at the exhaust over the tray while a usual shot is drawn.")
          .by(WaterSide.running(3));

  static final ComponentKind PUMP =
      new ComponentKind(
          "brew-pump",
          "brew pump",
          List.of(FREE_FLOW, BLIND_PRESSURE, SOUND, PRIMES, COIL_OPEN),
          List.of(FREE_FLOW_FIGURE, DEAD_PRESSURE),
          List.of());

  static final ComponentKind TANK_VALVE_KIND = kind("tank-valve", "tank valve", TANK_VALVE);

  static final ComponentKind OVER_PRESSURE =
      new ComponentKind(
          "over-pressure-valve",
          "over-pressure valve",
          List.of(OPENS_AT, RETURNS),
          List.of(SET_PRESSURE),
          List.of());

  static final ComponentKind JET_KIND = kind("jet", "brew jet", JET);

  static final ComponentKind SCREEN_KIND =
      kind("group-screen", "group screen", SCREEN, WITH_SCREEN, WITHOUT_SCREEN);

  static final ComponentKind THREE_WAY = kind("three-way-valve", "three-way valve", EXHAUST);

  private BrewWords() {}

  private static ComponentKind kind(String id, String title, Observable... observables) {
    return new ComponentKind(id, title, List.of(observables), List.of(), List.of());
  }
}
