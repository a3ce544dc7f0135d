package kelter.core.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words of the trade that an owner takes for something else; common practice, no source. */
class OwnersTitleTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "heater open | heater: no current gets through, though it should",
        "one element of the heater open | one element of the heater: no current gets through,"
            + " though it should",
        "heater leaks to earth | heater lets current escape to earth",
        "fan motor damp, leaks to ground | fan motor damp, lets current escape to ground",
        "check valve of the drain stuck open | check valve of the drain stuck open",
        "drain valve does not open | drain valve does not open",
        "thermostat opens too early | thermostat opens too early",
        "door gasket leaks | door gasket leaks"
      })
  void whatCurrentDoesIsTold(String title, String told) {
    assertEquals(told, OwnersTitle.of(title));
  }
}
