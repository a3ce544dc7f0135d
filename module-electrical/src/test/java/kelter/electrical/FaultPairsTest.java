package kelter.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.job.Appliance;
import kelter.testkit.Aging;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which faults exclude each other, and what pairs of others do to the forecasts. */
class FaultPairsTest {

  private static List<FaultModel> models(Appliance appliance) {
    return new ElectricalModule().parts().faultModels(appliance);
  }

  private static Set<String> apart(Appliance appliance) {
    Set<String> apart = new TreeSet<>();
    for (FaultModel model : models(appliance)) {
      List<Fault> faults = model.faults();
      for (int i = 0; i < faults.size(); i++) {
        for (int j = 0; j < i; j++) {
          assertEquals(model.mayMeet(i, j), model.mayMeet(j, i));
          if (!model.mayMeet(i, j)) {
            apart.add(faults.get(j).key() + " " + faults.get(i).key());
          }
        }
      }
    }
    return apart;
  }

  /** One resistance between two terminals is not open and shorted, nor does it drift when open. */
  @Test
  void aHeatingCircuitHoldsNoOpenAndShortedPartAtOnce() {
    assertEquals(
        Set.of(
            "heater.shorted-turns heater.open",
            "heater.shorted-turns heater.aged",
            "heater.open heater.aged",
            "heater.leaking heater.sheath-split",
            "sensor.reads-too-warm sensor.reads-too-cold",
            "sensor.reads-too-warm sensor.sensor-shorted",
            "sensor.reads-too-cold sensor.sensor-shorted",
            "sensor.reads-too-warm sensor.sensor-open",
            "sensor.reads-too-cold sensor.sensor-open",
            "sensor.sensor-shorted sensor.sensor-open",
            "supply.low-voltage supply.high-voltage",
            "supply.low-voltage supply.leg-lost",
            "supply.high-voltage supply.leg-lost",
            "supply.low-voltage supply.off",
            "supply.high-voltage supply.off",
            "supply.leg-lost supply.off",
            "link.open link.opens-early",
            "cord.earth-poor cord.earth-open"),
        apart(SampleMachines.WASHER));
  }

  /** Where all elements are open, not just one is; the links are two parts. */
  @Test
  void anOpenHeaterHasNoElementLeft() {
    assertEquals(
        Set.of(
            "air-heater.shorted-turns air-heater.open",
            "air-heater.element-open air-heater.open",
            "air-heater.shorted-turns air-heater.aged",
            "air-heater.open air-heater.aged",
            "air-heater.leaking air-heater.sheath-split",
            "link.open link.opens-early",
            "other-link.open other-link.opens-early"),
        apart(SampleMachines.DRYER));
  }

  @Test
  void aPartOfAMotorIsOpenOrWeak() {
    assertEquals(
        Set.of(
            "motor.shorted-turns motor.winding-open",
            "capacitor.weak capacitor.open",
            "capacitor.weak capacitor.burst",
            "capacitor.open capacitor.burst",
            "cord.earth-poor cord.earth-open",
            "door.contact-burnt door.contact-open",
            "door.contact-open door.contact-welded",
            "valve.coil-shorted valve.coil-open"),
        apart(SampleMachines.MOTOR));
  }

  private static double forecast(Appliance appliance, String question, String... faults) {
    for (FaultModel model : models(appliance)) {
      List<String> keys = model.faults().stream().map(Fault::key).toList();
      if (!keys.containsAll(List.of(faults))) {
        continue;
      }
      double[] state = new double[keys.size() + model.shared().size()];
      for (String fault : faults) {
        state[keys.indexOf(fault)] = 1;
      }
      double[] value = new double[model.questions().size()];
      model.forecaster(model.questions()).forecast(state, value, new double[value.length]);
      for (int i = 0; i < value.length; i++) {
        var asked = model.questions().get(i);
        if ((asked.component() + "." + asked.observable().id()).equals(question)) {
          return value[i];
        }
      }
    }
    throw new AssertionError("no forecast of " + question);
  }

  /** By Ohm's law: a welded contact feeds 2000 W at 230 V, 8.7 A, whatever coil and sensor do. */
  @Test
  void aWeldedContactHeatsThoughTheCoilOrTheSensorIsOpen() {
    Appliance washer = SampleMachines.WASHER;
    for (String fault : List.of("relay.coil-open", "sensor.sensor-open")) {
      assertEquals(0, forecast(washer, "heater.current", fault), 1e-9);
      assertEquals(8.7, forecast(washer, "heater.current", fault, "relay.contact-welded"), 0.05);
    }
    assertEquals(0, forecast(washer, "heater.current", "link.open", "relay.contact-welded"), 1e-9);
  }

  /** By Ohm's law: 8.7 A through 0.02 Ohm; an open contact has the mains across it. */
  @Test
  void aWeldedContactDropsWhatItsResistanceTellsWhateverTheCoilDoes() {
    Appliance washer = SampleMachines.WASHER;
    assertEquals(230, forecast(washer, "relay.voltage-drop", "relay.coil-open"), 1e-9);
    assertEquals(
        0.174,
        forecast(washer, "relay.voltage-drop", "relay.coil-open", "relay.contact-welded"),
        0.001);
  }

  /** Kirchhoff's law: with both ways open no current flows. */
  @Test
  void withBothWindingsOpenNothingFlows() {
    for (String other : List.of("motor.auxiliary-open", "capacitor.open")) {
      Appliance machine = SampleMachines.MOTOR;
      assertEquals(0, forecast(machine, "motor.current", "motor.winding-open", other), 1e-9);
    }
  }

  /** A rotor that stands draws the current of a blocked one, whatever else holds it. */
  @Test
  void aMotorThatDoesNotStartDrawsNoMoreWithAStiffBearing() {
    Appliance machine = SampleMachines.MOTOR;
    for (String open : List.of("motor.auxiliary-open", "capacitor.open")) {
      double blocked = forecast(machine, "motor.current", "motor.seized");
      assertEquals(blocked, forecast(machine, "motor.current", open), 1e-9);
      assertEquals(blocked, forecast(machine, "motor.current", open, "motor.seized"), 1e-9);
    }
  }

  /**
   * A motor with a weak capacitor slips more and draws more, up to what it draws while it stands,
   * and no more because its bearing is stiff as well: the slip cannot pass 1. At standstill single
   * phase motors of 1/6 hp draw 20 A at most by NEMA MG 1 (from memory), with 4.4 A at full load by
   * the National Electrical Code of 1999, Table 430-148.
   */
  @Test
  void aWeakCapacitorDrawsMoreUpToABlockedRotor() {
    Appliance machine = SampleMachines.MOTOR;
    double rated = forecast(machine, "motor.current");
    double blocked = forecast(machine, "motor.current", "motor.seized");
    double weak = forecast(machine, "motor.current", "capacitor.weak");
    assertTrue(weak > 1.2 * rated, weak + " A");
    assertTrue(blocked > 2 * rated && blocked < 20 / 4.4 * rated, blocked + " A");
    assertEquals(
        blocked, forecast(machine, "motor.current", "capacitor.weak", "motor.seized"), 1e-9);
  }

  /** What wears is likelier on an old machine beside what happens to machines of any age. */
  @ParameterizedTest
  @CsvSource({
    "heater.scaled, heater.wrong-part",
    "heater.aged, supply.wrong-frequency",
    "relay.contact-burnt, link.open",
    "sensor.reads-too-warm, sensor.off-seat",
    "motor.seized, motor.damp",
    "capacitor.weak, motor.damp"
  })
  void wearComesWithAgeAndMishapsDoNot(String wears, String ageless) {
    new Aging(SampleMachines.all(), FaultPairsTest::models).assertComesWithAge(wears, ageless);
  }

  /** The auxiliary winding alone draws a tenth of 2.2 A (from memory), far below the rated one. */
  @Test
  void withTheMainWindingOpenTheAuxiliaryOneDrawsLittle() {
    assertEquals(0.22, forecast(SampleMachines.MOTOR, "motor.current", "motor.winding-open"), 1e-9);
  }
}
