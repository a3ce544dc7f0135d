package kelter.electrical.supplycord;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.RatedRange;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.safety.ProtectionClass;
import kelter.core.source.Source;
import kelter.core.vocabulary.Characteristic;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.CordWords;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.SoundJoint;
import kelter.electrical.heating.Heater;
import kelter.electrical.insulation.InsulationRule;
import kelter.electrical.protection.LeakageLimit;
import kelter.electrical.protection.NorthAmericanLimit;
import kelter.electrical.protection.NorthAmericanLimit.Build;
import kelter.electrical.protection.ProtectiveConductorLimit;
import kelter.electrical.rating.CordConductor;
import kelter.electrical.rating.NorthAmerica;

/**
 * What the whole appliance may have at its plug: insulation, protective conductor, what flows in it
 * and through a person who touches metal, and what is lost along the cord under load. Local code
 * stated with the cord comes first, then on North American supplies the type test, then the limits
 * after repair; heaters widen some of them.
 */
final class CordChecks {

  /** Length and section where the job states none: the shortest row of the limit. */
  private static final double SHORT_CORD = 5;

  private static final double USUAL_SECTION = 1.5e-6;

  /** A conductor of 1.5 mm², Ohm/m: 13.3 Ohm/km, IEC 60228, Table 3. */
  private static final double USUAL_PER_METRE = 0.0133;

  private static final Source DROP =
      Source.commonPractice(
          SoundJoint.SOURCE.document()
              + "; the cord at most what IEC 60228 allows its conductor at 70 °C");

  private static final String OR_TWO_WIRE =
      ", and that of two-wire ones, because the job does not state the protection class: two prongs"
          + " and a double square on the nameplate mean class II";

  private static final Source LIVE =
      Source.commonPractice(
          "a live conductor has what IEC 60228 allows it and 0.5 ohm at its ends");

  /** What plug, terminals and joints have at most beside the conductor, Ohm; from memory. */
  private static final double CONTACTS = 0.1;

  private static final Source THICKER =
      Source.fromMemory(
          "EN 50678:2020 and EN 50699:2020, protective conductor resistance; conductor by IEC"
              + " 60228");

  private CordChecks() {}

  /** A conductor, Ohm/m, by what one of 1.5 mm² has. */
  private static double perMetre(double section) {
    return USUAL_PER_METRE * USUAL_SECTION / section;
  }

  static Optional<Allowed> liveConductor(Measured measured) {
    double most = conductor(measured.component()) + 0.5;
    return Optional.of(
        Allowed.of("resistance of a live conductor, bent", LIVE, Limits.atMost(most))
            .resting("test leads taken off")
            .butIfNot(ElectricalCautions.BROKEN_CORD));
  }

  /**
   * One conductor, Ohm at 20 °C; of a short usual cord where the table has none for its figures.
   */
  static double conductor(Component cord) {
    try {
      return CordConductor.cold(cord, SHORT_CORD);
    } catch (IllegalArgumentException notInTheTable) {
      return SHORT_CORD * USUAL_PER_METRE;
    }
  }

  static Optional<Allowed> insulation(Measured measured) {
    Optional<Quantity> local = measured.component().figure(CordWords.INSULATION_LIMIT);
    return local.isPresent()
        ? Optional.of(
            byLocalCode(measured, "insulation resistance", Limits.atLeast(local.get().si()))
                .butIfNot(ElectricalCautions.FAILED_INSULATION))
        : new InsulationRule(Heater.isIn(measured.appliance())).allowed(measured);
  }

  static Optional<Allowed> protectiveConductor(Measured measured) {
    Optional<Quantity> local = measured.component().figure(CordWords.EARTH_LIMIT);
    Optional<Allowed> allowed =
        local.isPresent()
            ? Optional.of(
                byLocalCode(measured, "protective conductor", Limits.atMost(local.get().si())))
            : ofConductor(measured);
    return allowed.isPresent()
        ? Optional.of(allowed.get().butIfNot(ElectricalCautions.NO_PROTECTIVE_CONDUCTOR))
        : allowed;
  }

  private static Optional<Allowed> ofConductor(Measured measured) {
    if (NorthAmerica.supplies(measured.appliance().nameplate())) {
      return Optional.of(
          Allowed.of(
                  "grounding path against the North American type test",
                  NorthAmericanLimit.BONDING_SOURCE,
                  Limits.atMost(NorthAmericanLimit.bonding()))
              .resting("the cord counts in, which is the stricter reading"));
    }
    Component cord = measured.component();
    double length = cord.si(CordWords.LENGTH, SHORT_CORD);
    double section = cord.si(CordWords.SECTION, USUAL_SECTION);
    String title = "protective conductor against length of cord";
    if (length > 0 && section > USUAL_SECTION) {
      return Optional.of(ofThicker(title, cord, length, section));
    }
    if (!(length > 0 && section > 0)) {
      return Optional.of(
          Allowed.without(
              title,
              ProtectiveConductorLimit.SOURCE,
              "length and section of a cord are above zero; or state the limit of local code,"
                  + " 'protective-conductor-limit'"));
    }
    return Optional.of(
        Allowed.of(
                title,
                ProtectiveConductorLimit.SOURCE,
                Limits.atMost(ProtectiveConductorLimit.limit(length, section)))
            .resting(
                cord.figure(CordWords.LENGTH).isPresent()
                    ? ""
                    : "a cord of at most 5 m taken, because its length is not stated"));
  }

  /**
   * The document wants a computation for a thicker conductor, which is not known by its words: what
   * meets 0.1 ohm and the conductor meets any, what fails the limit of a thinner one fails any.
   */
  private static Allowed ofThicker(String title, Component cord, double length, double section) {
    return Allowed.of(
            title, THICKER, Limits.atMost(ProtectiveConductorLimit.limit(length, USUAL_SECTION)))
        .orPerhaps(Limits.atMost(CONTACTS + length * perMetre(section)))
        .resting(
            "a cord of more than 1.5 mm2 has a computed limit: its conductor and 0.1 ohm are met"
                + " whatever it is; above that state 'protective-conductor-limit' of the cord"
                + (cord.figure(CordWords.LENGTH).isPresent()
                    ? ""
                    : "; 5 m taken, because its length is not stated"));
  }

  static Optional<Allowed> voltageDrop(Measured measured) {
    String title = "voltage along a conductor of the cord against the cord and a joint in order";
    double current = measured.conditions().si(Electrical.CURRENT, rated(measured.appliance()));
    if (!(current > 0)) {
      return Optional.of(Allowed.without(title, DROP, SoundJoint.NO_CURRENT));
    }
    Component cord = measured.component();
    Optional<RatedRange> volts = measured.appliance().nameplate().voltage();
    return Optional.of(
        Allowed.of(
                title,
                DROP,
                () ->
                    SoundJoint.limits(
                        current,
                        volts.isPresent() ? volts.get().meanSi() : Double.NaN,
                        current * CordConductor.warm(cord, SHORT_CORD)))
            .resting(
                "at "
                    + QuantityFormat.plain(Math.round(100 * current) / 100.0)
                    + " A"
                    + (cord.figure(CordWords.LENGTH).isPresent()
                        ? ""
                        : "; a cord of at most 5 m taken, because its length is not stated"))
            .butIfNot(ElectricalCautions.HOT_PLUG));
  }

  /** The current of the machine by its nameplate, else by its heaters, A; NaN if none tells it. */
  private static double rated(Appliance appliance) {
    if (appliance.nameplate().current().isPresent()) {
      return appliance.nameplate().current().get().si();
    }
    Optional<RatedRange> volts = appliance.nameplate().voltage();
    Optional<RatedRange> power = appliance.nameplate().power();
    if (volts.isEmpty()) {
      return Double.NaN;
    }
    return (power.isPresent() ? power.get().meanSi() : heating(appliance)) / volts.get().meanSi();
  }

  static Optional<Allowed> conductorCurrent(Measured measured) {
    return leakage(
        measured,
        CordWords.CONDUCTOR_CURRENT_LIMIT,
        "protective conductor current",
        "heating power",
        LeakageLimit.afterRepair(heating(measured.appliance())));
  }

  static Optional<Allowed> touchCurrent(Measured measured) {
    return leakage(
        measured,
        CordWords.TOUCH_CURRENT_LIMIT,
        "touch current",
        "the limit after repair",
        LeakageLimit.touch());
  }

  private static Optional<Allowed> leakage(
      Measured measured,
      Characteristic ofLocalCode,
      String current,
      String against,
      double afterRepair) {
    Optional<Quantity> local = measured.component().figure(ofLocalCode);
    Allowed allowed;
    if (local.isPresent()) {
      allowed = byLocalCode(measured, current, Limits.atMost(local.get().si()));
    } else if (NorthAmerica.supplies(measured.appliance().nameplate())) {
      allowed = ofTypeTest(measured.appliance(), current);
    } else {
      allowed =
          Allowed.of(
              current + " against " + against,
              LeakageLimit.AFTER_REPAIR,
              Limits.atMost(afterRepair));
    }
    return Optional.of(allowed.butIfNot(ElectricalCautions.LEAKS_CURRENT));
  }

  private static Allowed byLocalCode(Measured measured, String what, Limits limits) {
    return Allowed.of(what + " against local code", measured.component().source(), limits)
        .resting("limit of the job in place of the one built in");
  }

  private static Allowed ofTypeTest(Appliance appliance, String current) {
    Optional<ProtectionClass> stated = appliance.nameplate().protectionClass();
    boolean isTwoWire = stated.isPresent() && stated.get() == ProtectionClass.II;
    Limits twoWire = Limits.atMost(NorthAmericanLimit.leakage(Build.TWO_WIRE));
    Allowed allowed =
        Allowed.of(
                current + " against the North American type test",
                NorthAmericanLimit.LEAKAGE_SOURCE,
                isTwoWire
                    ? twoWire
                    : Limits.atMost(NorthAmericanLimit.leakage(Build.GROUNDED_STATIONARY)))
            .resting(
                isTwoWire
                    ? "limit of two-wire appliances"
                    : "limit of stationary grounded appliances; portable ones 0.5 mA"
                        + (stated.isPresent() ? "" : OR_TWO_WIRE));
    return stated.isPresent() ? allowed : allowed.orPerhaps(twoWire);
  }

  /** All heaters that state their power, W, at the lower limit of what they state. */
  private static double heating(Appliance appliance) {
    double heaters = 0;
    for (Component part : appliance.components()) {
      Optional<RatedRange> power = part.nameplate().power();
      if (Heater.isOne(part) && power.isPresent()) {
        heaters += power.get().low().si();
      }
    }
    return Math.max(0, heaters);
  }
}
