package kelter.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;

/** A part that can only be judged with another one beside it is not passed over in silence. */
class CompanionTest {

  private static List<String> notAssessed(Component... parts) {
    return Workshop.of(List.of(new ElectricalModule()))
        .open(Jobs.job(ofNoKnownKind(Jobs.appliance(parts))))
        .notAssessed();
  }

  /** Of a known kind it would have the companions without being told. */
  private static Appliance ofNoKnownKind(Appliance machine) {
    return new Appliance(
        "other",
        machine.maker(),
        machine.model(),
        machine.serial(),
        machine.age(),
        machine.nameplate(),
        machine.components());
  }

  @Test
  void partsOfAHeatingCircuitAskForTheHeater() {
    for (String kind : List.of("relay", "temperature-sensor", "supply")) {
      List<String> alone = notAssessed(Jobs.component("part", kind));
      assertEquals(1, alone.size());
      assertTrue(alone.get(0).startsWith("part (list the heater"), alone.get(0));
      List<String> unrated =
          notAssessed(Jobs.component("part", kind), Jobs.component("heater", "heater"));
      assertEquals(List.of(), unrated);
      assertEquals(List.of(), notAssessed(Jobs.component("part", kind), Jobs.heater()));
    }
  }

  /** A cut-out may be that of a motor; so is a thermostat that of a compressor. */
  @Test
  void whatMayStandAloneIsJudgedAlone() {
    assertEquals(List.of(), notAssessed(Jobs.component("part", "thermal-link")));
    assertEquals(List.of(), notAssessed(Jobs.component("part", "thermostat")));
  }

  @Test
  void aCapacitorAsksForItsMotor() {
    Component capacitor = Jobs.component("capacitor", "run-capacitor");
    assertEquals(List.of("capacitor (list the motor that it belongs to)"), notAssessed(capacitor));
    assertEquals(List.of(), notAssessed(capacitor, Jobs.motor()));
  }
}
