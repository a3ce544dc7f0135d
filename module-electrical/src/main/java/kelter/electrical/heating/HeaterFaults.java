package kelter.electrical.heating;

import static kelter.core.diagnosis.model.Course.constant;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.Course.power;
import static kelter.core.diagnosis.model.Course.step;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.Remedy.Restores;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.insulation.EarthLeak;

/**
 * What can be wrong with a heater and with what else leaks, what it changes, what the machine then
 * does, and what cures it; chances and effects are from memory.
 *
 * <p>Faults that are one resistance between the same two terminals are never there together: a
 * heater that is open is not shorted, nor is only one of its elements open. A wrong heater may well
 * be open.
 */
final class HeaterFaults {

  /**
   * Heat of a bad joint over that of a glowing one: from a tenth, at which it is warm, to three
   * times of it, where it arcs; from memory. At 8.7 A that is 2 W to 73 W, and 0.3 V to 8 V.
   */
  private static final Course HOT_JOINT = power(0.1, 30);

  private HeaterFaults() {}

  static List<FaultRow> ofHeater(HeatingGroup group) {
    Medium medium = group.medium();
    int elements = group.rating().elements();
    List<FaultRow> rows = new ArrayList<>();
    rows.add(shorted(group));
    rows.add(wrongPart(group));
    if (elements > 1) {
      rows.add(elementOpen(group, elements));
    }
    rows.add(
        HeatSymptoms.cold(
            fault("open", "heater open", 0.12)
                .changes(CircuitFigure.HEATER_OPEN.becomes(1))
                .apartFrom("shorted-turns", "element-open")
                .curedBy(renew(medium))
                .wears(Wear.HEATER),
            group,
            constant(0.95)));
    rows.add(aged(group));
    rows.add(leaking(medium));
    rows.add(split(medium));
    rows.add(hotTerminal(group));
    if (medium == Medium.WATER) {
      rows.add(scaled());
    } else if (group.blown()) {
      rows.add(lint());
    }
    return rows;
  }

  /** From about a quarter of its resistance the fuse or circuit-breaker acts. */
  private static FaultRow shorted(HeatingGroup group) {
    return HeatSymptoms.cold(
        fault("shorted-turns", "heater shorted, in part or wholly", 0.01)
            .changes(CircuitFigure.RESISTANCE.times(power(1, 0.01)))
            .makes(Symptoms.TRIPS_BREAKER, early(0, 0.95))
            .makes(Symptoms.SMELLS_BURNT, 0.1, 0.4)
            .curedBy(renew(group.medium()))
            .wears(Wear.HEATER),
        group,
        early(0, 0.9));
  }

  private static FaultRow wrongPart(HeatingGroup group) {
    return HeatSymptoms.slow(
        fault("wrong-part", "a heater of too little power fitted", 0.005)
            .changes(CircuitFigure.RESISTANCE.times(2), CircuitFigure.MARKING_DIFFERS.becomes(0.9))
            .curedBy(renew(group.medium())),
        group,
        early(0.05, 0.75));
  }

  /** Years of heat make the wire thinner and its alloy another; how far it gets is from memory. */
  private static FaultRow aged(HeatingGroup group) {
    return HeatSymptoms.slow(
        fault("aged", "element of the heater aged: its resistance has risen", 0.01)
            .changes(CircuitFigure.RESISTANCE.times(1.15))
            .apartFrom("open", "shorted-turns")
            .curedBy(renew(group.medium()))
            .wears(Wear.HEATER),
        group,
        line(0, 0.3));
  }

  /** The more elements there are, the less one of them is missed. */
  private static FaultRow elementOpen(HeatingGroup group, int elements) {
    double left = elements / (elements - 1.0);
    return HeatSymptoms.coldOrSlow(
        fault("element-open", "one of " + elements + " elements open", 0.06)
            .changes(
                CircuitFigure.RESISTANCE.times(constant(left)),
                CircuitFigure.UNEQUAL.becomes(step(ThreeElements.ONE_OPEN_IN_DELTA, 100)))
            .curedBy(renew(group.medium()))
            .wears(Wear.HEATER),
        group,
        line(0.2 / elements, 0.2 / elements),
        line(1.5 / elements, 1.5 / elements));
  }

  /** A heater in air has neither a seal nor water about it. */
  private static Work renew(Medium medium) {
    return Work.renewing(
        "renew-heater",
        medium == Medium.AIR ? "renew the heater" : "renew the heater with its seal",
        45,
        0.97,
        Caution.UNPLUG,
        medium.hot(),
        ElectricalCautions.CONDUCTOR_BACK);
  }

  static FaultRow leaking(Medium medium) {
    return toEarth(
        fault("leaking", "heater leaks to earth", 0.07)
            .changes(
                CircuitFigure.LEAK.plus(EarthLeak.WARM_CONDUCTANCE),
                CircuitFigure.COLD_LEAK.plus(EarthLeak.COLD_CONDUCTANCE)),
        medium);
  }

  /** Water or damp reaches the insulation through the split, and it leaks. */
  private static FaultRow split(Medium medium) {
    return toEarth(
        fault("sheath-split", "sheath of the heater split, blistered or burnt through", 0.015)
            .apartFrom("leaking")
            .changes(
                CircuitFigure.SHEATH_DAMAGED.becomes(0.97),
                CircuitFigure.LEAK.plus(EarthLeak.WARM_CONDUCTANCE),
                CircuitFigure.COLD_LEAK.plus(EarthLeak.COLD_CONDUCTANCE)),
        medium);
  }

  private static FaultRow toEarth(FaultRow row, Medium medium) {
    return row.makes(Symptoms.TRIPS_RCD, EarthLeak.HEATER_TRIPS)
        .makes(Symptoms.TRIPS_BREAKER, 0.05, 0.35)
        .makes(Symptoms.STAYS_COLD, 0.05, 0.35)
        .makes(Symptoms.STOPS_IN_CYCLE, 0.05, 0.45)
        .makes(Symptoms.SHOCK_FELT, 0.01, 0.15)
        .curedBy(renew(medium))
        .wears(Wear.HEATER);
  }

  /** It burns off at last. */
  private static FaultRow hotTerminal(HeatingGroup group) {
    Medium medium = group.medium();
    return HeatSymptoms.cold(
        fault("hot-joint", "hot joint at a terminal or connector of the heater", 0.01)
            .changes(
                CircuitFigure.TERMINAL_JOINT.becomes(HOT_JOINT),
                CircuitFigure.TERMINAL_BURNS.becomes(line(0.35, 0.95)))
            .makes(Symptoms.SMELLS_BURNT, 0.15, 0.75)
            .makes(Symptoms.SPARKS, 0, 0.3)
            .makes(Symptoms.TRIPS_BREAKER, 0, 0.3)
            .curedBy(
                Work.byHand(
                    "renew-joint",
                    "cut the burnt wire back and renew connector and tab",
                    30,
                    0.85,
                    Caution.UNPLUG,
                    medium.hot()),
                renew(medium))
            .wears(Wear.WIRE),
        group,
        line(0.1, 0.9));
  }

  static FaultRow hotPlug() {
    return fault("hot-joint", "hot joint in plug, outlet or cord", 0.01)
        .changes(
            CircuitFigure.PLUG_JOINT.becomes(HOT_JOINT),
            CircuitFigure.PLUG_BURNS.becomes(line(0.3, 0.8)),
            CircuitFigure.PLUG_HOT.becomes(0.95))
        .makes(Symptoms.SMELLS_BURNT, 0.3, 0.9)
        .makes(Symptoms.DOES_NOT_START, 0.1, 0.8)
        .makes(Symptoms.STOPS_IN_CYCLE, 0.1, 0.4)
        .makes(Symptoms.TRIPS_BREAKER, 0.1, 0.6)
        .makes(Symptoms.SPARKS, 0, 0.3)
        .curedBy(
            Work.renewing(
                "renew-plug",
                "renew the cord with its plug, and have an electrician see the outlet",
                30,
                0.85,
                Caution.UNPLUG,
                ElectricalCautions.FIXED_WIRING))
        .wears(Wear.WIRE);
  }

  private static FaultRow lint() {
    return fault("lint", "lint in the way of the air", 0.12)
        .changes(
            CircuitFigure.DEPOSIT.becomes(line(0.35, 0.95)),
            CircuitFigure.AIRFLOW.times(0.3),
            CircuitFigure.DUTY.times(0.5))
        .makes(Symptoms.DOES_NOT_DRY, 0.7, 1)
        .makes(Symptoms.WEAK_AIR, 0.6, 1)
        .makes(Symptoms.RUNS_WITHOUT_END, 0.3, 0.7)
        .makes(Symptoms.STOPS_IN_CYCLE, 0.2, 0.7)
        .makes(Symptoms.TOO_HOT, 0.1, 0.5)
        .makes(Symptoms.SMELLS_BURNT, 0, 0.2)
        .curedBy(
            Work.byHand(
                "clear-air-path",
                "take the lint off the heater, the filter and the duct",
                25,
                0.9,
                Caution.UNPLUG,
                ElectricalCautions.HOT_PART))
        .wears(Wear.DEPOSIT);
  }

  /** Scale costs flow and even heat before it costs heating time: the power stays. */
  private static FaultRow scaled() {
    return fault("scaled", "heater scaled", 0.08)
        .changes(CircuitFigure.DEPOSIT.becomes(line(0.35, 0.95)), CircuitFigure.DUTY.times(0.85))
        .makes(Symptoms.HEATS_SLOWLY, 0.05, 0.45)
        .makes(Symptoms.LOUD, 0.05, 0.6)
        .makes(Symptoms.RUNS_OUT_EARLY, 0.1, 0.7)
        .makes(Symptoms.WEAK_FLOW, 0.05, 0.45)
        .makes(Symptoms.TEMPERATURE_SWINGS, 0, 0.3)
        .makes(Symptoms.POOR_RESULT, 0.05, 0.45)
        .makes(Symptoms.DISCOLOURED_WATER, 0, 0.3)
        .makes(Symptoms.STOPS_IN_CYCLE, 0, 0.3)
        .curedBy(
            Work.byHand(
                "descale",
                "descale the heater and rinse",
                40,
                0.8,
                Caution.UNPLUG,
                Caution.HOT_WATER,
                ElectricalCautions.DESCALING_ACID),
            renew(Medium.WATER))
        .wears(Wear.DEPOSIT);
  }

  static FaultRow otherLeak() {
    return fault("other-leak", "another part or the wiring leaks to earth", 0.04)
        .changes(CircuitFigure.OTHER_LEAK.plus(EarthLeak.CONDUCTANCE))
        .makes(Symptoms.TRIPS_RCD, EarthLeak.TRIPS)
        .makes(Symptoms.TRIPS_BREAKER, 0.05, 0.35)
        .makes(Symptoms.STOPS_IN_CYCLE, 0.05, 0.45)
        .makes(Symptoms.SHOCK_FELT, 0.01, 0.15)
        .curedBy(
            new Work(
                "find-leak",
                "part the circuits, find what leaks by its insulation, and mend it",
                60,
                Restores.FUNCTION,
                true,
                0.8,
                List.of(
                    Caution.UNPLUG,
                    ElectricalCautions.TEST_VOLTAGE,
                    ElectricalCautions.CONDUCTOR_BACK)))
        .wears(Wear.WIRE);
  }
}
