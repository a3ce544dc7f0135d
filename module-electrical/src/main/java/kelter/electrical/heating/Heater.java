package kelter.electrical.heating;

import java.util.List;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.vocabulary.ComponentKind;
import kelter.electrical.insulation.InsulationRule;

/** What may be read on a heater of one kind; what can be wrong with it is told by its circuit. */
public final class Heater implements Part {

  private final Medium medium;

  private Heater(Medium medium) {
    this.medium = medium;
  }

  /**
   * A heater in water.
   *
   * @return the part
   */
  public static Heater ofWater() {
    return new Heater(Medium.WATER);
  }

  /**
   * A heater in air.
   *
   * @return the part
   */
  public static Heater ofAir() {
    return new Heater(Medium.AIR);
  }

  /**
   * Whether a part is a heater.
   *
   * @param part a part of an appliance
   * @return true if it is one, of water or of air
   */
  public static boolean isOne(Component part) {
    return Medium.of(part.kind()).isPresent();
  }

  /**
   * Whether an appliance has a heater.
   *
   * @param appliance the machine
   * @return true if one of its parts is one
   */
  public static boolean isIn(Appliance appliance) {
    for (Component part : appliance.components()) {
      if (isOne(part)) {
        return true;
      }
    }
    return false;
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(medium.words().kind());
  }

  @Override
  public List<Check> checks() {
    HeaterWords words = medium.words();
    ComponentKind kind = words.kind();
    return List.of(
        LimitCheck.named("heater-resistance", "Does the heater measure what its nameplate says?")
            .on(kind, HeaterWords.RESISTANCE, HeaterChecks::resistance),
        LimitCheck.named("heater-insulation", "Does the heater leak to earth?")
            .on(kind, HeaterWords.INSULATION, new InsulationRule(true)),
        LimitCheck.named("heater-power", "Does the heater take what its nameplate says?")
            .on(kind, words.power(), HeaterChecks::power),
        LimitCheck.named("heater-current", "Does the heater draw what its nameplate says?")
            .on(kind, words.current(), HeaterChecks::current),
        LimitCheck.named("heater-voltage", "Does the voltage reach the heater?")
            .on(kind, words.voltage(), HeaterChecks::voltage),
        LimitCheck.named("heater-joint", "Does a joint of the heater lose voltage?")
            .on(kind, HeaterWords.JOINT_DROP, HeaterChecks::jointDrop),
        medium == Medium.WATER
            ? LimitCheck.named(
                    "heating-rate", "Does the water warm as fast as the power should make it?")
                .on(kind, words.warming(), HeaterChecks::heatingRate)
            : LimitCheck.named(
                    "air-temperature-rise",
                    "Is the air as warm as power and airflow should make it?")
                .on(kind, words.warming(), HeaterChecks::airRise));
  }
}
