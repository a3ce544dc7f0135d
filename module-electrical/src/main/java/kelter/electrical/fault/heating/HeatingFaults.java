package kelter.electrical.fault.heating;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Component;
import kelter.core.source.Source;
import kelter.electrical.fault.Ageing;
import kelter.electrical.fault.StateModel.Known;
import kelter.electrical.fault.heating.HeatingChange.Effect;

/**
 * What can be wrong in a heating circuit and what it changes there, the changes of the heater's
 * resistance before its being open.
 *
 * <p>Faults that are one resistance between the same two terminals are never there together: a
 * heater that is open is not shorted, nor is only one of its elements open; a sensor that is open
 * or shorted reads nothing that could drift. A wrong heater may well be open, and contacts burn
 * before they weld.
 */
final class HeatingFaults {

  private static final Source PRIOR = Source.fromMemory("estimate of how often it is found");

  /** A heater that leaks, in words and by its chance; from memory. */
  static final String LEAKING = "heater leaks to earth";

  static final double LEAKING_PRIOR = 0.08;

  /** A leak beside the heater, in words and by its chance; from memory. */
  static final String OTHER_LEAK = "another part or the wiring leaks to earth";

  static final double OTHER_LEAK_PRIOR = 0.04;

  private HeatingFaults() {}

  static List<Known<HeatingState>> of(HeatingGroup group) {
    List<Known<HeatingState>> known = new ArrayList<>();
    addHeater(known, group);
    addDeposit(known, group);
    for (int i = 0; i < group.links().size(); i++) {
      addLink(known, group.links().get(i), i);
    }
    for (int i = 0; i < group.relays().size(); i++) {
      addRelay(known, group.relays().get(i), i);
    }
    for (int i = 0; i < group.sensors().size(); i++) {
      addSensor(known, group.sensors().get(i), i, group.heatsAir());
    }
    addSupply(known, group);
    if (group.cord().isPresent()) {
      addOtherLeak(known, group.cord().get().id());
    }
    return List.copyOf(known);
  }

  private static Known<HeatingState> known(
      String id,
      String component,
      String title,
      double prior,
      HeatingChange change,
      Remedy... remedies) {
    return new Known<>(new Fault(id, component, title, prior, PRIOR, List.of(remedies)), change);
  }

  private static void addHeater(List<Known<HeatingState>> known, HeatingGroup group) {
    String id = group.heater().id();
    Remedy renew = HeatingRemedies.renewHeater(id, group.heatsAir());
    known.add(
        known(
                "shorted-turns",
                id,
                "heater shorted, in part or wholly",
                0.01,
                new HeatingChange(Effect.SHORTS_TURNS, 0),
                renew)
            .wearing(Ageing.HEATER));
    known.add(
        known(
            "wrong-part",
            id,
            "a heater of too little power fitted",
            0.005,
            new HeatingChange(Effect.WEAKENS_HEATER, 0),
            renew));
    int n = group.rating().elements();
    if (n > 1) {
      known.add(
          known(
                  "element-open",
                  id,
                  "one of " + n + " elements open",
                  0.06,
                  new HeatingChange(Effect.OPENS_ELEMENT, 0),
                  renew)
              .wearing(Ageing.HEATER));
    }
    known.add(
        known("open", id, "heater open", 0.12, new HeatingChange(Effect.OPENS_HEATER, 0), renew)
            .apartFrom("shorted-turns", "element-open")
            .wearing(Ageing.HEATER));
    known.add(
        known("leaking", id, LEAKING, LEAKING_PRIOR, new HeatingChange(Effect.LEAKS, 0), renew)
            .wearing(Ageing.HEATER));
  }

  private static void addDeposit(List<Known<HeatingState>> known, HeatingGroup group) {
    String id = group.heater().id();
    if (group.heatsAir()) {
      known.add(
          known(
                  "lint",
                  id,
                  "lint in the way of the air",
                  0.12,
                  new HeatingChange(Effect.HOLDS_AIR, 0),
                  HeatingRemedies.clearAirPath(id))
              .wearing(Ageing.DEPOSIT));
    } else {
      known.add(
          known(
                  "scaled",
                  id,
                  "heater scaled",
                  0.08,
                  new HeatingChange(Effect.SCALES, 0),
                  HeatingRemedies.descale(id),
                  HeatingRemedies.renewHeater(id, group.heatsAir()))
              .wearing(Ageing.DEPOSIT));
    }
  }

  private static void addLink(List<Known<HeatingState>> known, Component link, int i) {
    known.add(
        known(
            "open",
            link.id(),
            "thermal link open",
            0.05,
            new HeatingChange(Effect.OPENS_LINK, i),
            HeatingRemedies.renewLink(link.id())));
  }

  private static void addRelay(List<Known<HeatingState>> known, Component relay, int i) {
    Remedy renew = HeatingRemedies.renewRelay(relay.id());
    known.add(
        known(
                "contact-burnt",
                relay.id(),
                "relay contact burnt",
                0.04,
                new HeatingChange(Effect.BURNS_CONTACT, i),
                renew)
            .wearing(Ageing.CONTACT));
    known.add(
        known(
                "contact-welded",
                relay.id(),
                "relay contact welded",
                0.01,
                new HeatingChange(Effect.WELDS_CONTACT, i),
                renew)
            .wearing(Ageing.CONTACT));
    known.add(
        known(
            "coil-open",
            relay.id(),
            "relay coil open",
            0.015,
            new HeatingChange(Effect.OPENS_COIL, i),
            renew));
  }

  private static void addSensor(
      List<Known<HeatingState>> known, Component sensor, int i, boolean inAir) {
    String id = sensor.id();
    Remedy seat = HeatingRemedies.seatSensor(id, inAir);
    Remedy renew = HeatingRemedies.renewSensor(id, inAir);
    known.add(
        known(
                "reads-too-warm",
                id,
                "sensor drifted, reads too warm",
                0.03,
                new HeatingChange(Effect.READS_TOO_WARM, i),
                renew)
            .wearing(Ageing.SENSOR));
    known.add(
        known(
                "reads-too-cold",
                id,
                "sensor drifted, reads too cold",
                0.015,
                new HeatingChange(Effect.READS_TOO_COLD, i),
                renew)
            .apartFrom("reads-too-warm")
            .wearing(Ageing.SENSOR));
    known.add(
        known(
            "off-seat",
            id,
            "sensor off its seat",
            0.015,
            new HeatingChange(Effect.UNSEATS_SENSOR, i),
            seat));
    known.add(
        known(
                "sensor-shorted",
                id,
                "sensor shorted",
                0.01,
                new HeatingChange(Effect.SHORTS_SENSOR, i),
                renew)
            .apartFrom("reads-too-warm", "reads-too-cold"));
    known.add(
        known(
                "sensor-open",
                id,
                "sensor or its wire open",
                0.03,
                new HeatingChange(Effect.OPENS_SENSOR, i),
                seat,
                renew)
            .apartFrom("reads-too-warm", "reads-too-cold", "sensor-shorted")
            .wearing(Ageing.WIRE));
  }

  private static void addSupply(List<Known<HeatingState>> known, HeatingGroup group) {
    String id = group.supply().orElse(group.heater()).id();
    known.add(
        known(
                "low-voltage",
                id,
                "too little voltage reaches the heater: weak supply or a hot joint",
                0.02,
                new HeatingChange(Effect.LOWERS_VOLTAGE, 0),
                HeatingRemedies.mendSupply(id))
            .wearing(Ageing.WIRE));
  }

  private static void addOtherLeak(List<Known<HeatingState>> known, String cord) {
    known.add(
        known(
                "other-leak",
                cord,
                OTHER_LEAK,
                OTHER_LEAK_PRIOR,
                new HeatingChange(Effect.LEAKS_ELSEWHERE, 0),
                HeatingRemedies.findLeak(cord))
            .wearing(Ageing.WIRE));
  }
}
