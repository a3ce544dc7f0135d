package kelter.hydraulics.pumppart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.hydraulics.SampleMachines;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** On what a pump runs where the nameplates have ranges; which nets have 60 Hz: common practice. */
class RatedSupplyTest {

  private static Nameplate plate(String voltage, String frequency) {
    return new Nameplate(
        voltage == null
            ? Optional.empty()
            : Optional.of(RatedRange.parse(voltage, QuantityKind.VOLTAGE)),
        frequency == null
            ? Optional.empty()
            : Optional.of(RatedRange.parse(frequency, QuantityKind.FREQUENCY)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static RatedSupply supply(Nameplate own, Nameplate machine) {
    Component pump = SampleMachines.drainPump();
    return RatedSupply.of(
        new Component(pump.id(), pump.kind(), own, pump.figures(), pump.curves(), pump.source()),
        machine);
  }

  private static Conditions at(double hertz) {
    return new Conditions(Map.of("frequency", Quantity.of(hertz, "Hz", QuantityKind.FREQUENCY)));
  }

  /** Arithmetic: 50 of 60 Hz are 0.8333 of the rated frequency, 60 of 50 Hz 1.2. */
  @ParameterizedTest
  @CsvSource({
    "220-240 V, 50/60 Hz, 50 Hz, 1",
    "220-240 V, 50/60 Hz, 60 Hz, 0.8333",
    "200-240 V, 50/60 Hz, 60 Hz, 0.8333",
    "100-120 V, 50/60 Hz, 60 Hz, 1",
    "100-120 V, 50/60 Hz, 50 Hz, 1.2",
    "208 V, 50/60 Hz, 60 Hz, 1",
    ", 50/60 Hz, 50 Hz, 1",
    "220-240 V, 50/60 Hz, , 1",
    "220-240 V, 50 Hz, 50/60 Hz, 1",
    "220-240 V, , 50/60 Hz, 1"
  })
  void theMainsOfAMachineForBothGoWithItsVoltage(
      String voltage, String machine, String pump, double ratio) {
    RatedSupply supply = supply(plate(null, pump), plate(voltage, machine));
    assertEquals(ratio, supply.supply(Conditions.NONE).frequency(), 0.00005);
  }

  /** What a reading states counts before that; a pump for both runs as rated on either. */
  @ParameterizedTest
  @CsvSource({
    "50 Hz, 60, 1.2",
    "60 Hz, 60, 1",
    "50/60 Hz, 60, 1",
    "50/60 Hz, 50, 1",
    "50/60 Hz, 63, 1.05",
    ", 60, 1"
  })
  void aStatedFrequencyDecides(String pump, double hertz, double ratio) {
    RatedSupply supply = supply(plate(null, pump), plate("220-240 V", "50/60 Hz"));
    assertEquals(ratio, supply.supply(at(hertz)).frequency(), 0.00005);
  }

  /** Arithmetic: 207 V are 0.9 of 230 V, the mean of 220 V to 240 V. */
  @Test
  void aStatedVoltageIsHeldAgainstTheMean() {
    RatedSupply supply = supply(plate(null, null), plate("220-240 V", "50 Hz"));
    Conditions low = new Conditions(Map.of("voltage", Quantity.of(207, "V", QuantityKind.VOLTAGE)));
    assertEquals(0.9, supply.supply(low).voltage(), 1e-12);
  }

  @Test
  void saysWhatWasTaken() {
    RatedSupply both = supply(plate(null, null), plate("220-240 V", "50/60 Hz"));
    String taken = both.remark("Read it again.", Conditions.NONE);
    assertTrue(taken.startsWith("Read it again. 50 Hz taken as the frequency"), taken);
    assertTrue(taken.contains("made for 50 Hz to 60 Hz"), taken);
    String stated = both.remark("", at(60));
    assertTrue(stated.startsWith("The pump is made for"), stated);
    RatedSupply ofOne = supply(plate(null, "50 Hz"), plate("220-240 V", "50/60 Hz"));
    assertTrue(ofOne.remark("", Conditions.NONE).endsWith("no reading states it."));
    assertEquals("", ofOne.remark("", at(50)));
    RatedSupply plain = supply(plate(null, null), plate("230 V", "50 Hz"));
    assertEquals("", plain.remark("", Conditions.NONE));
  }
}
