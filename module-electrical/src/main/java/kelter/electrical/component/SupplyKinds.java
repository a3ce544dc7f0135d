package kelter.electrical.component;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;

/** The supply and the cord. */
public final class SupplyKinds {

  /** The length of the cord. */
  public static final Characteristic LENGTH =
      new Characteristic("length", "length of the cord", QuantityKind.HEAD);

  /** The section of its conductors. */
  public static final Characteristic SECTION =
      new Characteristic("section", "section of its conductors", QuantityKind.AREA);

  /** What local code allows the protective conductor, in place of the limit built in. */
  public static final Characteristic EARTH_LIMIT =
      new Characteristic(
          "protective-conductor-limit",
          "greatest resistance of the protective conductor by local code",
          QuantityKind.RESISTANCE);

  /** What local code asks of the insulation, in place of the limit built in. */
  public static final Characteristic INSULATION_LIMIT =
      new Characteristic(
          "insulation-limit",
          "least insulation resistance by local code",
          QuantityKind.INSULATION_RESISTANCE);

  /** The current that is drawn meanwhile. */
  public static final Characteristic CURRENT =
      new Characteristic("current", "current that is drawn", QuantityKind.CURRENT);

  /** Resistance of the earth path. */
  public static final Observable PROTECTIVE_CONDUCTOR =
      Observable.logarithmic(
          "protective-conductor-resistance",
          "resistance from the earth contact of the plug to touchable metal",
          QuantityKind.RESISTANCE,
          Electrical.LOW_RESISTANCE,
          List.of(Electrical.TEMPERATURE),
          Electrical.dead(
              "Null the leads, measure from the earth contact of the plug to bare touchable metal,"
                  + " and bend the cord along its length meanwhile.",
              4,
              Electrical.LOW_OHMMETER));

  /** Insulation of the whole appliance. */
  public static final Observable APPLIANCE_INSULATION =
      Observable.logarithmic(
          "insulation-resistance",
          "insulation resistance of the whole appliance at its plug",
          QuantityKind.INSULATION_RESISTANCE,
          Electrical.INSULATION,
          List.of(),
          Electrical.insulation(
              "Switch the appliance on, plug out, and measure with 500 V from both live pins together"
                  + " to the earth contact. Parts behind a relay are not reached: measure them by"
                  + " themselves."));

  /** How burnt the plug looks. */
  public static final Observable PLUG_BURNS =
      Observable.graded(
          "plug-burns",
          "burnt look of plug, cord entry and terminals",
          List.of("none", "dark", "brown", "charred"),
          Electrical.inside("Pull the plug and look at its pins, then at the cord terminals.", 3));

  /** Voltage with nothing switched on. */
  public static final Observable IDLE =
      Observable.quantity(
          "voltage-idle",
          "voltage with nothing switched on",
          QuantityKind.VOLTAGE,
          new Span(0, 500),
          List.of(),
          Electrical.live(
              "Read at the outlet through a measuring adapter.", 4, Electrical.VOLTMETER));

  /** Voltage while the machine heats. */
  public static final Observable LOADED =
      Observable.quantity(
          "voltage-loaded",
          "voltage while the machine heats",
          QuantityKind.VOLTAGE,
          new Span(0, 500),
          List.of(CURRENT),
          Electrical.live(
              "Read at the outlet through a measuring adapter while the machine heats.",
              6,
              Electrical.VOLTMETER));

  /** The cord with its plug. */
  public static final ComponentKind CORD =
      new ComponentKind(
          "supply-cord",
          "supply cord",
          List.of(PROTECTIVE_CONDUCTOR, APPLIANCE_INSULATION, PLUG_BURNS),
          List.of(LENGTH, SECTION, EARTH_LIMIT, INSULATION_LIMIT),
          List.of());

  /** The outlet and what is behind it; mended by a licensed electrician only. */
  public static final ComponentKind SUPPLY =
      new ComponentKind(
          "supply", "supply at the outlet", List.of(IDLE, LOADED), List.of(), List.of());

  static final List<ComponentKind> ALL = List.of(CORD, SUPPLY);

  private SupplyKinds() {}
}
