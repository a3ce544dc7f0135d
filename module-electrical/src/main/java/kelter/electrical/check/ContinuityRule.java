package kelter.electrical.check;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.quantity.Quantity;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.source.Source;
import kelter.electrical.component.SupplyKinds;
import kelter.electrical.protection.NorthAmericanLimit;
import kelter.electrical.protection.ProtectiveConductorLimit;
import kelter.electrical.rating.Stated;

/** What closed contacts, thermal links and the protective conductor may have at most. */
final class ContinuityRule {

  /** A closed contact under load, V; common practice, no source. */
  private static final double DROP = 0.5;

  private static final Source DROP_SOURCE =
      Source.commonPractice("a contact in order drops less than 0.5 V under its load");

  private static final Caution HOT_CONTACT =
      new Caution(
          Signal.WARNING,
          "Fire. A contact that drops voltage heats itself and its terminals: do not let the machine"
              + " heat again before it is renewed.",
          true);

  /** Length and section where the job states none: the shortest row of the limit. */
  private static final double SHORT_CORD = 5;

  private static final double USUAL_SECTION = 1.5e-6;

  private static final Caution NO_EARTH =
      new Caution(
          Signal.DANGER,
          "Electric shock. Without its protective conductor a fault puts voltage on touchable metal:"
              + " leave the machine unplugged until the path is mended.",
          true);

  private ContinuityRule() {}

  static Optional<LimitCheck.Allowed> contactDrop(
      Job job, Component part, Measurement measurement) {
    return Optional.of(
        new LimitCheck.Allowed(
            Limits.atMost(DROP),
            DROP_SOURCE,
            "voltage drop of a closed contact",
            "times the current it is the heat: 1 V at 10 A are 10 W",
            Optional.of(HOT_CONTACT)));
  }

  static Optional<LimitCheck.Allowed> protectiveConductor(
      Job job, Component cord, Measurement measurement) {
    double local = Stated.si(cord.figure(SupplyKinds.EARTH_LIMIT.id()));
    if (!Double.isNaN(local)) {
      return Optional.of(
          new LimitCheck.Allowed(
              Limits.atMost(local),
              cord.source(),
              "protective conductor against local code",
              "limit of the job in place of the one built in",
              Optional.of(NO_EARTH)));
    }
    if (NorthAmerica.supplies(job.appliance().nameplate())) {
      return Optional.of(
          new LimitCheck.Allowed(
              Limits.atMost(NorthAmericanLimit.bonding()),
              NorthAmericanLimit.BONDING_SOURCE,
              "grounding path against the North American type test",
              "the cord counts in, which is the stricter reading",
              Optional.of(NO_EARTH)));
    }
    Optional<Quantity> stated = cord.figure(SupplyKinds.LENGTH.id());
    double length = Stated.si(stated, SHORT_CORD);
    double section = Stated.si(cord.figure(SupplyKinds.SECTION.id()), USUAL_SECTION);
    if (!(length > 0 && section > 0 && section <= USUAL_SECTION)) {
      return Optional.empty();
    }
    double limit = ProtectiveConductorLimit.limit(length, section);
    return Optional.of(
        new LimitCheck.Allowed(
            Limits.atMost(limit),
            ProtectiveConductorLimit.SOURCE,
            "protective conductor against length of cord",
            stated.isPresent()
                ? ""
                : "a cord of at most 5 m taken, because its length is not stated",
            Optional.of(NO_EARTH)));
  }
}
