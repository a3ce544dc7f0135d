package kelter.hydraulics.leak;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.leak.LeakHunt.Leak;
import kelter.hydraulics.part.WaterSide;

/**
 * A part that holds or carries water and has one fault: it lets some out. Minutes and chances are
 * judgement: common practice, no source; chances of symptoms are from memory.
 *
 * @param kind the words
 * @param hunt how its leak is found
 * @param leaks the fault
 */
public record Vessel(ComponentKind kind, LeakHunt hunt, FaultRow leaks) implements Part {

  private static final Caution DRAIN = HydraulicCautions.DRAIN_FIRST;

  /**
   * The hose from the tap to the machine.
   *
   * @return the part
   */
  public static Vessel fillHose() {
    return leaking(
        "fill-hose",
        "fill hose",
        LeakHunt.at("the whole fill hose and both of its nuts", Procedure.look(2)),
        Work.withPart("renew-fill-hose", "renew the fill hose with its washers", 12, 0.95, DRAIN));
  }

  /**
   * The tub of a washing machine with the hoses on it.
   *
   * @return the part
   */
  public static Vessel tub() {
    return leaking(
        "tub",
        "tub",
        LeakHunt.at("the seam of the tub and each hose on it", WaterSide.opened(6)),
        Work.withPart("seal-tub", "seat the hoses of the tub or reseal its seam", 60, 0.8, DRAIN));
  }

  /**
   * The sump of a dishwasher.
   *
   * @return the part
   */
  public static Vessel sump() {
    return leaking(
        "sump",
        "sump",
        LeakHunt.at("the rim of the sump and each joint on it", WaterSide.opened(6)),
        Work.withPart("reseal-sump", "renew the seals of the sump", 45, 0.9, DRAIN));
  }

  /**
   * An O-ring of a brew unit or a fitting.
   *
   * @return the part
   */
  public static Vessel ring() {
    return leaking(
        "o-ring",
        "O-ring",
        LeakHunt.at("each fitting and the brew unit", WaterSide.behindCovers(5)),
        Work.withPart("renew-o-ring", "renew the O-ring and grease it", 15, 0.95, DRAIN));
  }

  /**
   * The gasket between group and portafilter.
   *
   * @return the part
   */
  public static Vessel groupGasket() {
    return leaking(
        "group-gasket",
        "group gasket",
        LeakHunt.at("the rim of the portafilter", Procedure.look(3)),
        Work.withPart("renew-group-gasket", "renew the group gasket", 15, 0.95, DRAIN));
  }

  /**
   * The drip tray under a cold coil.
   *
   * @return the part
   */
  public static Vessel tray() {
    return cracked(
        "tray", LeakHunt.at("the bottom of the drip tray and below it", WaterSide.behindCovers(4)));
  }

  /**
   * The tray at the back of a refrigerator, from which the water dries.
   *
   * @return the part
   */
  public static Vessel dripTray() {
    return cracked(
        "drip-tray",
        LeakHunt.at("the floor below the tray on the compressor", WaterSide.behindCovers(4)));
  }

  /**
   * The disc of an instantaneous heater that bursts before its body does.
   *
   * @return the part
   */
  public static Vessel pressureDisc() {
    LeakHunt hunt =
        LeakHunt.at("the outlet of the pressure disc and its holder", WaterSide.behindCovers(4));
    return new Vessel(
        kind("pressure-disc", "pressure disc", hunt),
        hunt,
        fault("burst", "pressure disc burst", 0.015)
            .changes(LeakHunt.effects())
            .makes(Symptoms.RELIEF_DRIPS, chance(0.1, 0.84, 0.97))
            .makes(Symptoms.LEAKS, chance(0.05, 0.72, 0.9))
            .curedBy(
                Work.withPart(
                    "renew-disc", "find why it burst and renew the disc", 25, 0.9, DRAIN)));
  }

  private static ComponentKind kind(String id, String title, LeakHunt hunt) {
    return new ComponentKind(id, title, List.of(hunt.tracks(), hunt.wet()), List.of(), List.of());
  }

  private static Vessel cracked(String id, LeakHunt hunt) {
    return new Vessel(
        kind(id, "drip tray", hunt),
        hunt,
        fault("cracked", "drip tray cracked", 0.01)
            .wears(Wear.RUBBER)
            .changes(LeakHunt.effects())
            .makes(Symptoms.LEAKS, chance(0.1, 0.93, 0.97))
            .makes(Symptoms.WATER_INSIDE, 0, 0.5)
            .curedBy(Work.renewing("renew-tray", "renew the drip tray", 20, 0.95, DRAIN)));
  }

  private static Vessel leaking(String id, String title, LeakHunt hunt, Work renew) {
    return new Vessel(
        kind(id, title, hunt),
        hunt,
        fault("leaks", title + " leaks", 0.02)
            .wears(Wear.RUBBER)
            .changes(LeakHunt.effects())
            .makes(Symptoms.LEAKS, chance(0.1, 0.9, 0.97))
            .makes(Meaning.LEAK.symptom(), chance(0.02, 0.4, 0.7))
            .curedBy(renew));
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(kind);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component vessel) {
    PartModel model = PartModel.of(vessel, kind, WaterSide.PRIORS, Leak.ALL).faults(leaks);
    return Optional.of(hunt.seen(model).build());
  }
}
