package kelter.electrical.door;

import static kelter.electrical.DriveMachines.WASHER;
import static kelter.electrical.DriveMachines.forecast;
import static kelter.electrical.DriveMachines.inOrder;
import static kelter.electrical.DriveMachines.read;
import static kelter.electrical.DriveMachines.verdicts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import kelter.core.check.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What faults of a door and of its lock move. */
class DoorTest {

  private static final double OPEN = 1e8;

  /** A lock without its PTC does not lock, so its contact stays open; a jammed one has its PTC. */
  @Test
  void coilContactAndBoltTellTheFaultsOfALock() {
    assertEquals(OPEN, forecast(WASHER, "door-lock.coil-resistance", "door-lock.coil-open", 1));
    assertEquals(OPEN, forecast(WASHER, "door-lock.contact-resistance", "door-lock.coil-open", 1));
    assertEquals(
        1000, forecast(WASHER, "door-lock.coil-resistance", "door-lock.contact-open", 1), 1e-9);
    assertEquals(
        0.1, forecast(WASHER, "door-lock.contact-resistance", "door-lock.jammed", 0.9), 1e-9);
    assertTrue(forecast(WASHER, "door-lock.bolt", "door-lock.jammed", 0.9) > 0.8);
    assertTrue(forecast(WASHER, "door-lock.clicks", "door-lock.coil-open", 1) < 0.1);
  }

  /** What conducts badly still conducts, and locks as before. */
  @Test
  void aBurntContactHasOhmsAndAnOpenOneHasNone() {
    double slight =
        forecast(WASHER, "door-lock.contact-resistance", "door-lock.contact-burnt", 0.1);
    double bad = forecast(WASHER, "door-lock.contact-resistance", "door-lock.contact-burnt", 0.95);

    assertTrue(slight > 0.3 && slight < 2, slight + "");
    assertTrue(bad > 20 && bad < 100, bad + "");
    assertEquals(
        inOrder(WASHER, "door-lock.clicks"),
        forecast(WASHER, "door-lock.clicks", "door-lock.contact-burnt", 0.95),
        1e-9);
  }

  /** Each fault makes a look likelier or worse by a good part of its scale. */
  @ParameterizedTest
  @CsvSource({
    "door.latch-worn, door.catches",
    "door.hinge-sags, door.hangs",
    "door.spring-broken, door.falls"
  })
  void aFaultShowsAtItsOwnPlace(String fault, String moved) {
    assertTrue(forecast(WASHER, moved, fault, 0.8) > inOrder(WASHER, moved) + 0.3, moved);
  }

  /** Latch and spring leave each other's sign as it is. */
  @Test
  void eachFaultOfADoorLeavesTheOthersSign() {
    double catches = inOrder(WASHER, "door.catches");
    assertEquals(catches, forecast(WASHER, "door.catches", "door.spring-broken", 1), 1e-9);
    double falls = inOrder(WASHER, "door.falls");
    assertEquals(falls, forecast(WASHER, "door.falls", "door.latch-worn", 1), 1e-9);
  }

  /** The limits of the trade: what conforms and what does not. */
  @ParameterizedTest
  @CsvSource({
    "door-lock, coil-resistance, 1.1 kOhm, CONFORMS",
    "door-lock, coil-resistance, 900 kOhm, DOES_NOT_CONFORM",
    "door-lock, contact-resistance, 0.2 Ohm, CONFORMS",
    "door-lock, contact-resistance, 2 MOhm, DOES_NOT_CONFORM"
  })
  void readingsAreHeldAgainstTheLimits(
      String part, String observable, String reading, Verdict verdict) {
    assertEquals(Set.of(verdict), verdicts(WASHER, read(part, observable, reading)));
  }
}
