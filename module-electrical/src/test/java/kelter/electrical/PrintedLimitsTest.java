package kelter.electrical;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import kelter.core.module.Calculation;
import kelter.core.module.Computation;
import kelter.core.module.Parameter;
import kelter.core.problem.InputException;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every limit that a calculation prints is one that it takes, with finite results, and so is every
 * word of a choice. The other figures are ordinary ones; where these contradict the limit, figures
 * within the printed limits that go with it.
 */
class PrintedLimitsTest {

  /** What must be given, by parameter or by calculation and parameter. */
  private static final Map<String, String> ORDINARY =
      table(
          """
          power | 2 kW
          voltage | 230 V
          actual | 225 V
          current | 8.7 A
          ground-fault-interrupter current | 20 mA
          resistance | 26 Ohm
          platinum-temperature resistance | 107.8 Ohm
          coil-impedance resistance | 12 Ohm
          solenoid-current resistance | 3800 Ohm
          thermistor-temperature resistance | 5 kOhm
          sensor-from-voltage voltage | 2.5 V
          sensor-line voltage | 2.5 V
          mass | 10 kg
          rise | 40 K
          rate | 2 K/min
          surface | 300 cm2
          thickness | 1 mm
          capacitance | 10 uF
          insulation | 1 GOhm
          reading | 26.8 Ohm
          leads | 0.4 Ohm
          length | 2 m
          section | 1.5 mm2
          gauge | 18
          temperature | 60 Cel
          before | 20 Ohm
          after | 25 Ohm
          r25 | 10 kOhm
          beta | 3950 K
          frequency | 50 Hz
          tacho-speed pulses | 8
          flow-sensor pulses | 450 /L
          v1 | 400 V
          v2 | 402 V
          v3 | 398 V
          winding-balance r1 | 10 Ohm
          winding-balance r2 | 10.1 Ohm
          winding-balance r3 | 9.9 Ohm
          thermistor-temperature r1 | 32650 Ohm
          thermistor-temperature t1 | 0 Cel
          thermistor-temperature r2 | 10000 Ohm
          thermistor-temperature t2 | 25 Cel
          thermistor-temperature r3 | 678.4 Ohm
          thermistor-temperature t3 | 100 Cel
          ab | 10 Ohm
          bc | 20 Ohm
          ca | 30 Ohm
          speed | 1400 /min
          poles | 4
          expected | 28 Ohm
          reactance | 220 Ohm
          series | 10 kOhm
          out | 8 H
          seated | 17 H
          inductance | 1 H
          idle | 230 V
          loaded | 226 V
          drop | 0.3 V
          belt-tension mass | 0.11 kg/m
          span | 0.17 m
          driving-speed | 2800 /min
          driving-diameter | 11.5 mm
          driven-speed | 52 /min
          driven-diameter | 580 mm
          brush-life length | 30 mm
          brush-life rate | 0.04 mm/h
          balls | 8
          ratio | 0.2
          remaining | 0.13
          """);

  /** Whole numbers, and a section that must be one of a table. */
  private static final Set<String> EXACT =
      Set.of(
          "heater-connection elements",
          "wire-gauge gauge",
          "motor-slip poles",
          "bearing-frequencies balls",
          "damped-swing swings",
          "conductor-resistance section");

  /** What goes with a limit, by calculation, parameter and end. */
  private static final Map<String, String> TOGETHER =
      table(
          """
          platinum-temperature resistance low | r0=1 Ohm
          platinum-temperature resistance high | r0=10 kOhm
          platinum-temperature r0 low | resistance=1.2 Ohm
          platinum-temperature r0 high | resistance=12 kOhm
          sensor-from-voltage voltage high | supply=50 V
          sensor-from-voltage supply low | voltage=0.2 V
          sensor-line voltage low | at-zero=0 V; at-full=5 V
          sensor-line voltage high | at-zero=0 V; at-full=50 V
          sensor-line at-full low | at-zero=5 V
          power-factor power high | voltage=1000 V; current=200 A
          power-factor voltage low | power=1 W; current=20 A
          power-factor current low | power=0.1 W
          coil-impedance voltage low | current=0.1 mA
          coil-impedance current high | resistance=2 Ohm
          coil-impedance resistance high | voltage=1000 V; current=0.1 mA
          solenoid-current out high | seated=1000 H
          solenoid-current seated low | out=0 H
          source-impedance idle low | loaded=1 V
          source-impedance loaded high | idle=1000 V
          thermistor-temperature r1 low | t1=300 Cel; r2=53.04 Ohm; t2=100 Cel; r3=2963 Ohm; t3=0 Cel
          thermistor-temperature r2 low | t2=300 Cel; r1=53.04 Ohm; t1=100 Cel; r3=2963 Ohm; t3=0 Cel
          thermistor-temperature r3 low | t3=300 Cel; r1=53.04 Ohm; t1=100 Cel; r2=2963 Ohm; t2=0 Cel
          thermistor-temperature r1 high | t1=-50 Cel; r2=7169 kOhm; t2=0 Cel; r3=1030 kOhm; t3=50 Cel
          thermistor-temperature r2 high | t2=-50 Cel; r1=7169 kOhm; t1=0 Cel; r3=1030 kOhm; t3=50 Cel
          thermistor-temperature r3 high | t3=-50 Cel; r1=7169 kOhm; t1=0 Cel; r2=1030 kOhm; t2=50 Cel
          thermistor-temperature t1 low | r1=669.1 kOhm
          thermistor-temperature t2 low | r2=669.1 kOhm
          thermistor-temperature t3 low | r3=669.1 kOhm
          thermistor-temperature t1 high | r1=13.77 Ohm
          thermistor-temperature t2 high | r2=13.77 Ohm
          thermistor-temperature t3 high | r3=13.77 Ohm
          """);

  private static Map<String, String> table(String text) {
    return text.lines()
        .map(line -> line.split(" \\| "))
        .collect(Collectors.toMap(cells -> cells[0], cells -> cells[1]));
  }

  static List<Calculation> calculations() {
    return new ElectricalModule().calculations();
  }

  @ParameterizedTest
  @MethodSource("calculations")
  void everyLimitIsTaken(Calculation calculation) {
    List<String> refused = new ArrayList<>();
    for (Parameter parameter : calculation.parameters()) {
      if (parameter.choices().isEmpty()) {
        ends(calculation, parameter, "low", parameter.low(), refused);
        ends(calculation, parameter, "high", parameter.high(), refused);
      }
      for (String word : parameter.choices()) {
        tryOut(calculation, parameter, word, word, refused);
      }
    }
    assertTrue(refused.isEmpty(), String.join("\n", refused));
  }

  /** The limit as it is printed, by itself and with an accuracy of 1 % beside ordinary figures. */
  private static void ends(
      Calculation calculation, Parameter parameter, String end, double si, List<String> refused) {
    Quantity limit = Quantity.ofSi(si, 0, parameter.kind());
    tryOut(calculation, parameter, end, limit.display(), refused);
    String key = calculation.id() + " " + parameter.id();
    if (!EXACT.contains(key) && !TOGETHER.containsKey(key + " " + end)) {
      double accuracy = limit.value() == 0 ? 1e-9 * parameter.high() : 0.01 * limit.value();
      String doubtful = limit.display() + " ± " + QuantityFormat.plain(Math.abs(accuracy));
      tryOut(calculation, parameter, end, doubtful, refused);
    }
  }

  private static void tryOut(
      Calculation calculation, Parameter tried, String end, String text, List<String> refused) {
    Map<String, String> given = ordinary(calculation);
    String key = calculation.id() + " " + tried.id() + " " + end;
    if (TOGETHER.containsKey(key)) {
      for (String pair : TOGETHER.get(key).split("; ")) {
        given.put(pair.split("=")[0], pair.split("=")[1]);
      }
    }
    given.put(tried.id(), text);
    try {
      for (Computation.Result result : Computation.of(calculation, given).results()) {
        assertTrue(Double.isFinite(result.quantity().si()), key + ": " + result.output().id());
      }
    } catch (InputException no) {
      refused.add(key + " = " + text + ": " + no.getMessage());
    }
  }

  private static Map<String, String> ordinary(Calculation calculation) {
    Map<String, String> given = new HashMap<>();
    for (Parameter parameter : calculation.parameters()) {
      if (parameter.usual().isEmpty()) {
        String own = ORDINARY.get(calculation.id() + " " + parameter.id());
        given.put(parameter.id(), own != null ? own : ORDINARY.get(parameter.id()));
      }
    }
    return given;
  }

  /** All corners of what may be given: a contradiction is told, an overflow never met. */
  @ParameterizedTest
  @MethodSource("calculations")
  void noCornerOverflows(Calculation calculation) {
    List<Parameter> parameters = calculation.parameters();
    for (int corner = 0; corner < 1 << parameters.size(); corner++) {
      double[] x = new double[parameters.size()];
      for (int i = 0; i < x.length; i++) {
        boolean high = (corner >> i & 1) == 1;
        x[i] = high ? parameters.get(i).high() : parameters.get(i).low();
      }
      try {
        for (double result : calculation.law().apply(x)) {
          assertTrue(Double.isFinite(result), calculation.id() + " " + List.of(corner, result));
        }
      } catch (IllegalArgumentException contradiction) {
        assertFalse(contradiction.getMessage().contains("NaN"), contradiction.getMessage());
      }
    }
  }
}
