package kelter.core.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class TaxRateTest {

  @Test
  void aRateIsReadAsItIsWritten() {
    assertEquals("21 %", TaxRate.parse(" 21% ").format());
    assertEquals("7.5 %", TaxRate.parse("7,50 %").format());
    assertEquals("8.875 %", TaxRate.parse("8.875 %").format());
    assertEquals("0 %", TaxRate.parse("0.0 %").format());
    assertEquals("100 %", TaxRate.parse("100 %").format());
    assertEquals(TaxRate.parse("20 %"), TaxRate.parse("20.00 %"));
  }

  @Test
  void whatIsNoRateIsRefused() {
    for (String wrong : new String[] {"21", "0.21", "-1 %", "101 %", "1e1 %", "", "%", "٢١ %"}) {
      assertThrows(IllegalArgumentException.class, () -> TaxRate.parse(wrong), wrong);
    }
  }
}
