package kelter.core.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.uncertainty.Accuracy;
import org.junit.jupiter.api.Test;

/** Ways of measuring with errors of their own: arithmetic on the laws of JCGM 100:2008. */
class ErrorModelsTest {

  /** 0.8 % of 26.4 ohm and 3 counts of 0.1 is 0.5112 ohm; with 0.1 ohm of leads 0.3007 ohm. */
  @Test
  void whatTestLeadsLeave() {
    Connection leads = new Connection(new Accuracy(0.008, 0.3), 0.1, 0);
    assertEquals(0.3007, leads.standardUncertainty(26.4), 5e-5);
  }

  /** 2 % and 5 counts of 0.01 of 8.7 A is 0.224 A; the place in the jaws 1 %: 0.1387 A. */
  @Test
  void whereInTheClamp() {
    Connection clamp = new Connection(new Accuracy(0.02, 0.05), 0, 0.01);
    assertEquals(0.1387, clamp.standardUncertainty(8.7), 5e-5);
  }

  @Test
  void errorsThatAreNoneAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Connection(new Accuracy(0, 0), -1, 0));
  }

  @Test
  void theLibraryIsInOrder() {
    for (var instrument : InstrumentLibrary.instruments()) {
      assertTrue(instrument.typical().isPresent(), instrument.id());
      assertTrue(!instrument.functions().isEmpty(), instrument.id());
      for (var function : instrument.functions()) {
        double atEnd = function.standardUncertainty(function.end());
        assertTrue(atEnd > 0 && atEnd < 0.1 * function.end(), instrument.id());
        assertTrue(function.resolution() < 0.05 * function.end(), instrument.id());
      }
      assertEquals(instrument, InstrumentLibrary.find(instrument.id()).orElseThrow());
    }
    assertEquals(InstrumentLibrary.ids().size(), InstrumentLibrary.instruments().size());
  }
}
