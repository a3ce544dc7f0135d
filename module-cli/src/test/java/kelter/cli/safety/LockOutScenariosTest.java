package kelter.cli.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.safety.Hazard;
import kelter.core.safety.LockState;
import kelter.core.safety.lockout.LockOut;
import kelter.core.workshop.Case;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The ten scenarios of the page on locking out, and what it says of releasing. */
class LockOutScenariosTest {

  private static final String WARM = "\"temperature\":\"70 Cel\"";
  private static final String COLD = "\"temperature\":\"20 Cel\"";

  private static void assertState(LockState state, Case machine) {
    assertEquals(state, machine.lockOut().state(), machine.lockOut().rows().toString());
  }

  private static void assertNothingPowered(Case machine) {
    assertTrue(Call.most(machine).compareTo(Hazard.DEAD) <= 0, Call.next(machine).toString());
  }

  private static Call tripping() {
    return Call.of("water-boiler")
        .said("It trips the RCD after some minutes of heating.")
        .answered("trips-rcd", "yes");
  }

  @Test
  void oneABoilerTripsAfterHeating() {
    Case machine = tripping().open();
    assertState(LockState.B, machine);
    assertNothingPowered(machine);
    assertTrue(Call.next(machine).contains("heater.insulation-resistance"));
    assertTrue(machine.lockOut().text().startsWith("It trips"));

    Case cold =
        tripping()
            .read("heater", "insulation-resistance", "> 200 MOhm", COLD, "as-found")
            .left("heater", "insulation-resistance", "> 200 MOhm", COLD)
            .open();
    assertState(LockState.B, cold);
    assertNothingPowered(cold);
  }

  @Test
  void oneTheHeatUpIsItsOnlyPoweredStep() {
    Call read =
        tripping()
            .read("supply-cord", "protective-conductor-resistance", "0.1 ohm")
            .read("supply-cord", "insulation-resistance", "> 200 MOhm");
    assertFalse(read.open().lockOut().row("trips").orElseThrow().supervised());
    Case machine = read.read("heater", "insulation-resistance", "> 200 MOhm").open();
    assertTrue(machine.lockOut().row("trips").orElseThrow().supervised());
    assertNothingPowered(machine);
  }

  @Test
  void oneWarmReadingsAfterTheWorkReleaseIt() {
    Call mended =
        tripping()
            .read("heater", "insulation-resistance", "0.05 MOhm", WARM, "as-found")
            .left("supply-cord", "protective-conductor-resistance", "0.1 ohm", "")
            .left("supply-cord", "insulation-resistance", "> 200 MOhm", WARM);
    assertState(LockState.B, mended.open());
    Case done = mended.left("heater", "insulation-resistance", "> 200 MOhm", WARM).open();
    assertState(LockState.A, done);
  }

  @Test
  void oneWhereNothingIsFoundAnElectricianTestsTheCircuit() {
    Case machine =
        tripping()
            .read("supply-cord", "protective-conductor-resistance", "0.1 ohm")
            .read("supply-cord", "insulation-resistance", "> 200 MOhm", WARM, "as-found")
            .read("heater", "insulation-resistance", "> 200 MOhm", WARM, "as-found")
            .open();
    assertState(LockState.C, machine);
  }

  @Test
  void twoAWasherTinglesAndTheSinkToo() {
    Case washer = Call.of("washing-machine").said("There is a tingle at the door.").open();
    assertState(LockState.B, washer);
    Case sink =
        Call.of("washing-machine").said("There is a tingle at the door and the sink too.").open();
    assertState(LockState.C, sink);
    assertEquals(List.of(), Call.next(sink));
    assertTrue(sink.lockOut().text().contains("network operator"));
  }

  @Test
  void threeASplitSheathWhateverItsOhms() {
    Case machine =
        Call.of("water-boiler")
            .read("heater", "resistance", "17.4 ohm")
            .read("heater", "insulation-resistance", "> 200 MOhm")
            .read("heater", "sheath-damaged", "yes")
            .open();
    assertState(LockState.B, machine);
    assertNothingPowered(machine);
    assertEquals("heater", machine.diagnosis().plan().get(0).remedy().component());
  }

  @Test
  void fourAWeldedRelay() {
    Case machine =
        Call.of("water-boiler")
            .answered("too-hot", "yes")
            .read("relay", "closed-when-off", "yes")
            .open();
    assertState(LockState.B, machine);
    assertNothingPowered(machine);
  }

  @Test
  void fiveTooMuchVoltageAtTheOutlet() {
    Case machine = Call.of("washer-extractor").read("supply", "voltage-idle", "272 V").open();
    assertState(LockState.C, machine);
    assertTrue(Call.most(machine).compareTo(Hazard.NONE) <= 0, Call.next(machine).toString());
    assertState(
        LockState.B, Call.of("washer-extractor").read("supply", "voltage-idle", "231 V").open());
  }

  @Test
  void sixAHotJointInTheMachineAndInTheOutlet() {
    Call joint =
        Call.of("water-boiler")
            .read("heater", "joint-drop", "35 V", "\"current\":\"7 A\"", "as-found");
    assertState(LockState.B, joint.open());
    assertNothingPowered(joint.open());
    assertTrue(Call.next(joint.open()).stream().noneMatch(key -> key.endsWith(".current")));
    assertState(LockState.C, joint.answered("outlet-burnt", "yes").open());
  }

  /** 4 W are not 5 W, and 0.9 V are less than 1 % of 230 V. */
  @Test
  void sixAGoodJointLocksNothingOut() {
    Case machine =
        Call.of("water-boiler")
            .read("heater", "joint-drop", "0.4 V", "\"current\":\"10 A\"", "as-found")
            .open();
    assertTrue(machine.lockOut().row("hot-joint").isEmpty());
  }

  @Test
  void sevenAPluggedOvenLeaksToEarth() {
    Call oven =
        Call.of("oven")
            .answered("no-plug", "no")
            .read("supply-cord", "protective-conductor-current", "25 mA");
    assertState(LockState.B, oven.open());
    assertNothingPowered(oven.open());
    assertState(LockState.C, Call.of("oven").open());
  }

  @Test
  void sevenTheCurrentIsReadAgainOnceDeadTestsConform() {
    Call boiler =
        Call.of("water-boiler").read("supply-cord", "protective-conductor-current", "25 mA");
    LockOut before = boiler.open().lockOut();
    String current = "protective-conductor-current";
    assertFalse(before.allows("supply-cord", current, Hazard.RUNNING));
    Call dead =
        boiler
            .left("supply-cord", "protective-conductor-resistance", "0.1 ohm", "")
            .left("supply-cord", "insulation-resistance", "> 200 MOhm", "")
            .left("heater", "insulation-resistance", "> 200 MOhm", "");
    assertFalse(dead.open().lockOut().allows("supply-cord", current, Hazard.RUNNING));
    LockOut then = dead.met("look", "polarity", "filled", "one-minute").open().lockOut();
    assertEquals(LockState.B, then.state());
    assertTrue(then.allows("supply-cord", current, Hazard.RUNNING), then.toString());
    assertFalse(then.allows("heater", "power", Hazard.RUNNING));
    assertState(LockState.A, dead.left("supply-cord", current, "0.4 mA", "").open());
  }

  @Test
  void eightASlowDryerWithLint() {
    Call dryer = Call.of("tumble-dryer").said("It takes ages to dry, and there is lint behind it.");
    Case machine = dryer.open();
    assertState(LockState.B, machine);
    assertTrue(machine.lockOut().text().contains("fire"), machine.lockOut().text());
    assertFalse(Call.next(machine).contains("air-heater.air-temperature-rise"));
    Call clean = dryer.left("air-heater", "lint", "none", "");
    assertFalse(
        clean.open().lockOut().allows("air-heater", "air-temperature-rise", Hazard.RUNNING));
    LockOut cleaned =
        clean
            .left("supply-cord", "protective-conductor-resistance", "0.1 ohm", "")
            .left("supply-cord", "insulation-resistance", "> 200 MOhm", "")
            .met("look", "lint-clean", "polarity", "one-minute")
            .open()
            .lockOut();
    assertTrue(cleaned.allows("air-heater", "air-temperature-rise", Hazard.RUNNING));
    assertFalse(cleaned.allows("air-heater", "power", Hazard.RUNNING));
  }

  @Test
  void nineAMicrowaveOvenAndAGasOven() {
    Case microwave = Call.of("microwave-oven").said("It does not heat.").open();
    assertState(LockState.D, microwave);
    assertTrue(Call.most(microwave).compareTo(Hazard.NONE) <= 0, Call.next(microwave).toString());
    assertEquals(List.of(), microwave.diagnosis().plan());
    assertEquals(List.of(), microwave.diagnosis().takeAlong());
    assertEquals(List.of(), microwave.remedies());

    Case gas = Call.of("oven").said("The gas oven does not heat.").open();
    assertState(LockState.D, gas);
    assertEquals(List.of(), gas.diagnosis().plan());
    assertTrue(gas.lockOut().text().contains("gas fitter"));
  }

  @Test
  void tenAnInverterDrive() {
    String drive =
        "{\"id\":\"inverter-drive\",\"kind\":\"inverter-drive\",\"figures\":"
            + "{\"capacitance\":\"470 uF\",\"bleed-resistance\":\"220 kOhm\"},"
            + "\"source\":{\"document\":\"marked\",\"standing\":\"nameplate\"}}";
    Call washer = Call.of("washer-extractor").answered("does-not-turn", "yes");
    Case machine = washer.open("\"voltage\":\"230 V\"", drive, "");
    assertState(LockState.B, machine);
    assertTrue(machine.lockOut().text().contains("Wait 233 s"), machine.lockOut().text());
    assertTrue(machine.lockOut().text().contains("60 V or less"));
    assertTrue(washer.open().lockOut().text().contains("Wait 15 min or as marked, then measure."));
    LockOut lockOut = machine.lockOut();
    assertFalse(lockOut.allows("motor", "winding-resistance", Hazard.DEAD));
    assertTrue(lockOut.allows("inverter-drive", "dc-link-voltage", Hazard.DEAD));
    assertTrue(lockOut.allows("supply-cord", "protective-conductor-resistance", Hazard.DEAD));
    assertTrue(lockOut.allows("heater", "power", Hazard.RUNNING));
    Case read = washer.read("inverter-drive", "dc-link-voltage", "12 V").open();
    assertState(LockState.A, read);
    assertTrue(read.lockOut().allows("motor", "winding-resistance", Hazard.DEAD));
    Case charged = washer.read("inverter-drive", "dc-link-voltage", "310 V").open();
    assertState(LockState.B, charged);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"It smells of gas here.", "The CO alarm went off.", "A gas leak, I think."})
  void gasIsForTheGasEmergencyLine(String said) {
    Case machine = Call.of("washing-machine").said(said).open();
    assertState(LockState.D, machine);
    assertEquals(List.of(), Call.next(machine));
    assertEquals(List.of(), machine.diagnosis().plan());
    assertFalse(machine.lockOut().text().toLowerCase(java.util.Locale.ROOT).contains("switch off"));
  }

  @Test
  void whatIsDeniedOrDoubtfulIsAskedOnce() {
    Call denied = Call.of("washing-machine").said("It stands still. There is no smell of gas.");
    assertState(LockState.A, denied.open());
    assertEquals(List.of("smells-of-gas"), denied.open().lockOut().ask());
    assertEquals(List.of(), denied.answered("smells-of-gas", "no").open().lockOut().ask());
    Call unsure = Call.of("washing-machine").said("Maybe it smells of gas.");
    assertState(LockState.D, unsure.open());
    assertEquals(List.of("smells-of-gas"), unsure.open().lockOut().ask());
    assertState(LockState.A, unsure.answered("smells-of-gas", "no").open());
  }

  @Test
  void aRecordReleasesOnlyWhatWaitsForOne() {
    Call gas = Call.of("washing-machine").said("It smells of gas.");
    assertState(
        LockState.A, gas.open("", "", "\"gas-smell\":\"gas engineer, 29 November: tight\""));
    Exception refused =
        org.junit.jupiter.api.Assertions.assertThrows(
            kelter.core.problem.InputException.class,
            () -> gas.open("", "", "\"insulation\":\"looks good\""));
    assertTrue(refused.getMessage().contains("record releases"), refused.getMessage());
  }

  /** Without signs of a leak only the sealed circuit is barred. */
  @Test
  void aRefrigeratorIsAsUsualButForItsCircuit() {
    Call cold = Call.of("refrigerator").answered("too-warm-inside", "yes");
    Case machine = cold.open();
    assertState(LockState.A, machine);
    LockOut lockOut = machine.lockOut();
    assertFalse(lockOut.mends("sealed-circuit"));
    assertTrue(lockOut.mends("start-relay"));
    assertTrue(lockOut.mends("compressor-winding"));
    assertTrue(lockOut.allows("compressor-winding", "winding-resistance", Hazard.DEAD));
    for (Diagnosis.PlanStep step : machine.diagnosis().plan()) {
      assertNotEquals("sealed-circuit", step.remedy().component());
    }
    Case hissing = cold.said("It hisses at the back.").open();
    assertState(LockState.D, hissing);
    assertEquals(List.of(), hissing.diagnosis().plan());
  }

  @ParameterizedTest
  @CsvSource({
    "storage-water-heater, C, pressure-heater",
    "espresso-machine, B, steam-boiler",
    "hob, C, fixed-wiring",
    "oven, C, fixed-wiring",
    "tumble-dryer, A, refrigerant-circuit",
    "kettle, A,"
  })
  void aKindLocksOutByItself(String kind, LockState state, String row) {
    Case machine = Call.of(kind).open();
    assertState(state, machine);
    if (row != null) {
      assertTrue(machine.lockOut().row(row).isPresent(), kind);
    }
  }

  /** A likely fault whose test is not in keeps the power off; its test goes first. */
  @Test
  void aSuspicionComesFirst() {
    Call dryer =
        Call.of("tumble-dryer").answered("does-not-dry", "yes").answered("weak-air", "yes");
    Case machine = dryer.open();
    assertTrue(machine.lockOut().goesFirst("air-heater", "lint"), machine.lockOut().toString());
    assertEquals("air-heater.lint", Call.next(machine).get(0));
    assertNothingPowered(machine);
    assertFalse(machine.diagnosis().basis().enough());
    Case clean = dryer.read("air-heater", "lint", "none").open();
    assertFalse(clean.lockOut().goesFirst("air-heater", "lint"));
  }

  @Test
  void wordsOfTheMarketAreUsed() {
    Call open = Call.of("kettle").read("supply-cord", "protective-conductor-resistance", "5 ohm");
    assertTrue(open.open().lockOut().text().contains("earth"));
    assertTrue(open.in("NA").open().lockOut().text().contains("ground"));
  }

  /** Ranges of North America have a cord, built-in ovens none: isolated until somebody tells. */
  @Test
  void whetherARangeHasAPlugIsAskedAndLocksUntilItIsTold() {
    Call range = Call.of("oven").answered("stays-cold", "yes");
    assertState(LockState.C, range.open());
    assertEquals(List.of("no-plug"), range.open().lockOut().ask());

    Case plugged = range.answered("no-plug", "no").open();
    assertState(LockState.A, plugged);
    assertEquals(List.of(), plugged.lockOut().ask());
    assertState(LockState.C, range.answered("no-plug", "yes").open());
    assertEquals(List.of(), range.answered("no-plug", "yes").open().lockOut().ask());
    assertEquals(List.of(), Call.of("induction-hob").open().lockOut().ask());
  }
}
