package kelter.electrical.fault.motor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.Remedy.Restores;
import kelter.core.job.Component;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.electrical.caution.Cautions;
import kelter.electrical.fault.Ageing;
import kelter.electrical.fault.EarthLeak;
import kelter.electrical.fault.StateModel.Change;
import kelter.electrical.fault.StateModel.Known;

/** What can be wrong with a motor and what it changes. Minutes and chances are from memory. */
final class MotorFaults {

  private static final Source PRIOR = Source.fromMemory("estimate of how often it is found");

  private MotorFaults() {}

  static List<Known<MotorState>> of(
      Component motor, boolean auxiliary, Optional<Component> capacitor) {
    List<Known<MotorState>> known = new ArrayList<>();
    addWindings(known, motor.id(), auxiliary);
    addMechanics(known, motor.id());
    if (capacitor.isPresent()) {
      addCapacitor(known, capacitor.get().id());
    }
    return List.copyOf(known);
  }

  private static Known<MotorState> known(
      String id,
      String component,
      String title,
      double prior,
      Change<MotorState> change,
      Remedy... remedies) {
    return new Known<>(new Fault(id, component, title, prior, PRIOR, List.of(remedies)), change);
  }

  private static void addWindings(List<Known<MotorState>> known, String id, boolean auxiliary) {
    Remedy renew = renewMotor(id);
    known.add(
        known(
                "shorted-turns",
                id,
                "turns shorted in the winding",
                0.04,
                (state, s) -> {
                  state.main *= 1 - 0.6 * s;
                  state.current *= 1 + 3 * s;
                  state.burntSmell = 0.1 + 0.8 * s;
                },
                renew)
            .wearing(Ageing.WINDING));
    known.add(
        known(
                "winding-open",
                id,
                "main winding open",
                0.03,
                (state, s) -> {
                  state.main = MotorState.OPEN;
                  state.current *= 0.1;
                  state.silent = 0.7;
                  state.burntSmell = Math.max(state.burntSmell, 0.25);
                  state.hums = Math.max(state.hums, 0.25);
                },
                renew)
            .apartFrom("shorted-turns")
            .wearing(Ageing.WINDING));
    if (auxiliary) {
      known.add(
          known(
                  "auxiliary-open",
                  id,
                  "auxiliary winding open",
                  0.02,
                  (state, s) -> {
                    state.auxiliary = MotorState.OPEN;
                    state.doesNotStart(0.9);
                  },
                  renew)
              .wearing(Ageing.WINDING));
    }
    known.add(
        known(
            "damp",
            id,
            "winding damp, leaks to earth",
            0.03,
            (state, s) -> {
              state.leak = EarthLeak.resistance(s);
              state.wet = 0.35 + 0.45 * s;
            },
            dryMotor(id),
            renew));
  }

  private static void addMechanics(List<Known<MotorState>> known, String id) {
    known.add(
        known(
                "seized",
                id,
                "bearing stiff or seized",
                0.05,
                (state, s) -> {
                  state.stiffness = 0.3 + 0.65 * s;
                  state.current *= 1 + (MotorState.BLOCKED - 1) * s * s;
                  state.hums = Math.max(state.hums, 0.05 + 0.88 * s * s);
                },
                freeBearing(id),
                renewMotor(id))
            .wearing(Ageing.BEARING));
  }

  private static void addCapacitor(List<Known<MotorState>> known, String id) {
    Remedy renew = renewCapacitor(id);
    known.add(
        known(
                "weak",
                id,
                "capacitor weak",
                0.08,
                (state, s) -> {
                  state.capacitance *= 1 - 0.8 * s;
                  state.hums = Math.max(state.hums, 0.05 + 0.85 * s);
                  state.swollen = 0.2;
                },
                renew)
            .wearing(Ageing.CAPACITOR));
    known.add(
        known(
                "open",
                id,
                "capacitor open",
                0.03,
                (state, s) -> {
                  state.capacitance = 1e-3;
                  state.doesNotStart(0.92);
                  state.swollen = 0.35;
                },
                renew)
            .apartFrom("weak")
            .wearing(Ageing.CAPACITOR));
  }

  private static Remedy renewMotor(String component) {
    return new Remedy(
        "renew-motor",
        component,
        "renew the motor",
        75,
        Restores.COMPONENT,
        true,
        0.97,
        List.of(Caution.UNPLUG, Cautions.CHARGED_CAPACITOR));
  }

  private static Remedy dryMotor(String component) {
    return new Remedy(
        "dry-motor",
        component,
        "find where the water comes from, dry the motor warm, and measure its insulation again",
        70,
        Restores.FUNCTION,
        false,
        0.5,
        List.of(Caution.UNPLUG, Cautions.TEST_VOLTAGE));
  }

  private static Remedy freeBearing(String component) {
    return new Remedy(
        "free-bearing",
        component,
        "free the bearing or renew it",
        60,
        Restores.PART,
        true,
        0.6,
        List.of(Caution.UNPLUG, Cautions.CHARGED_CAPACITOR));
  }

  private static Remedy renewCapacitor(String component) {
    return new Remedy(
        "renew-capacitor",
        component,
        "renew the capacitor by one of the same capacitance and at least the same voltage",
        20,
        Restores.COMPONENT,
        true,
        0.97,
        List.of(Caution.UNPLUG, Cautions.CHARGED_CAPACITOR));
  }
}
