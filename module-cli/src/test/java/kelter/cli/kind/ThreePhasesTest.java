package kelter.cli.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.workshop.Case;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Machines on several phases. EN 50160: 230 V to neutral and 400 V between two phases, within 10 %.
 * Three like elements of 21 kW at 400 V: 22.9 ohm each in delta and 7.6 ohm in star by Joule's law,
 * 15.2 ohm between two terminals of either by Kirchhoff's.
 */
class ThreePhasesTest {

  private static final String HEATER =
      "'kind': 'instantaneous-water-heater', 'age': '4 a', 'nameplate': { 'voltage': '400 V',"
          + " 'power': '21 kW', 'protection-class': 'I' }";

  private static Verdict verdict(String appliance, String symptoms, String reading) {
    Case machine = TypedJob.open(appliance, symptoms, reading);
    Finding finding = machine.findings().get(0);
    return finding.verdict();
  }

  @ParameterizedTest
  @CsvSource({
    "instantaneous-water-heater,401 V,CONFORMS",
    "instantaneous-water-heater,231 V,CONFORMS",
    "instantaneous-water-heater,325 V,DOES_NOT_CONFORM",
    "instantaneous-water-heater,450 V,DOES_NOT_CONFORM",
    "instantaneous-water-heater,0 V,DOES_NOT_CONFORM",
    "induction-hob,401 V,CONFORMS",
    "induction-hob,229 V,CONFORMS",
    "induction-hob,290 V,DOES_NOT_CONFORM",
    "storage-water-heater,401 V,DOES_NOT_CONFORM",
  })
  void holdsVoltagesAgainstTheNetThatTheKindIsOn(String kind, String volts, Verdict verdict) {
    assertEquals(
        verdict, verdict("'kind': '" + kind + "'", "", "supply.voltage-idle=" + volts), volts);
  }

  /** The lock-out table does not tell the machine to be unplugged for it. */
  @ParameterizedTest
  @CsvSource({
    "instantaneous-water-heater,401 V,false",
    "instantaneous-water-heater,325 V,true",
    "induction-hob,401 V,false",
    "induction-hob,290 V,true",
    "iron,401 V,true",
  })
  void locksOutForAWrongVoltageOnly(String kind, String volts, boolean locked) {
    String component = kind.equals("iron") ? "'components': [{ 'id': 'supply' }]" : "";
    String appliance = "'kind': '" + kind + "'" + (component.isEmpty() ? "" : ", " + component);
    Case machine = TypedJob.open(appliance, "", "supply.voltage-idle=" + volts);

    assertEquals(
        locked,
        machine.lockOut().rows().stream()
            .anyMatch(each -> each.row().id().equals("supply-voltage")),
        volts);
  }

  /** 231 V from a phase to neutral is no lost phase. */
  @ParameterizedTest
  @ValueSource(strings = {"401 V", "231 V"})
  void accusesNoPhase(String volts) {
    Case machine = TypedJob.open(HEATER, "'stays-cold': 'yes'", "supply.voltage-idle=" + volts);

    for (String fault : new String[] {"supply.leg-lost", "supply.high-voltage"}) {
      assertTrue(TypedJob.chance(machine, fault) < 0.1, () -> fault + " " + volts);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "400 V,401 V,CONFORMS",
    "380 V,391 V,CONFORMS",
    "400 V,355 V,DOES_NOT_CONFORM",
    "230 V,401 V,DOES_NOT_CONFORM",
  })
  void goesByTheNameplate(String plate, String volts, Verdict verdict) {
    String appliance =
        "'kind': 'instantaneous-water-heater', 'nameplate': { 'voltage': '" + plate + "' }";

    assertEquals(verdict, verdict(appliance, "", "supply.voltage-idle=" + volts));
  }

  @ParameterizedTest
  @ValueSource(strings = {"22.9 ohm", "15.2 ohm", "7.6 ohm"})
  void accusesNoElementThatIsSoundInStarOrDelta(String ohms) {
    Case machine = TypedJob.open(HEATER, "'stops-in-cycle': 'yes'", "heater.resistance=" + ohms);

    assertEquals(Verdict.CONFORMS, machine.findings().get(0).verdict());
    assertTrue(
        TypedJob.chance(machine, "heater.element-open") < 0.1,
        () -> "" + TypedJob.chance(machine, "heater.element-open"));
  }

  /** The three pairs of terminals tell it: twice in delta, over range in star. */
  @ParameterizedTest
  @CsvSource({"2, true", "100, true", "1, false"})
  void comparesTheThreePairs(String ratio, boolean open) {
    Case machine =
        TypedJob.open(HEATER, "'heats-slowly': 'yes'", "heater.readings-differ=" + ratio);
    double chance = TypedJob.chance(machine, "heater.element-open");

    assertTrue(open ? chance > 0.9 : chance < 0.1, () -> "" + chance);
  }

  /** 21 kW at 400 V over three conductors: 30.3 A in each. */
  @ParameterizedTest
  @CsvSource({"30.3 A,CONFORMS", "52.5 A,DOES_NOT_CONFORM"})
  void readsTheCurrentOfALine(String amperes, Verdict verdict) {
    assertEquals(verdict, verdict(HEATER, "", "heater.current=" + amperes));
  }

  /** 2400 W at 230 V are 22 ohm; a usual iron of 2.2 kW has 24 ohm. */
  @ParameterizedTest
  @CsvSource({"22 ohm,CONFORMS", "33 ohm,DOES_NOT_CONFORM"})
  void takesThePowerOfWhatTakesAllFromTheMachine(String ohms, Verdict verdict) {
    String iron = "'kind': 'iron', 'nameplate': { 'voltage': '230 V', 'power': '2400 W' }";

    assertEquals(verdict, verdict(iron, "", "air-heater.resistance=" + ohms));
  }
}
