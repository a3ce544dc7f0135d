package kelter.hydraulics;

import static kelter.hydraulics.Likely.best;
import static kelter.hydraulics.Likely.probability;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Observable;
import kelter.hydraulics.drainpump.DrainPump;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A pump that does not turn: because it gets no power, or because it is held fast. What is expected
 * of it is from memory: without voltage or with an open winding it takes no power and is silent; a
 * small motor that is held fast hums at about its rated power or above.
 */
class StandingPumpTest {

  private final List<Measurement> read = new ArrayList<>();

  private static FaultModel model(Component pump) {
    return new HydraulicsModule().parts().faultModels(SampleMachines.with(pump)).get(0);
  }

  private static Component pump(String id) {
    return id.equals("drain-pump") ? SampleMachines.drainPump() : SampleMachines.washPump();
  }

  private static int place(FaultModel model, String fault) {
    for (int i = 0; i < model.faults().size(); i++) {
      if (model.faults().get(i).id().equals(fault)) {
        return i;
      }
    }
    throw new IllegalArgumentException(fault);
  }

  /** Value and spread of an observable with one fault. */
  private static double[] forecast(
      FaultModel model, String fault, double severity, String observable) {
    double[] state = new double[model.faults().size() + model.shared().size()];
    state[place(model, fault)] = severity;
    List<Question> questions = model.questions();
    double[] value = new double[questions.size()];
    double[] spread = new double[questions.size()];
    model.forecaster(questions).forecast(state, value, spread);
    for (int i = 0; i < value.length; i++) {
      if (questions.get(i).observable().id().equals(observable)) {
        return new double[] {value[i], spread[i]};
      }
    }
    throw new IllegalArgumentException(observable);
  }

  private static double value(FaultModel model, String fault, String observable) {
    return forecast(model, fault, 0.5, observable)[0];
  }

  @ParameterizedTest
  @CsvSource({
    "drain-pump, winding-open, flow",
    "drain-pump, no-voltage, flow",
    "wash-pump, winding-open, speed",
    "wash-pump, no-voltage, speed"
  })
  void withoutPowerThereIsNothingAtAnySeverity(String id, String fault, String moved) {
    FaultModel model = model(pump(id));
    for (double severity : new double[] {0.01, 0.5, 1}) {
      for (String nothing : List.of("power", "current", "head", moved)) {
        assertEquals(0, forecast(model, fault, severity, nothing)[0], nothing);
      }
      assertTrue(forecast(model, fault, severity, "power")[1] < 2.5, "and all agree on that");
      assertTrue(forecast(model, fault, severity, "noise")[0] < 0.2, "silent is the least fifth");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"drain-pump", "wash-pump"})
  void onlyTheOpenWindingShowsOnAnOhmmeter(String id) {
    FaultModel model = model(pump(id));
    assertTrue(value(model, "winding-open", "winding-resistance") > 5e7, "beyond any meter");
    assertEquals(
        value(model, "jammed", "winding-resistance"),
        value(model, "no-voltage", "winding-resistance"));
    assertTrue(value(model, "no-voltage", "winding-resistance") < 300);
  }

  @ParameterizedTest
  @CsvSource({"drain-pump, 30", "wash-pump, 75"})
  void heldFastItHumsAtAboutItsRatedPower(String id, double rated) {
    FaultModel model = model(pump(id));
    double[] power = forecast(model, "jammed", 0.5, "power");
    assertTrue(power[0] >= rated && power[0] < 1.5 * rated, power[0] + " W");
    assertTrue(Math.abs(0.97 * rated - power[0]) < 2 * power[1], "29 of 30 W is no surprise");
    assertEquals(0, value(model, "jammed", "head"));
    double noise = value(model, "jammed", "noise");
    assertTrue(noise > 0.2 && noise < 0.4, "the second fifth of the scale is humming");
    assertTrue(value(model, "jammed", "turns") > 0.9, "stuck");
  }

  /** A bearing that drags more than the motor pulls makes it hum too. */
  @Test
  void seizedBearingHums() {
    double noise = forecast(model(SampleMachines.drainPump()), "drag", 1, "noise")[0];
    assertTrue(noise > 0.2 && noise < 0.4, "hums at " + noise);
  }

  /** From memory: drain pumps of 30 W for 230 V lie between some 100 and 250 ohm. */
  @Test
  void typicalWindings() {
    double typical = value(model(SampleMachines.drainPump()), "no-voltage", "winding-resistance");
    assertTrue(typical > 100 && typical < 250, typical + " ohm");
  }

  /**
   * IEC 60034-1 (from memory): the resistance of copper goes with 235 °C + t, so 150 ohm at 20 °C
   * are 182.4 ohm at 75 °C; IEC 60028's coefficient agrees to 0.1 %.
   */
  @Test
  void figureAtTheTemperatureOfTheWinding() {
    Component pump = SampleMachines.drainPump();
    Component known =
        new Component(
            pump.id(),
            pump.kind(),
            pump.nameplate(),
            Map.of("winding-resistance", Quantity.of(150, "Ohm", QuantityKind.RESISTANCE)),
            pump.curves(),
            pump.source());
    FaultModel model = model(known);
    assertEquals(150, value(model, "no-voltage", "winding-resistance"), 1e-9);
    Question hot =
        new Question(
            "drain-pump",
            SampleMachines.word(new DrainPump(), "winding-resistance"),
            new Conditions(
                Map.of("temperature", Quantity.of(75, "Cel", QuantityKind.TEMPERATURE))));
    double[] value = new double[1];
    double[] spread = new double[1];
    model
        .forecaster(List.of(hot))
        .forecast(new double[model.faults().size() + model.shared().size()], value, spread);
    assertEquals(182.4, value[0], 0.2);
    assertTrue(spread[0] < 0.1);
  }

  private void read(String observable, Reading reading) {
    read.add(
        new Measurement(
            "drain-pump", observable, List.of(reading), Conditions.NONE, Optional.empty(), ""));
  }

  private void figure(String observable, double value, String unit, QuantityKind kind) {
    read(observable, new Reading.Value(Quantity.of(value, unit, kind), 0));
  }

  private void word(String id, String word) {
    Observable observable = SampleMachines.word(new DrainPump(), id);
    read(observable.id(), new Reading.Grade(word, observable.grades().indexOf(word)));
  }

  private Diagnosis diagnose() {
    Appliance machine = SampleMachines.with(SampleMachines.drainPump());
    return FaultPairsTest.diagnose(machine, EngineSettings.USUAL, read.toArray(new Measurement[0]));
  }

  @Test
  void withoutPowerTheOhmmeterComesNextAndSettlesIt() {
    figure("power", 0, "W", QuantityKind.POWER);
    figure("flow", 0, "L/min", QuantityKind.FLOW);
    word("noise", "silent");
    Diagnosis open = diagnose();
    double either = probability(open, "winding-open") + probability(open, "no-voltage");
    assertTrue(either > 0.95, "either " + either);
    assertTrue(probability(open, "winding-open") > 0.3);
    assertTrue(probability(open, "no-voltage") > 0.3);
    assertEquals("winding-resistance", open.next().get(0).question().observable().id());

    read("winding-resistance", new Reading.OverRange());
    assertEquals(Set.of("winding-open"), best(diagnose()));
    assertTrue(probability(diagnose(), "winding-open") > 0.95);
    read.remove(read.size() - 1);
    figure("winding-resistance", 170, "Ohm", QuantityKind.RESISTANCE);
    assertEquals(Set.of("no-voltage"), best(diagnose()));
    assertTrue(probability(diagnose(), "no-voltage") > 0.95);
  }

  @Test
  void whatIsStuckIsJammedOrSeized() {
    word("turns", "stuck");
    figure("power", 29, "W", QuantityKind.POWER);
    word("noise", "hums");
    Diagnosis stuck = diagnose();
    assertEquals(Set.of("jammed"), best(stuck));
    assertTrue(probability(stuck, "jammed") + probability(stuck, "drag") > 0.9);
    word("debris", "none");
    assertTrue(probability(diagnose(), "drag") > probability(stuck, "drag"));
  }
}
