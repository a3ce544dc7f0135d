package kelter.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import org.junit.jupiter.api.Test;

/** What the models of water forecast, by hand from the laws that they name. */
class WaterForecastsTest {

  private static final double ML_PER_MIN = 1e-6 / 60;

  private static final Appliance ESPRESSO = machine("espresso-machine");

  private static final Appliance STORE = machine("storage-water-heater");

  private static Appliance machine(String kind) {
    return SampleWaterParts.all().stream()
        .filter(each -> each.kind().equals(kind))
        .findFirst()
        .orElseThrow();
  }

  private static double of(Appliance machine, String question, String fault) {
    for (FaultModel model : new HydraulicsModule().parts().faultModels(machine)) {
      List<Question> questions = model.questions();
      List<String> faults = model.faults().stream().map(Fault::key).toList();
      for (int i = 0; i < questions.size(); i++) {
        Question asked = questions.get(i);
        if ((asked.component() + "." + asked.observable().id()).equals(question)) {
          double[] state = new double[faults.size() + model.shared().size()];
          if (!fault.isEmpty()) {
            state[faults.indexOf(fault)] = 1;
          }
          double[] value = new double[questions.size()];
          model.forecaster(questions).forecast(state, value, new double[value.length]);
          return value[i];
        }
      }
    }
    throw new AssertionError("no forecast of " + question);
  }

  /**
   * A straight line from 575 mL/min to 15 bar meets openings that take 1 bar at 500 mL/min
   * together: 15 (1 - q / 575) = (q / 500)² at q = 531.7 mL/min, and 0.8 bar without the screen at
   * 539.3 mL/min.
   */
  @Test
  void theWaterOfAnEspressoMeetsJetAndScreen() {
    assertEquals(531.7, of(ESPRESSO, "group-screen.flow-with", "") / ML_PER_MIN, 0.05);
    assertEquals(539.3, of(ESPRESSO, "group-screen.flow-without", "") / ML_PER_MIN, 0.05);
  }

  /** What is clogged takes more, and a screen that is out takes nothing. */
  @Test
  void aCloggedScreenIsToldFromABlockedJetByTakingItOut() {
    double with = of(ESPRESSO, "group-screen.flow-with", "");
    double without = of(ESPRESSO, "group-screen.flow-without", "");
    assertTrue(of(ESPRESSO, "group-screen.flow-with", "group-screen.clogged") < 0.5 * with);
    assertEquals(without, of(ESPRESSO, "group-screen.flow-without", "group-screen.clogged"), 1e-12);
    assertTrue(of(ESPRESSO, "group-screen.flow-with", "jet.blocked") < 0.5 * with);
    assertTrue(of(ESPRESSO, "group-screen.flow-without", "jet.blocked") < 0.5 * without);
  }

  /**
   * A store that mixes falls from 60 °C towards 10 °C by 50 (1 - exp(-1/5)) = 9.06 K once a fifth
   * has been drawn; one that keeps its layers by far less.
   */
  @Test
  void aBrokenDipTubeMixesTheStore() {
    assertEquals(9.06, of(STORE, "dip-tube.early-drop", "dip-tube.broken"), 0.3);
    assertTrue(of(STORE, "dip-tube.early-drop", "") < 4);
  }

  /**
   * From 0.4 to 0.9 of hot water at 60 °C and cold at 10 °C are 25 K; a stuck valve goes nowhere.
   */
  @Test
  void aMixingValveGoesFromStopToStop() {
    assertEquals(25, of(STORE, "mixing-valve.range", ""), 1e-9);
    assertTrue(of(STORE, "mixing-valve.range", "mixing-valve.stuck") < 3);
  }

  /** 1.8 m of 19 mm hold 0.51 L: little of it runs back past a good valve, most without one. */
  @Test
  void anOpenCheckValveLetsTheHoseRunBack() {
    Appliance washer = SampleMachines.with(SampleMachines.drainPump());
    double content = Math.PI / 4 * 0.019 * 0.019 * 1.8;
    assertTrue(of(washer, "drain-pump.returned-volume", "") < 0.15 * content);
    double open = of(washer, "drain-pump.returned-volume", "drain-pump.valve-open");
    assertTrue(open > 0.85 * content && open < content, open + " m3");
  }

  /** Only a tank that is taken out can sit off its seat, only one that is not rinsed has grit. */
  @Test
  void aTankIsAskedWhatItsMachineAllows() {
    assertEquals(List.of("drained-water"), ofTank("storage-water-heater"));
    assertEquals(List.of("badly-seated"), ofTank("dehumidifier"));
    assertEquals(List.of(), ofTank("iron"));
    assertEquals(List.of("badly-seated", "drained-water"), ofTank("other"));
  }

  private static List<String> ofTank(String kind) {
    Component tank = SampleWaterParts.part("tank");
    List<String> asked = new ArrayList<>();
    for (FaultModel model :
        new HydraulicsModule().parts().faultModels(SampleWaterParts.machine(kind, List.of(tank)))) {
      model.questions().stream()
          .map(each -> each.observable().id())
          .filter(List.of("badly-seated", "drained-water")::contains)
          .sorted()
          .forEach(asked::add);
    }
    return asked;
  }
}
