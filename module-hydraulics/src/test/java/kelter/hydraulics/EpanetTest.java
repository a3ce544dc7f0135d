package kelter.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import kelter.core.module.Calculation;
import kelter.core.module.Computation;
import kelter.core.quantity.Quantity;
import kelter.hydraulics.water.StandardGravity;
import kelter.testkit.ledger.OutsideCheck;
import org.junit.jupiter.api.Test;

/**
 * Calculations by name against EPANET 2.3.5, whose networks and results are recorded in the folder
 * {@code epanet} of the resources. Half a per cent covers its friction factor, which is an explicit
 * one.
 */
class EpanetTest {

  private static final double TOLERANCE = 0.005;

  private static double recorded(String name) throws IOException {
    try (InputStream in = EpanetTest.class.getResourceAsStream("epanet/results.csv")) {
      String table = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      String row = table.lines().filter(l -> l.startsWith(name + ",")).findFirst().orElseThrow();
      return Double.parseDouble(row.substring(row.indexOf(',') + 1));
    }
  }

  private static Quantity result(String id, int place, Map<String, String> given) {
    Calculation calculation =
        new HydraulicsModule()
            .calculations().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
    return Computation.of(calculation, given).results().get(place).quantity();
  }

  private static void requireFlow(String name, Quantity flow) throws IOException {
    double expected = recorded(name);
    assertEquals(expected, flow.si() * 60_000, TOLERANCE * expected);
  }

  @OutsideCheck(of = "siphon-flow", against = "EPANET 2.3.5")
  @Test
  void siphon() throws IOException {
    Map<String, String> hose = Map.of("drop", "0.3 m", "length", "1.8 m", "bore", "19 mm");
    requireFlow("siphon", result("siphon-flow", 0, hose));
  }

  @OutsideCheck(of = "standpipe-overflow", against = "EPANET 2.3.5")
  @Test
  void standpipe() throws IOException {
    Map<String, String> pipe = Map.of("flow", "20 L/min", "brim-height", "0.3 m");
    requireFlow("standpipe", result("standpipe-overflow", 0, pipe));
  }

  /**
   * At 80 °C and 50 mm of water 5.707 m are available (IAPWS, see NpshTest), 1 m is needed: 4.707 m
   * are left for filter and passage.
   */
  @OutsideCheck(of = "cavitation-onset", against = "EPANET 2.3.5")
  @Test
  void cavitationBehindAPassage() throws IOException {
    Map<String, String> passage =
        Map.of("npsh-required", "1 m", "level", "0.05 m", "temperature", "80 Cel", "bore", "20 mm");
    requireFlow("suction-80C", result("cavitation-onset", 0, passage));
  }

  @OutsideCheck(of = "fill-time", against = "EPANET 2.3.5")
  @Test
  void filling() throws IOException {
    Map<String, String> supply =
        Map.of("volume", "16 L", "static-pressure", "300 kPa", "tap-flow", "20 L/min");
    requireFlow("fill", result("fill-time", 0, supply));
    assertEquals(16 / recorded("fill") * 60, result("fill-time", 1, supply).si(), 0.4);
    // 999.103 kg/m3 at 15 °C, IAPWS R6-95
    double before = recorded("fill-valve-head") * 999.103 * StandardGravity.G;
    assertEquals(before, result("fill-time", 2, supply).si(), TOLERANCE * before);
  }

  @OutsideCheck(of = "drain-time", against = "EPANET 2.3.5")
  @Test
  void draining() throws IOException {
    Map<String, String> sump =
        new HashMap<>(
            Map.of(
                "shut-off-head", "2 m",
                "flow-1", "10 L/min",
                "head-1", "1.55 m",
                "flow-2", "20 L/min",
                "head-2", "0.7 m",
                "outlet-height", "1 m",
                "length", "1.8 m",
                "bore", "19 mm",
                "water-area", "10 m2",
                "start-level", "0.2 m"));
    assertEquals(recorded("drain"), result("drain-time", 0, sump).si(), 0.002 * recorded("drain"));
    // 10 m2 by 0.2 m, in all that time
    assertEquals(
        2000 / recorded("drain") * 60, result("drain-time", 3, sump).si() * 60_000, TOLERANCE * 15);
  }
}
