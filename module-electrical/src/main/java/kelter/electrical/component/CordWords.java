package kelter.electrical.component;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.electrical.caution.ElectricalCautions;

/** The supply cord, of which several parts speak. */
public final class CordWords {

  /** The length of the cord. */
  public static final Characteristic LENGTH =
      new Characteristic("length", "length of the cord", QuantityKind.DISTANCE)
          .within(new Span(0.01, 1000));

  /** The section of its conductors. */
  public static final Characteristic SECTION =
      new Characteristic("section", "section of its conductors", QuantityKind.AREA)
          .within(new Span(5e-8, 4e-4));

  /** What local code allows the protective conductor, in place of the limit built in. */
  public static final Characteristic EARTH_LIMIT =
      new Characteristic(
              "protective-conductor-limit",
              "greatest resistance of the protective conductor by local code",
              QuantityKind.RESISTANCE)
          .within(new Span(1e-3, 1e3));

  /** What local code asks of the insulation, in place of the limit built in. */
  public static final Characteristic INSULATION_LIMIT =
      new Characteristic(
              "insulation-limit",
              "least insulation resistance by local code",
              QuantityKind.INSULATION_RESISTANCE)
          .within(new Span(1e3, 1e12));

  /** Resistance of the earth path. */
  public static final Observable PROTECTIVE_CONDUCTOR =
      Observable.named(
              "protective-conductor-resistance",
              "resistance from the earth contact of the plug to touchable metal")
          .logarithmic(QuantityKind.RESISTANCE, Electrical.LOW_RESISTANCE)
          .provingFrom(0.5)
          .at(Electrical.TEMPERATURE)
          .how(
              "Low-resistance tester (IEC 61557-4). Null the leads, measure from the earth contact of the plug to bare touchable metal,"
                  + " and bend the cord along its length meanwhile.")
          .by(Electrical.dead(4, Electrical.LOW_OHMMETER));

  /** Insulation of the whole appliance. */
  public static final Observable APPLIANCE_INSULATION =
      Observable.named(
              "insulation-resistance", "insulation resistance of the whole appliance at its plug")
          .logarithmic(QuantityKind.INSULATION_RESISTANCE, Electrical.INSULATION)
          .at(Electrical.TEMPERATURE)
          .how(
              "Switch the appliance on, plug out, and measure with 500 V from both live pins together"
                  + " to the earth contact; of class II, which has none, to bare touchable metal or foil"
                  + " pressed on the case. Parts behind a relay are not reached: measure them by"
                  + " themselves.")
          .by(Electrical.insulation());

  /** What local code allows the protective conductor to carry. */
  public static final Characteristic CONDUCTOR_CURRENT_LIMIT =
      new Characteristic(
              "protective-conductor-current-limit",
              "greatest current in the protective conductor by local code",
              QuantityKind.CURRENT)
          .within(new Span(1e-6, 1));

  /** What local code allows a person to carry who touches metal. */
  public static final Characteristic TOUCH_CURRENT_LIMIT =
      new Characteristic(
              "touch-current-limit", "greatest touch current by local code", QuantityKind.CURRENT)
          .within(new Span(1e-6, 1));

  /** Current in the protective conductor. */
  public static final Observable CONDUCTOR_CURRENT =
      Observable.named(
              "protective-conductor-current", "current in the protective conductor while it works")
          .quantity(QuantityKind.CURRENT, 0, 1)
          .how(
              "Appliance tester or leakage clamp (IEC 61557-13) at a measuring adapter, while it"
                  + " heats; with the plug both ways round where it can be.")
          .by(leakage());

  /** Current through a person who touches metal. */
  public static final Observable TOUCH_CURRENT =
      Observable.named("touch-current", "touch current at metal that is not earthed")
          .quantity(QuantityKind.CURRENT, 0, 1)
          .how(
              "Appliance tester with its probe on touchable metal, while it works; with the plug"
                  + " both ways round where it can be.")
          .by(leakage());

  /** What is lost along the cord under load. */
  public static final Observable VOLTAGE_DROP =
      Observable.named(
              "voltage-drop",
              "voltage along one conductor from the outlet to the machine while it heats")
          .logarithmic(QuantityKind.VOLTAGE, Electrical.DROP)
          .at(Electrical.CURRENT)
          .how(
              "Measuring adapter in the outlet: clip from its phase contact to the same conductor at"
                  + " the terminals inside, meter on a range that bears the mains; let the machine heat"
                  + " and read. The same for neutral; write the higher one.")
          .by(Electrical.live(12, Electrical.DROP_METER, ElectricalCautions.FIXED_WIRING));

  /** Whether plug or cord get hot. */
  public static final Observable PLUG_HOT =
      Observable.named("plug-hot", "plug or cord get hot, or smell of hot plastic")
          .proving()
          .asked(1, "Ask whether the plug was ever too hot to hold, or smelt. Warm is no sign.");

  /** How burnt the plug looks. */
  public static final Observable PLUG_BURNS =
      Observable.named("plug-burns", "burnt look of plug, cord entry and terminals")
          .graded("none", "dark", "brown", "charred")
          .how("Pull the plug and look at its pins, then at the cord terminals.")
          .by(Electrical.inside(3));

  /** What a live conductor has from plug to machine. */
  public static final Observable LIVE_CONDUCTOR =
      Observable.named(
              "conductor-resistance",
              "highest resistance of a live conductor from the plug to the machine")
          .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
          .provingFrom(1)
          .how(
              "Measure from each live pin of the plug to its terminal inside. Bend the cord along its"
                  + " length, most of all at plug and entry, and write the highest.")
          .by(Electrical.dead(4, Electrical.OHMMETER));

  /** Whether the machine goes off and on as the cord moves. */
  public static final Observable DROPS_OUT =
      Observable.named("drops-out", "it goes off and on when the cord is moved")
          .proving()
          .asked(1, "Ask, and do not try it: a cord that drops out may be bare inside.");

  /** The cord with its plug. */
  public static final ComponentKind CORD =
      new ComponentKind(
          "supply-cord",
          "supply cord",
          List.of(
              PROTECTIVE_CONDUCTOR,
              APPLIANCE_INSULATION,
              CONDUCTOR_CURRENT,
              TOUCH_CURRENT,
              VOLTAGE_DROP,
              PLUG_BURNS,
              PLUG_HOT,
              LIVE_CONDUCTOR,
              DROPS_OUT),
          List.of(
              LENGTH,
              SECTION,
              EARTH_LIMIT,
              INSULATION_LIMIT,
              CONDUCTOR_CURRENT_LIMIT,
              TOUCH_CURRENT_LIMIT),
          List.of());

  private CordWords() {}

  private static Procedure leakage() {
    return Electrical.running(6, Electrical.LEAKAGE_TESTER, ElectricalCautions.LEAKING_MACHINE);
  }
}
