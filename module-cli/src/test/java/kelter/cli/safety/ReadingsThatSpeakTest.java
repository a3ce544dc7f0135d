package kelter.cli.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.workshop.Case;
import org.junit.jupiter.api.Test;

/** Readings of which technicians know what they tell; common practice, no source. */
class ReadingsThatSpeakTest {

  private static double chance(Case machine, String fault) {
    return machine.diagnosis().faults().stream()
        .filter(each -> each.fault().key().equals(fault))
        .mapToDouble(Diagnosis.FaultProbability::probability)
        .findFirst()
        .orElseThrow();
  }

  /** What is wrong in the likeliest state. */
  private static List<String> keys(Case machine) {
    return machine.diagnosis().ranking().get(0).faults().stream()
        .map(each -> each.fault().key())
        .toList();
  }

  private static Call boilerThatTrips() {
    return Call.of("storage-water-heater").answered("trips-rcd", "yes");
  }

  private static Call insulation(String at) {
    return boilerThatTrips().read("heater", "insulation-resistance", "> 200 Mohm", at, "as-found");
  }

  /** Some leaks of heaters close while they cool, so that only a warm reading acquits. */
  @Test
  void aColdInsulationReadingDoesNotAcquitAHeaterThatMayLeakOnlyWarm() {
    double before = chance(boilerThatTrips().open(), "heater.leaking");
    double cold = chance(insulation("").open(), "heater.leaking");
    double warm = chance(insulation("\"temperature\":\"65 Cel\"").open(), "heater.leaking");

    assertTrue(before > 0.3, before + "");
    assertTrue(cold > 0.15 && cold < before, cold + "");
    assertTrue(warm < 0.03, warm + "");
  }

  @Test
  void aWarmReadingThatIsTooLowConvicts() {
    double warm =
        chance(
            boilerThatTrips()
                .read(
                    "heater",
                    "insulation-resistance",
                    "0.05 Mohm",
                    "\"temperature\":\"65 Cel\"",
                    "as-found")
                .open(),
            "heater.leaking");

    assertTrue(warm > 0.5, warm + "");
  }

  @Test
  void theDuctOfADryerThatIsFoundBlockedIsTheCause() {
    Call slow = Call.of("tumble-dryer").answered("does-not-dry", "yes").answered("weak-air", "yes");
    Case blocked = slow.read("duct", "inside", "blocked").open();

    assertEquals(List.of(), blocked.notAssessed());
    assertTrue(chance(blocked, "duct.blocked") > 0.8);
    assertTrue(chance(slow.open(), "duct.blocked") < 0.3);
    assertTrue(blocked.lockOut().row("lint").isPresent());
    double free = chance(slow.read("duct", "inside", "free").open(), "duct.blocked");
    assertTrue(free < 0.3 * chance(slow.open(), "duct.blocked"), free + "");
  }

  /** A start relay that is dead leaves both spaces warm. */
  @Test
  void aColdFreezerBesideAWarmFridgeSpeaksForDefrostFanOrFlap() {
    Call warm = Call.of("refrigerator").answered("too-warm-inside", "yes");
    Case one = warm.answered("fresh-food-only", "yes").open();
    double relay = chance(one, "start-relay.dead");

    assertTrue(relay < 0.3 * chance(warm.open(), "start-relay.dead"), relay + "");
    assertTrue(
        chance(one, "evaporator-fan.winding-open")
            > 1.5 * chance(warm.open(), "evaporator-fan.winding-open"));
    assertTrue(
        List.of(
                "defrost-heater.open",
                "thermal-cut-out.open",
                "evaporator-fan.seized",
                "fan.blocked",
                "evaporator-fan.winding-open")
            .contains(one.diagnosis().faults().get(0).fault().key()),
        one.diagnosis().faults().get(0).toString());
  }

  /** What runs freely with the filter empty is a matter of grind and dose. */
  @Test
  void waterThatRunsFreelyWithoutCoffeeAcquitsTheWayOfTheWater() {
    Call weak = Call.of("espresso-machine").answered("weak-flow", "yes");
    Case free = weak.answered("weak-without-coffee", "no").open();

    double before = weak.open().diagnosis().healthy();
    assertTrue(
        free.diagnosis().healthy() > 1.2 * before, free.diagnosis().healthy() + " " + before);
    assertTrue(chance(free, "group-screen.clogged") < chance(weak.open(), "group-screen.clogged"));
    assertEquals(
        "Does the water come slowly with the filter empty, too?",
        weak.open().vocabulary().symptom("weak-without-coffee").orElseThrow().question());
  }

  private static Call warmFridge() {
    return Call.of("refrigerator")
        .answered("fresh-food-only", "yes")
        .answered("weak-air", "yes")
        .answered("ices-up", "no");
  }

  private static Call cutOut(String reading, String at) {
    return warmFridge().read("thermal-cut-out", "resistance", reading, at, "as-found");
  }

  /** A defrost thermostat is open in a warm room, a fuse is closed: both are in order. */
  @Test
  void aDefrostCutOutThatIsOpenInAWarmRoomIsNoFault() {
    double before = chance(warmFridge().open(), "thermal-cut-out.open");
    double warm = chance(cutOut("OL", "").open(), "thermal-cut-out.open");
    double room = chance(cutOut("OL", "\"temperature\":\"21 Cel\"").open(), "thermal-cut-out.open");
    double cold =
        chance(cutOut("OL", "\"temperature\":\"-14 Cel\"").open(), "thermal-cut-out.open");
    double closed = chance(cutOut("0.1 ohm", "").open(), "thermal-cut-out.open");

    assertTrue(warm < 2 * before, warm + " after " + before);
    assertEquals(warm, room, 1e-9);
    assertTrue(cold > 0.9, cold + "");
    assertTrue(closed < 0.1 * before, closed + " after " + before);
  }

  @Test
  void aDeadFanIsTheCauseWhateverADefrostCutOutShowsInAWarmRoom() {
    Case both =
        cutOut("OL", "").read("evaporator-fan", "winding-resistance", "OL", "", "as-found").open();

    assertTrue(chance(both, "evaporator-fan.winding-open") > 0.9);
    assertTrue(
        chance(both, "thermal-cut-out.open") < 0.3, chance(both, "thermal-cut-out.open") + "");
  }

  @Test
  void aLockThatConductsBadlyNowAndThenHasABurntContact() {
    for (String kind : List.of("washing-machine", "washer-dryer", "dishwasher")) {
      Case bad =
          Call.of(kind)
              .answered("does-not-start", "sometimes")
              .answered("shows-door", "yes")
              .read("door-lock", "contact-resistance", "15 ohm", "", "as-found")
              .open();

      assertTrue(chance(bad, "door-lock.contact-burnt") > 0.8, kind);
      assertEquals("door-lock.contact-burnt", bad.diagnosis().faults().get(0).fault().key(), kind);
    }
  }

  /** A child lock, or a start that was put off: what answers once it is off was never broken. */
  @Test
  void buttonsThatAllAnswerOnceTheChildLockIsOffAreInOrder() {
    for (String kind : List.of("washing-machine", "washer-dryer", "dishwasher")) {
      Call locked = Call.of(kind).answered("does-not-start", "yes").answered("control-dead", "yes");
      Case answers =
          locked
              .read("control-board", "buttons-dead", "none")
              .read("control-board", "dark", "no")
              .open();

      assertTrue(locked.open().diagnosis().healthy() > 0.01, kind);
      double healthy = answers.diagnosis().healthy();
      assertTrue(healthy > chance(answers, "control-board.keypad-dead"), kind + " " + healthy);
    }
  }

  /** Less air leaves the food warm, and the compressor runs on. */
  @Test
  void aCompressorThatRunsOnBesideADeadFanNeedsNoSecondFault() {
    Case dead =
        warmFridge()
            .answered("runs-without-end", "yes")
            .read("evaporator-fan", "winding-resistance", "OL")
            .open();

    assertEquals(List.of("evaporator-fan.winding-open"), keys(dead));
    assertTrue(dead.diagnosis().ranking().get(0).probability() > 0.75);
  }

  /** A motor with worn brushes turns slower before it stops. */
  @Test
  void wornBrushesExplainWeakSuctionByThemselves() {
    Case worn =
        Call.of("vacuum-cleaner")
            .answered("stops-in-cycle", "sometimes")
            .answered("sparks", "yes")
            .answered("weak-suction", "yes")
            .read("brushes", "length", "4 mm")
            .read("filter", "dirt", "clean")
            .open();

    assertEquals(List.of("brushes.worn"), keys(worn));
  }

  /** A pump that pushes against scale labours, and its owner hears it. */
  @Test
  void aLoudPumpDoesNotAcquitScale() {
    Call weak = Call.of("espresso-machine").answered("weak-flow", "yes");
    double scaled = chance(weak.open(), "heater.scaled");

    double loud = chance(weak.answered("loud", "yes").open(), "heater.scaled");
    assertTrue(loud > 0.6 * scaled, loud + " after " + scaled);
  }
}
