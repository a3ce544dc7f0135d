package kelter.electrical.fault.heating;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Component;
import kelter.core.source.Source;
import kelter.electrical.fault.Ageing;
import kelter.electrical.fault.EarthLeak;
import kelter.electrical.fault.StateModel.Change;
import kelter.electrical.fault.StateModel.Known;

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

  /** What a heater shorted at its terminals keeps of its resistance. */
  private static final double WHOLE_SHORT = 0.01;

  /** A shorted sensor, as a factor of its resistance. */
  private static final double SENSOR_SHORT = 1e-3;

  /** By how much the worst drifted or loose sensor errs, K; from memory. */
  private static final double DRIFT = 12.5;

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
      addSensor(known, group.sensors().get(i), i);
    }
    addSupply(known, group);
    group.cord().ifPresent(cord -> addOtherLeak(known, cord.id()));
    return List.copyOf(known);
  }

  private static Known<HeatingState> known(
      String id,
      String component,
      String title,
      double prior,
      Change<HeatingState> change,
      Remedy... remedies) {
    return new Known<>(new Fault(id, component, title, prior, PRIOR, List.of(remedies)), change);
  }

  private static void addHeater(List<Known<HeatingState>> known, HeatingGroup group) {
    String id = group.heater().id();
    Remedy renew = HeatingRemedies.renewHeater(id);
    known.add(
        known(
                "shorted-turns",
                id,
                "heater shorted, in part or wholly",
                0.01,
                (state, s) -> {
                  state.heater *= Math.pow(WHOLE_SHORT, s);
                  state.sheathDamaged = 0.3 + 0.4 * s;
                },
                renew)
            .wearing(Ageing.HEATER));
    known.add(
        known(
            "wrong-part",
            id,
            "a heater of too little power fitted",
            0.005,
            (state, s) -> {
              state.heater *= 1 + s;
              state.markingDiffers = 0.9;
            },
            renew));
    int n = group.rating().elements();
    if (n > 1) {
      known.add(
          known(
                  "element-open",
                  id,
                  "one of " + n + " elements open",
                  0.06,
                  (state, s) -> state.heater *= n / (n - 1.0),
                  renew)
              .wearing(Ageing.HEATER));
    }
    known.add(
        known(
                "open",
                id,
                "heater open",
                0.12,
                (state, s) -> {
                  state.heater = HeatingState.OPEN;
                  state.sheathDamaged = Math.max(state.sheathDamaged, 0.3);
                },
                renew)
            .apartFrom("shorted-turns", "element-open")
            .wearing(Ageing.HEATER));
    known.add(
        known(
                "leaking",
                id,
                "heater leaks to earth",
                0.08,
                (state, s) -> {
                  state.leak = EarthLeak.resistance(s);
                  state.sheathDamaged = Math.max(state.sheathDamaged, 0.15 + 0.45 * s);
                },
                renew)
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
                  (state, s) -> {
                    state.deposit = 0.35 + 0.6 * s;
                    state.airflow *= 1 - 0.7 * s;
                    state.duty *= 1 - 0.5 * s;
                  },
                  HeatingRemedies.clearAirPath(id))
              .wearing(Ageing.DEPOSIT));
    } else {
      known.add(
          known(
                  "scaled",
                  id,
                  "heater scaled",
                  0.08,
                  (state, s) -> {
                    state.deposit = 0.35 + 0.6 * s;
                    state.duty *= 1 - 0.15 * s;
                  },
                  HeatingRemedies.descale(id),
                  HeatingRemedies.renewHeater(id))
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
            (state, s) -> {
              state.link[i] = HeatingState.OPEN;
              state.interrupted = true;
            },
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
                (state, s) -> {
                  state.contact[i] *= Math.pow(150, s);
                  state.burns[i] = 0.35 + 0.6 * s;
                  state.burntSmell[i] = 0.1 + 0.6 * s;
                  state.duty *= 1 - 0.8 * s;
                },
                renew)
            .wearing(Ageing.CONTACT));
    known.add(
        known(
                "contact-welded",
                relay.id(),
                "relay contact welded",
                0.01,
                (state, s) -> {
                  state.closedWhenOff[i] = HeatingState.WELDED;
                  state.burntSmell[i] = Math.max(state.burntSmell[i], 0.2);
                  state.overheats = 0.8;
                },
                renew)
            .wearing(Ageing.CONTACT));
    known.add(
        known(
            "coil-open",
            relay.id(),
            "relay coil open",
            0.015,
            (state, s) -> {
              state.coil[i] = HeatingState.OPEN;
              // A welded contact stays closed whatever the coil does.
              state.interrupted |= !state.isWelded(i);
            },
            renew));
  }

  private static void addSensor(List<Known<HeatingState>> known, Component sensor, int i) {
    String id = sensor.id();
    Remedy seat = HeatingRemedies.seatSensor(id);
    Remedy renew = HeatingRemedies.renewSensor(id);
    known.add(
        known(
                "reads-too-warm",
                id,
                "sensor drifted, reads too warm",
                0.03,
                (state, s) -> {
                  state.tooWarm[i] += DRIFT * s;
                  state.reached *= 1 - 0.5 * s;
                },
                renew)
            .wearing(Ageing.SENSOR));
    known.add(
        known(
                "reads-too-cold",
                id,
                "sensor drifted, reads too cold",
                0.015,
                (state, s) -> {
                  state.tooWarm[i] -= DRIFT * s;
                  state.overheats = Math.max(state.overheats, 0.1 + 0.7 * s);
                },
                renew)
            .apartFrom("reads-too-warm")
            .wearing(Ageing.SENSOR));
    known.add(
        known(
            "off-seat",
            id,
            "sensor off its seat",
            0.015,
            (state, s) -> {
              state.offSeat[i] = 0.98;
              state.offBy[i] -= DRIFT * s;
              state.overheats = Math.max(state.overheats, 0.1 + 0.7 * s);
            },
            seat));
    known.add(
        known(
                "sensor-shorted",
                id,
                "sensor shorted",
                0.01,
                (state, s) -> {
                  state.sensorFactor[i] = SENSOR_SHORT;
                  state.interrupted |= !state.allWelded();
                },
                renew)
            .apartFrom("reads-too-warm", "reads-too-cold"));
    known.add(
        known(
                "sensor-open",
                id,
                "sensor or its wire open",
                0.03,
                (state, s) -> {
                  state.sensorFactor[i] = HeatingState.OPEN;
                  state.interrupted |= !state.allWelded();
                },
                seat,
                renew)
            .apartFrom("reads-too-warm", "reads-too-cold", "sensor-shorted")
            .wearing(Ageing.WIRE));
  }

  private static void addSupply(List<Known<HeatingState>> known, HeatingGroup group) {
    String id = group.supply().map(Component::id).orElse(group.heater().id());
    known.add(
        known(
                "low-voltage",
                id,
                "too little voltage reaches the heater: weak supply or a hot joint",
                0.02,
                (state, s) -> {
                  state.reaching = 1 - 0.3 * s;
                  state.plugBurns = 0.3 + 0.5 * s;
                  state.plugHot = 0.15 + 0.6 * s;
                },
                HeatingRemedies.mendSupply(id))
            .wearing(Ageing.WIRE));
  }

  private static void addOtherLeak(List<Known<HeatingState>> known, String cord) {
    known.add(
        known(
                "other-leak",
                cord,
                "another part or the wiring leaks to earth",
                0.04,
                (state, s) -> state.otherLeak = EarthLeak.resistance(s),
                HeatingRemedies.findLeak(cord))
            .wearing(Ageing.WIRE));
  }
}
