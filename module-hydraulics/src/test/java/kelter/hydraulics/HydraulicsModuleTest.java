package kelter.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.List;
import java.util.Map;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.module.Computation;
import kelter.core.module.Parameter;
import kelter.core.source.Standing;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;

class HydraulicsModuleTest {

  private static final HydraulicsModule MODULE = new HydraulicsModule();

  @Test
  void isFoundAsAProvider() {
    assumeTrue(HydraulicsModule.class.getModule().isNamed(), "a class path has no descriptors");
    assertTrue(
        HydraulicsModule.class.getModule().getDescriptor().provides().stream()
            .anyMatch(
                p ->
                    p.service().equals(CalculationModule.class.getName())
                        && p.providers().equals(List.of(HydraulicsModule.class.getName()))));
  }

  @Test
  void everyCalculationHasItsOwnIdAndAUsableUsual() {
    List<Calculation> calculations = MODULE.calculations();
    assertEquals(
        calculations.size(), calculations.stream().map(Calculation::id).distinct().count());
    for (Calculation calculation : calculations) {
      double[] middle =
          calculation.parameters().stream().mapToDouble(HydraulicsModuleTest::typical).toArray();
      try {
        for (double out : calculation.law().apply(middle)) {
          assertTrue(Double.isFinite(out), calculation.id());
        }
      } catch (IllegalArgumentException apart) {
        assertFalse(apart.getMessage().isBlank(), calculation.id());
      }
    }
  }

  private static double typical(Parameter parameter) {
    return parameter.low() + 0.1 * (parameter.high() - parameter.low());
  }

  /**
   * Published is what the project had before it: the releases of IAPWS and the manual of EPANET.
   * Second-hand is what stands in a work that cites it. The rest was written down from memory, and
   * says so.
   */
  @Test
  void noSourceIsStrongerThanItIs() {
    Map<String, Standing> seen =
        Map.of(
            "water-properties", Standing.PUBLISHED,
            "steam-temperature", Standing.PUBLISHED,
            "pump-curve-head", Standing.PUBLISHED,
            "operating-point", Standing.PUBLISHED,
            "affinity-laws", Standing.SECOND_HAND,
            "specific-speed", Standing.SECOND_HAND,
            "friction-factor", Standing.SECOND_HAND,
            "hose-head-loss", Standing.SECOND_HAND);
    for (Calculation calculation : MODULE.calculations()) {
      Standing standing = seen.getOrDefault(calculation.id(), Standing.FROM_MEMORY);
      assertEquals(standing, calculation.source().standing(), calculation.id());
    }
  }

  @Test
  void wordsHaveOneMeaning() {
    assertEquals(
        MODULE.parts().kinds().size(), new Vocabulary(MODULE.parts().kinds()).kinds().size());
  }

  @Test
  void operatingPointByName() {
    Computation computation =
        Computation.of(
            MODULE.calculations().stream()
                .filter(c -> c.id().equals("operating-point"))
                .findFirst()
                .orElseThrow(),
            Map.of(
                "shut-off-head", "3.4 m",
                "flow-1", "40 l/min",
                "head-1", "2,6 m",
                "flow-2", "66 L/min",
                "head-2", "1.2 m",
                "lift", "0.3 m ± 0.01",
                "length", "1.2 m",
                "bore", "19 mm",
                "loss-coefficient", "3",
                "jet-area", "158.06 mm2"));
    // EPANET 2.3.5: 41.1011 L/min for this network (jets of 42 L/min per root of a metre).
    assertEquals(41.1011, computation.results().get(0).quantity().value(), 0.002 * 41.1011);
    assertTrue(computation.results().get(0).quantity().standardUncertainty() > 0);
  }
}
