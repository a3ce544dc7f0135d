package kelter.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Measurement;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Standing;
import kelter.electrical.rating.NorthAmerica;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What follows from a range of voltages or frequencies on the nameplate of a machine. */
class RangeChecksTest {

  private static Optional<RatedRange> rated(String text, QuantityKind kind) {
    return text == null ? Optional.empty() : Optional.of(RatedRange.parse(text, kind));
  }

  private static Appliance machine(String voltage, String frequency, Component... parts) {
    Nameplate plate =
        new Nameplate(
            rated(voltage, QuantityKind.VOLTAGE),
            rated(frequency, QuantityKind.FREQUENCY),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    return new Appliance("washer", "", "", "", Optional.empty(), plate, List.of(parts));
  }

  private static List<Finding> findings(Appliance appliance, Measurement measurement) {
    return new ElectricalModule()
        .parts().checks().stream()
            .flatMap(c -> c.apply(Jobs.job(appliance, measurement), DecisionRule.USUAL).stream())
            .toList();
  }

  private static Finding only(Appliance appliance, Measurement measurement) {
    List<Finding> findings = findings(appliance, measurement);
    assertEquals(1, findings.size(), findings.toString());
    return findings.get(0);
  }

  private static Measurement ohm(double value) {
    return Jobs.measurement(
        "heater", "resistance", Jobs.value(value, "Ohm", QuantityKind.RESISTANCE, 0.1));
  }

  private static Measurement volt(String part, String observable, double value) {
    return Jobs.measurement(part, observable, Jobs.value(value, "V", QuantityKind.VOLTAGE, 1));
  }

  /**
   * Arithmetic on IEC 60335-1, 10.1: the power belongs to 230 V, 25.19 to 29.39 Ohm, and 3 % less
   * when cold (alloy tables, from memory), 24.43 Ohm.
   */
  @Test
  void resistanceByTheMeanOfACloseRange() {
    Finding finding = only(machine("220-240 V", "50 Hz", Jobs.heater()), ohm(26.2));
    assertEquals(24.43, finding.limits().low(), 0.006);
    assertEquals(29.39, finding.limits().high(), 0.006);
    assertEquals(Verdict.CONFORMS, finding.verdict());
    assertTrue(finding.remark().startsWith("power taken as that at 230 V"), finding.remark());
    assertEquals(Standing.FROM_MEMORY, finding.source().standing());
  }

  /** Arithmetic on the same: 19.05 less 3 % are 18.48 Ohm; 32.00 Ohm. */
  @Test
  void resistanceByBothLimitsOfAWideRange() {
    Appliance machine = machine("200-240 V", "50 Hz", Jobs.heater());
    Finding finding = only(machine, ohm(21));
    assertEquals(18.48, finding.limits().low(), 0.006);
    assertEquals(32.00, finding.limits().high(), 0.006);
    assertEquals(Verdict.CONFORMS, finding.verdict());
    assertEquals(Verdict.DOES_NOT_CONFORM, only(machine, ohm(40)).verdict());
  }

  /**
   * Arithmetic on the same: 1653 W and 2777 W at 230 V are 7.187 A and 12.08 A. Without a voltage
   * the mains lie between 198 V and 264 V for 220 V to 240 V, so that 1800 (198/230)² = 1334 W and
   * 2100 (264/230)² = 2767 W.
   */
  @Test
  void powerAndCurrentByTheRange() {
    Conditions at230 =
        new Conditions(Map.of("voltage", Quantity.of(230, "V", QuantityKind.VOLTAGE)));
    Reading ampere = Jobs.value(8.6, "A", QuantityKind.CURRENT, 0.1);
    Finding current =
        only(
            machine("200-240 V", null, Jobs.heater()),
            Jobs.measurement("heater", "current", ampere, at230));
    assertEquals(7.187, current.limits().low(), 0.0006);
    assertEquals(12.08, current.limits().high(), 0.006);
    Reading watt = Jobs.value(2000, "W", QuantityKind.POWER, 1);
    Finding power =
        only(machine("220-240 V", null, Jobs.heater()), Jobs.measurement("heater", "power", watt));
    assertEquals(1334, power.limits().low(), 0.6);
    assertEquals(2767, power.limits().high(), 0.6);
    assertTrue(power.remark().contains("no voltage is stated"), power.remark());
  }

  /** EN 50160 (second-hand): 195.5 V to 253 V; ANSI C84.1 (from memory): 104 V to 127 V. */
  @ParameterizedTest
  @CsvSource({
    "220-240 V, 195.5, 253",
    "110-120 V, 104, 127",
    "200-240 V, 180, 264", // common practice: 10 % beyond the limits
    "100-127 V, 90, 139.7"
  })
  void theSupplyByTheRange(String voltage, double low, double high) {
    Appliance machine = machine(voltage, null, Jobs.component("supply", "supply"));
    Finding finding = only(machine, volt("supply", "voltage-idle", 120));
    assertEquals(low, finding.limits().low(), 1e-9);
    assertEquals(high, finding.limits().high(), 1e-9);
  }

  /** EN 50160 (from memory): within 1 % for 99.5 % of a year, 49.5 Hz to 50.5 Hz. */
  @ParameterizedTest
  @CsvSource({
    "50 Hz, 50, 49.5, 50.5, CONFORMS",
    "50 Hz, 60, 49.5, 50.5, DOES_NOT_CONFORM",
    "60 Hz, 60, 59.4, 60.6, CONFORMS",
    "60 Hz, 50, 59.4, 60.6, DOES_NOT_CONFORM",
    "50/60 Hz, 60, 49.5, 60.6, CONFORMS"
  })
  void theFrequencyOfTheSupplyIsThatOfTheNameplate(
      String rated, double hertz, double low, double high, Verdict verdict) {
    Finding finding = frequency(rated, hertz);
    assertEquals(low, finding.limits().low(), 1e-9);
    assertEquals(high, finding.limits().high(), 1e-9);
    assertEquals(verdict, finding.verdict());
  }

  @Test
  void aFrequencyIsHeldAgainstNothingWhereTheNameplateStatesNone() {
    Finding finding = frequency(null, 60);
    assertEquals(Verdict.NOT_MEASURED, finding.verdict());
    assertTrue(finding.remark().contains("frequency"), finding.remark());
  }

  private static Finding frequency(String rated, double hertz) {
    return only(
        machine("230 V", rated, Jobs.component("supply", "supply")),
        Jobs.measurement(
            "supply", "frequency", Jobs.value(hertz, "Hz", QuantityKind.FREQUENCY, 0.01)));
  }

  private static Finding supply(String voltage, String frequency, double volt) {
    return only(
        machine(voltage, frequency, Jobs.component("supply", "supply")),
        volt("supply", "voltage-idle", volt));
  }

  /**
   * ANSI C84.1, Table 1, range B at the outlet, from memory: 208 V to 254 V of 120/240 V, and 180 V
   * to 220 V of 208Y/120 V. EN 50160 is European and of 50 Hz.
   */
  @ParameterizedTest
  @CsvSource({
    "240 V, 60 Hz, 208, 254",
    "240 V, 50 Hz, 195.5, 253",
    "400 V, 50 Hz, 360, 440",
    "230 V, 50/60 Hz, 195.5, 253",
    "230 V, , 195.5, 253",
    "208 V, 60 Hz, 180, 220",
    "120 V, 60 Hz, 104, 127"
  })
  void theSupplyByVoltageAndFrequency(String voltage, String frequency, double low, double high) {
    Finding finding = supply(voltage, frequency, (low + high) / 2);
    assertEquals(low, finding.limits().low(), 1e-9);
    assertEquals(high, finding.limits().high(), 1e-9);
    assertEquals(Verdict.CONFORMS, finding.verdict());
  }

  /** On the 240 V of North America 198 V are too little, which EN 50160 would let pass. */
  @Test
  void whereTwoNetsArePossibleWhatLiesBetweenIsUndecided() {
    assertEquals(Verdict.DOES_NOT_CONFORM, supply("240 V", "60 Hz", 200).verdict());
    assertEquals(Verdict.CONFORMS, supply("240 V", "50 Hz", 200).verdict());
    Finding open = supply("240 V", null, 200);
    assertEquals(Verdict.UNDECIDED, open.verdict());
    assertTrue(open.remark().contains("state the frequency"), open.remark());
    assertEquals(Verdict.CONFORMS, supply("240 V", null, 240).verdict());
    assertEquals(Verdict.DOES_NOT_CONFORM, supply("240 V", null, 188).verdict());
    assertEquals(Verdict.UNDECIDED, supply("208-240 V", "60 Hz", 236).verdict());
  }

  /** Nets of 220 V, 230 V and 400 V at 60 Hz, 127 V: no table of theirs is known to the project. */
  @ParameterizedTest
  @CsvSource({"220 V, 60 Hz", "220-240 V, 60 Hz", "127 V, 60 Hz", "110 V, 50 Hz", "400 V, 60 Hz"})
  void ofAnUnknownNetItIsSaidWhyThereIsNoVerdict(String voltage, String frequency) {
    Finding finding = supply(voltage, frequency, 230);
    assertEquals(Verdict.NOT_MEASURED, finding.verdict());
    assertTrue(finding.remark().contains("no range is known here"), finding.remark());
  }

  /**
   * ANSI C84.1 as above: 258 V at a heater lie within 10 % of 240 V, and above the 254 V of the
   * net.
   */
  @Test
  void aNorthAmericanHeaterIsHeldAgainstItsOwnNet() {
    Appliance machine = machine("240 V", "60 Hz", Jobs.heater());
    Finding high = only(machine, volt("heater", "voltage", 258));
    assertEquals(Verdict.DOES_NOT_CONFORM, high.verdict());
    assertEquals(254, high.limits().high(), 1e-9);
    assertEquals(Standing.FROM_MEMORY, high.source().standing());
    assertEquals(
        Verdict.CONFORMS,
        only(machine("240 V", "50 Hz", Jobs.heater()), volt("heater", "voltage", 258)).verdict());
  }

  /** IEC 60038: 10 % to either side of the rated voltage, here of 220 V and of 240 V. */
  @Test
  void theVoltageAtTheHeaterByTheRange() {
    Finding finding =
        only(machine("220-240 V", null, Jobs.heater()), volt("heater", "voltage", 230));
    assertEquals(198, finding.limits().low(), 1e-9);
    assertEquals(264, finding.limits().high(), 1e-9);
    assertEquals("rated 220 V to 240 V", finding.remark());
  }

  /** Which machines are built for North American supplies: ANSI C84.1, from memory. */
  @ParameterizedTest
  @CsvSource({
    "208-240 V, 60 Hz, true",
    "208-240 V, 50/60 Hz, false",
    "220-240 V, 50/60 Hz, false",
    "220-240 V, 60 Hz, false",
    "110-127 V, 50/60 Hz, true",
    "110-127 V, 50 Hz, false",
    "100-240 V, 60 Hz, false",
    "120 V, , true"
  })
  void northAmericaByTheRange(String voltage, String frequency, boolean american) {
    assertEquals(american, NorthAmerica.supplies(machine(voltage, frequency).nameplate()));
  }

  @Test
  void aMachineWithoutVoltageIsNotAmerican() {
    assertFalse(NorthAmerica.supplies(machine(null, "60 Hz").nameplate()));
  }
}
