package kelter.hydraulics;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import kelter.core.module.Calculation;
import kelter.testkit.PrintedLimits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every limit that a calculation prints is one that it takes. */
class PrintedLimitsTest {

  /** Figures of an ordinary machine, by parameter, where nothing is usual. */
  private static final Map<String, String> ORDINARY =
      Map.ofEntries(
          Map.entry("temperature", "40 Cel"),
          Map.entry("reynolds", "20000"),
          Map.entry("flow", "15 L/min"),
          Map.entry("length", "1.8 m"),
          Map.entry("bore", "19 mm"),
          Map.entry("open", "50 %"),
          Map.entry("pressure", "10 kPa"),
          Map.entry("area", "100 mm2"),
          Map.entry("outlet-pressure", "20 kPa"),
          Map.entry("shut-off-head", "2 m"),
          Map.entry("flow-1", "10 L/min"),
          Map.entry("head-1", "1.55 m"),
          Map.entry("flow-2", "20 L/min"),
          Map.entry("head-2", "0.7 m"),
          Map.entry("head", "1 m"),
          Map.entry("speed", "3000 /min"),
          Map.entry("new-speed", "3600 /min"),
          Map.entry("electric-power", "30 W"),
          Map.entry("lift", "0.8 m"),
          Map.entry("outlet-height", "1 m"),
          Map.entry("water-area", "0.1 m2"),
          Map.entry("start-level", "0.2 m"),
          Map.entry("drop", "0.3 m"),
          Map.entry("rising-length", "1 m"),
          Map.entry("level", "0.05 m"),
          Map.entry("npsh-required", "1 m"),
          Map.entry("driving-area", "30 mm2"),
          Map.entry("radius", "0.2 m"),
          Map.entry("diameter", "50 mm"),
          Map.entry("kv", "12 L/min"),
          Map.entry("pressure-drop", "1 bar"),
          Map.entry("volume", "16 L"),
          Map.entry("static-pressure", "3 bar"),
          Map.entry("tap-flow", "20 L/min"),
          Map.entry("height", "100 mm"),
          Map.entry("start", "1000 Pa"),
          Map.entry("end", "900 Pa"),
          Map.entry("time", "60 s"),
          Map.entry("brim-height", "0.3 m"),
          Map.entry("power", "30 W"),
          Map.entry("loss-ratio", "4"),
          Map.entry("humidity", "50 %"),
          Map.entry("water", "4 kg"),
          Map.entry("sealed-suction", "20 kPa"),
          Map.entry("open-flow", "33 L/s"),
          Map.entry("leak-area", "100 mm2"),
          Map.entry("velocity", "5 m/s"),
          Map.entry("ice", "0.4 kg"),
          Map.entry("difference", "20 K"),
          Map.entry("load", "60 W"),
          Map.entry("capacity", "130 W"));

  /** What is different about a trickle in a model of a pump. */
  private static final Map<String, String> SMALL =
      Map.ofEntries(
          Map.entry("shut-off-head", "0.01 m"),
          Map.entry("flow-1", "0.011 L/min"),
          Map.entry("head-1", "0.006 m"),
          Map.entry("flow-2", "0.012 L/min"),
          Map.entry("head-2", "0 m"),
          Map.entry("lift", "0 m"),
          Map.entry("outlet-height", "0.02 m"),
          Map.entry("start-level", "0.015 m"),
          Map.entry("flow", "0.001 L/min"),
          Map.entry("speed", "60 rpm"),
          Map.entry("new-speed", "60 rpm"),
          Map.entry("head", "0.01 m"),
          Map.entry("start", "1 Pa"),
          Map.entry("end", "0.5 Pa"));

  /** What is different about waterworks. */
  private static final Map<String, String> LARGE =
      Map.ofEntries(
          Map.entry("shut-off-head", "200 m"),
          Map.entry("flow-1", "3000 L/min"),
          Map.entry("head-1", "190 m"),
          Map.entry("flow-2", "6000 L/min"),
          Map.entry("head-2", "180 m"),
          Map.entry("outlet-height", "6 m"),
          Map.entry("start-level", "5 m"),
          Map.entry("speed", "60000 rpm"),
          Map.entry("new-speed", "60000 rpm"),
          Map.entry("electric-power", "100 kW"),
          Map.entry("start", "100 kPa"));

  /** What is different about air. */
  private static final Map<String, String> AIR =
      Map.of("flow", "42 L/s", "bore", "100 mm", "power", "2300 W");

  static List<Calculation> calculations() {
    return new HydraulicsModule().calculations();
  }

  @ParameterizedTest
  @MethodSource("calculations")
  void everyLimitIsTaken(Calculation calculation) {
    List<String> refused =
        new PrintedLimits(ORDINARY, List.of(SMALL, LARGE, AIR)).refused(calculation);
    assertTrue(refused.isEmpty(), String.join("\n", refused));
  }
}
