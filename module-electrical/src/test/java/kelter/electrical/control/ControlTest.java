package kelter.electrical.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.job.Appliance;
import kelter.electrical.Forecasts;
import kelter.electrical.Jobs;
import kelter.electrical.SampleMachines;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What tells board from load, and what small electronics give. */
class ControlTest {

  private static final Appliance MACHINE = SampleMachines.CONTROLS;

  /** A load that is called for has the mains; behind a dead output less than a meter tells. */
  @Test
  void aDeadOutputLeavesItsLoadWithoutVoltage() {
    assertEquals(230, Forecasts.of(MACHINE, "board.load-voltage"), 1e-9);
    for (String fault : new String[] {"board.output-dead", "board.supply-dead"}) {
      assertEquals(1, Forecasts.of(MACHINE, "board.load-voltage", 0.5, fault), 1e-9);
      assertTrue(Forecasts.of(MACHINE, "board.load-ignored", 0.5, fault) > 0.9);
    }
  }

  /**
   * A relay or triac in order is open on a meter; one that is welded or shorted has under 1 Ohm.
   */
  @Test
  void aWeldedOutputConductsThoughTheBoardIsOff() {
    assertTrue(Forecasts.of(MACHINE, "board.output-resistance") > 1e6);
    assertTrue(Forecasts.of(MACHINE, "board.output-resistance", 0.5, "board.output-welded") < 1);
  }

  /** Each fault of a board has a sign that the others lack, without live work. */
  @ParameterizedTest
  @CsvSource({
    "output-dead, load-ignored, keypad-dead",
    "supply-dead, dark, output-dead",
    "output-welded, load-stays-on, supply-dead",
    "keypad-dead, buttons-dead, output-dead",
    "track-burnt, burns, supply-dead",
    "defrost-dead, defrost-ignored, output-dead"
  })
  void eachFaultHasASignOfItsOwn(String fault, String sign, String other) {
    String question = "board." + sign;
    double alone = Forecasts.of(MACHINE, question, 0.5, "board." + fault);
    assertTrue(alone > Forecasts.of(MACHINE, question) + 0.4, question);
    assertTrue(alone > Forecasts.of(MACHINE, question, 0.5, "board." + other) + 0.25, question);
  }

  /** A washing machine is not asked for its defrost. */
  @Test
  void onlyWhatDefrostsIsAskedForIt() {
    Appliance washer = Jobs.appliance(Jobs.component("board", "control-board"));
    assertThrows(AssertionError.class, () -> Forecasts.of(washer, "board.defrost-ignored"));
  }

  /** A toaster of 2 to 4 minutes that drifts browns for up to twice the time: from memory. */
  @Test
  void aTimerThatDriftsGivesMoreThanIsSet() {
    assertEquals(1, Forecasts.of(MACHINE, "timer.over-setting"), 1e-9);
    assertTrue(Forecasts.of(MACHINE, "timer.over-setting", 0.1, "timer.drifts") > 1.25);
    assertEquals(2.2, Forecasts.of(MACHINE, "timer.over-setting", 1, "timer.drifts"), 1e-9);
    assertTrue(Forecasts.of(MACHINE, "timer.does-nothing", 1, "timer.dead") > 0.9);
    assertTrue(Forecasts.of(MACHINE, "timer.conducts-no-way", 1, "timer.open") > 0.9);
  }

  @Test
  void aHumiditySensorIsOffOrFrozen() {
    assertTrue(Forecasts.of(MACHINE, "humidity.off-by") < 0.1);
    assertTrue(Forecasts.of(MACHINE, "humidity.off-by", 0.5, "humidity.drifts") > 0.2);
    assertTrue(Forecasts.of(MACHINE, "humidity.frozen", 0.5, "humidity.drifts") < 0.1);
    assertTrue(Forecasts.of(MACHINE, "humidity.frozen", 0.5, "humidity.dead") > 0.9);
    assertTrue(Forecasts.of(MACHINE, "tariff.stays-off", 0.5, "tariff.dead") > 0.9);
  }
}
