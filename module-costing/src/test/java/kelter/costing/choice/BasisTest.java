package kelter.costing.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import kelter.core.option.LearnedLives.LearnedLife;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.costing.choice.Basis.Spread;
import kelter.costing.life.ApplianceLife;
import kelter.costing.life.Weibull;
import org.junit.jupiter.api.Test;

class BasisTest {

  private static final Source INVENTED = new Source("a made-up job book", Standing.INVENTED);
  private static final Weibull STUDY = new Weibull(16, 2);

  private static Basis basis(double componentLife) {
    return new Basis(
        5,
        0,
        new ApplianceLife(List.of(STUDY)),
        componentLife,
        Map.of(
            "pump", new LearnedLife(81, 4, 3, INVENTED),
            "door", new LearnedLife(16, 2, 1, INVENTED)),
        new Costs(60, 0, 45, 45, 850, 80, 80, 0, 0),
        0,
        0,
        0.03,
        new Spread(0, 0, 0));
  }

  /**
   * By hand: a weight of 3 against 1 is three quarters. The logarithms of 16 = 2^4 and 81 = 3^4
   * give 2 * 3^3 = 54, the shapes 2 and 4 give 3.5; half of the life is 27.
   */
  @Test
  void whatIsLearnedOfAComponentIsPooledByItsWeight() {
    Basis basis = basis(0.5);
    assertEquals(3, basis.groups());
    assertEquals(
        List.of(0, 1, 2), List.of(basis.group("heater"), basis.group("door"), basis.group("pump")));
    Weibull pump = basis.component(STUDY, 2);
    assertEquals(27, pump.scale(), 1e-9);
    assertEquals(3.5, pump.shape(), 1e-12);
    Weibull other = basis.component(STUDY, 0);
    assertEquals(8, other.scale(), 1e-12);
    assertEquals(2, other.shape());
  }

  @Test
  void anySpreadIsASpread() {
    assertFalse(new Spread(0, 0, 0).isAny());
    assertTrue(new Spread(0.1, 0, 0).isAny());
    assertTrue(new Spread(0, 0.1, 0).isAny());
    assertTrue(new Spread(0, 0, 0.1).isAny());
  }
}
