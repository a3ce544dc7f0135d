package kelter.hydraulics.airway;

import static kelter.hydraulics.AirSamples.inOrder;
import static kelter.hydraulics.AirSamples.inTheWay;
import static kelter.hydraulics.AirSamples.model;
import static kelter.hydraulics.AirSamples.part;
import static kelter.hydraulics.AirSamples.shown;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Nameplate;
import kelter.hydraulics.AirSamples;
import kelter.hydraulics.HydraulicsModule;
import org.junit.jupiter.api.Test;

/**
 * What faults on the way of the air make of its readings, worked out by hand from the straight fan
 * line: K = 1.111 for 60 % of the open flow, q = (√(1 + 4K) − 1)/(2K).
 */
class AirwayTest {

  private static final Component FILTER = inTheWay("filter", 20);
  private static final Component DUCT = inTheWay("duct", 40);

  /** Without the filter K = 0.889 and q = 0.638: 0.6/0.638. */
  @Test
  void aFilterInOrderLeavesNearlyAllAir() {
    assertEquals(0.941, inOrder(FILTER, "flow-kept"), 0.002);
    assertTrue(inOrder(FILTER, "flow-kept") > 0.8, "conforms");
  }

  /** Forty times its loss: K = 1.111 (0.8 + 0.2·40) = 9.78, q = 0.273, 0.273/0.638. */
  @Test
  void aCloggedFilterLeavesLessThanHalf() {
    assertEquals(0.428, shown(FILTER, "clogged", 1, "flow-kept"), 0.002);
    assertEquals(0.97, shown(FILTER, "clogged", 1, "dirt"), 0.01);
    double middle = shown(FILTER, "clogged", 0.5, "flow-kept");
    assertTrue(middle > 0.428 && middle < 0.941);
  }

  @Test
  void whatIsRunWithoutItsFilterIsToldAndNothingElseIsAsked() {
    FaultModel unknown = model(part("filter"));
    assertEquals(
        List.of("dirt"), unknown.questions().stream().map(q -> q.observable().id()).toList());
  }

  /** Fifteen times 30 %: K = 1.111 (0.7 + 4.5) = 5.78, q = 0.3386; without it 0.7·1.111, 0.6605. */
  @Test
  void aSpentCharcoalFilter() {
    assertEquals(0.513, shown(inTheWay("charcoal-filter", 30), "spent", 1, "flow-kept"), 0.002);
  }

  /**
   * Off: K = 0.667, q = 0.686. Blocked, thirty times: K = 14, q = 0.234; the pressure at its start
   * is 60 Pa · 30 (0.234/0.6)². Thin, 28 Pa for 3.6 Pa: K = 4.12, q = 0.386.
   */
  @Test
  void aDuctBlockedOrThin() {
    assertEquals(0.875, inOrder(DUCT, "flow-kept"), 0.002);
    assertEquals(60, inOrder(DUCT, "back-pressure"), 1e-9);
    assertEquals(0.341, shown(DUCT, "blocked", 1, "flow-kept"), 0.002);
    assertEquals(274, shown(DUCT, "blocked", 1, "back-pressure"), 2);
    assertEquals(0.563, shown(DUCT, "thin", 1, "flow-kept"), 0.002);
    assertTrue(shown(DUCT, "thin", 0.5, "thin") > 0.75, "told by its bore");
    assertTrue(shown(DUCT, "blocked", 0.5, "thin") < 0.05);
    assertTrue(shown(DUCT, "blocked", 0.5, "inside") > 0.5, "told by looking through it");
    assertTrue(shown(DUCT, "thin", 0.5, "inside") < 0.2);
  }

  @Test
  void aStuckFlap() {
    assertTrue(shown(part("flap"), "stuck", 1, "swings") > 0.9);
    assertTrue(inOrder(part("flap"), "swings") < 0.2);
  }

  /** 12 K in order; with 35 % of the conductance 12/0.35 K, with 67.5 % 17.8 K. */
  @Test
  void aDirtyCondenserIsWarmer() {
    Component condenser = AirSamples.condenser();
    assertEquals(12, inOrder(condenser, "rise"), 1e-9);
    assertEquals(34.3, shown(condenser, "dirty", 1, "rise"), 0.05);
    assertEquals(17.8, shown(condenser, "dirty", 0.5, "rise"), 0.05);
    assertTrue(shown(part("evaporator"), "dirty", 1, "dirt") > 0.9);
  }

  /** The air heater of a dryer has the cause, so that its lint is not told twice. */
  @Test
  void theWayOfTheAirOfADryerSpeaks() {
    Appliance dryer =
        new Appliance(
            "tumble-dryer",
            "",
            "",
            "",
            Optional.empty(),
            Nameplate.UNREADABLE,
            List.of(part("filter"), part("duct"), part("condenser")));
    List<String> asked =
        new HydraulicsModule()
            .parts().faultModels(dryer).stream()
                .flatMap(model -> model.questions().stream())
                .map(question -> question.component() + "." + question.observable().id())
                .toList();
    assertTrue(
        asked.containsAll(List.of("filter.dirt", "duct.inside", "condenser.dirt")),
        asked.toString());
  }
}
