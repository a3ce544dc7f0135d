package kelter.electrical.fanwheel;

import static kelter.electrical.DriveMachines.COLD;
import static kelter.electrical.DriveMachines.forecast;
import static kelter.electrical.DriveMachines.inOrder;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What faults of a fan wheel move. */
class FanWheelTest {

  /** Each fault makes a look likelier or worse by a good part of its scale. */
  @ParameterizedTest
  @CsvSource({
    "fan.loose, fan.wobble",
    "fan.greasy, fan.dirt",
    "fan.blocked, fan.turns",
    "condenser-fan-wheel.loose, condenser-fan-wheel.wobble"
  })
  void aFaultShowsAtItsOwnPlace(String fault, String moved) {
    assertTrue(forecast(COLD, moved, fault, 0.8) > inOrder(COLD, moved) + 0.3, moved);
  }
}
