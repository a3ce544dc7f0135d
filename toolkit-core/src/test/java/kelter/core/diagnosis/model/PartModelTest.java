package kelter.core.diagnosis.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.SharedQuantity;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Nameplate;
import kelter.core.module.Part;
import kelter.core.problem.InputException;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import org.junit.jupiter.api.Test;

/**
 * The frame of fault models on a lamp of 230 V whose values follow from Ohm's law, by hand.
 *
 * <p>In order: 529 ohm, 100 W at 230 V. All figures are invented for the test.
 */
class PartModelTest {

  private static final Source INVENTED = new Source("made up", Standing.INVENTED);
  private static final Procedure LOOK =
      new Procedure("look", 1, Hazard.NONE, new Accuracy(0.01, 0), List.of());
  private static final Characteristic AT_VOLTAGE =
      new Characteristic("voltage", "voltage while it is read", QuantityKind.VOLTAGE);
  private static final Observable POWER =
      Observable.named("power", "power")
          .quantity(QuantityKind.POWER, 0, 500)
          .at(AT_VOLTAGE)
          .by(LOOK);
  private static final Observable RESISTANCE =
      Observable.named("resistance", "resistance")
          .logarithmic(QuantityKind.RESISTANCE, new Span(1, 1e6))
          .by(LOOK);
  private static final Observable DARK = Observable.named("dark", "it is dark").by(LOOK);
  private static final Observable SOOT =
      Observable.named("soot", "soot on the glass").graded("none", "some", "black").by(LOOK);
  private static final ComponentKind LAMP =
      new ComponentKind(
          "lamp", "lamp", List.of(RESISTANCE, POWER, DARK, SOOT), List.of(), List.of());
  private static final ComponentKind SWITCH =
      new ComponentKind("switch", "switch", List.of(RESISTANCE), List.of(), List.of());

  private static final double OHM = 529;
  private static final SharedQuantity MAINS = new SharedQuantity("mains", "mains, 10 %", INVENTED);

  /** What faults change of the lamp. */
  private static final class Lamp {
    static final FigureSet ALL = new FigureSet("lamp");
    static final Figure WIRE = ALL.figure("resistance of the wire, ratio", 1);
    static final Figure MAINS = ALL.figure("voltage of the mains, ratio", 1);
    static final Figure SOOT = ALL.figure("soot on the glass, 0 to 1", 0.1);
    static final Figure DARK = ALL.figure("chance that it is dark", 0.02);
  }

  /** What faults change of a switch. */
  private static final class Contact {
    static final FigureSet ALL = new FigureSet("contact");
    static final Figure OHM = ALL.figure("resistance, Ohm", 0.1);
  }

  private record Lit(double resistance, double power) {}

  private record Burning(double voltage) implements Circumstances.Solver<Lit> {
    @Override
    public Lit in(State state) {
      double resistance = OHM * state.of(Lamp.WIRE);
      double series = resistance;
      for (State contact : state.each(Contact.ALL)) {
        series += contact.of(Contact.OHM);
      }
      double current = voltage * state.of(Lamp.MAINS) / series;
      return new Lit(resistance, current * current * resistance);
    }
  }

  private static Burning burning(Conditions conditions) {
    double voltage = conditions.si(AT_VOLTAGE, 230);
    if (voltage < 0) {
      throw new IllegalArgumentException("a voltage is not negative");
    }
    return new Burning(voltage);
  }

  private static final Work RENEW = Work.renewing("renew", "renew it", 5, 0.9);
  private static final FaultRow OPEN =
      FaultRow.fault("open", "wire open", 0.2)
          .changes(Lamp.WIRE.becomes(1e12), Lamp.DARK.becomes(0.98))
          .apartFrom("thin")
          .curedBy(RENEW);
  private static final FaultRow THIN =
      FaultRow.fault("thin", "wire thin", 0.1)
          .changes(
              Lamp.WIRE.times(1.5), Lamp.SOOT.plus(0.6), Lamp.DARK.atLeast(Course.square(0.1, 0.5)))
          .curedBy(RENEW);

  private static Component component(String id, String kind) {
    return new Component(id, kind, Nameplate.UNREADABLE, Map.of(), Map.of(), INVENTED);
  }

  private static PartModel lamp() {
    return PartModel.of("lamp", INVENTED, Lamp.ALL)
        .moves(MAINS, Lamp.MAINS.times(Course.power(1, 1.1)))
        .on(component("lamp", "lamp"), LAMP)
        .faults(OPEN, THIN)
        .looks(SOOT, Lamp.SOOT)
        .looks(DARK, Lamp.DARK);
  }

  private static Section<Lit> lit() {
    return lamp()
        .under(PartModelTest::burning)
        .observe(POWER, Lit::power, Spread.relative(0.3).lessShared().atLeast(2))
        .observe(RESISTANCE, Lit::resistance, Spread.constant(0.05));
  }

  private static double[][] forecast(FaultModel model, List<Question> asked, double... severity) {
    double[][] forecast = new double[2][asked.size()];
    model.forecaster(asked).forecast(severity, forecast[0], forecast[1]);
    return forecast;
  }

  @Test
  void questionsComeInTheOrderOfTheKind() {
    FaultModel model = lit().build();
    assertEquals(
        List.of("lamp.resistance", "lamp.power", "lamp.dark", "lamp.soot"),
        model.questions().stream().map(Question::key).toList());
  }

  /** 529 ohm and 230²/529 = 100 W; power moves with the square of the mains, 1.1² = 1.21. */
  @Test
  void aMachineInOrderIsAsTheLawSays() {
    FaultModel model = lit().build();
    double[][] order = forecast(model, model.questions(), 0, 0, 0);
    assertEquals(529, order[0][0], 1e-9);
    assertEquals(100, order[0][1], 1e-9);
    assertEquals(0.02, order[0][2], 1e-12);
    assertEquals(0.1, order[0][3], 1e-12);
    // 0.3² - 0.21² of the power is its own, beside the floor of 2 W
    assertEquals(Math.hypot(100 * Math.sqrt(0.09 - 0.0441), 2), order[1][1], 1e-9);
    assertEquals(121, forecast(model, model.questions(), 0, 0, 1)[0][1], 1e-9);
  }

  /** At severity 0.5 the wire has 1.25 times its resistance: 80 W; soot 0.1 + 0.3. */
  @Test
  void aFaultChangesWhatItsRowSays() {
    FaultModel model = lit().build();
    double[][] thin = forecast(model, model.questions(), 0, 0.5, 0);
    assertEquals(661.25, thin[0][0], 1e-9);
    assertEquals(80, thin[0][1], 1e-9);
    assertEquals(0.2, thin[0][2], 1e-12);
    assertEquals(0.4, thin[0][3], 1e-12);
  }

  /** A wire of 529 ohm in order reads half as much again where it is thin. */
  @Test
  void aFigureIsReadAsItIsOrInProportion() {
    FaultModel model =
        lamp0()
            .faults(THIN)
            .looks(RESISTANCE, Lamp.WIRE.of(OHM), Spread.constant(0.05))
            .looks(POWER, Lamp.WIRE, Spread.constant(1))
            .build();
    double[] order = forecast(model, model.questions(), 0)[0];
    assertEquals(529, order[0], 1e-9);
    assertEquals(1, order[1], 1e-12);
    double[] thin = forecast(model, model.questions(), 1)[0];
    assertEquals(793.5, thin[0], 1e-9);
    assertEquals(1.5, thin[1], 1e-12);
  }

  @Test
  void whatIsTheSameAtAnySeverityIsSaidOnce() {
    for (double severity : new double[] {1e-9, 0.5, 1}) {
      assertEquals(0.3, Course.constant(0.3).at(severity));
      assertEquals(0.3, OPEN.makes(Symptoms.LIGHT_OUT, 0.3).symptoms().get(0).at(severity));
    }
  }

  /** Halfway a line has gone half the way, what shows late a quarter, what shows early the rest. */
  @Test
  void coursesDifferInTheMiddleAndAgreeAtTheEnds() {
    for (Course course : List.of(Course.line(2, 10), Course.square(2, 10), Course.early(2, 10))) {
      assertEquals(2, course.at(0), 1e-12);
      assertEquals(10, course.at(1), 1e-12);
    }
    assertEquals(6, Course.line(2, 10).at(0.5), 1e-12);
    assertEquals(4, Course.square(2, 10).at(0.5), 1e-12);
    assertEquals(8, Course.early(2, 10).at(0.5), 1e-12);
  }

  @Test
  void whatLiesBeyondTheSpanIsToldAsItsEnd() {
    FaultModel model = lit().build();
    double[][] open = forecast(model, model.questions(), 1, 0, 0);
    assertEquals(1e6, open[0][0]);
    assertEquals(0, open[0][1], 1e-6);
  }

  /** 115 V: a quarter of 100 W. */
  @Test
  void conditionsBelongToTheQuestion() {
    FaultModel model = lit().build();
    Conditions half =
        new Conditions(Map.of("voltage", Quantity.of(115, "V", QuantityKind.VOLTAGE)));
    List<Question> asked =
        List.of(
            new Question("lamp", POWER, half),
            new Question("lamp", RESISTANCE, Conditions.NONE),
            new Question("lamp", POWER, Conditions.NONE));
    double[] values = forecast(model, asked, 0, 0, 0)[0];
    assertEquals(25, values[0], 1e-9);
    assertEquals(529, values[1], 1e-9);
    assertEquals(100, values[2], 1e-9);
  }

  @Test
  void impossibleConditionsAreTheReadersToCorrect() {
    FaultModel model = lit().build();
    Conditions below =
        new Conditions(Map.of("voltage", Quantity.of(-5, "V", QuantityKind.VOLTAGE)));
    InputException refused =
        assertThrows(
            InputException.class,
            () -> model.forecaster(List.of(new Question("lamp", POWER, below))));
    assertTrue(refused.getMessage().contains("lamp: a voltage is not negative"));
  }

  @Test
  void faultsThatExcludeEachOtherDoSoBothWays() {
    FaultModel model = lit().build();
    assertFalse(model.mayMeet(0, 1));
    assertFalse(model.mayMeet(1, 0));
    assertTrue(model.mayMeet(0, 0));
  }

  /** Two switches of 0.1 ohm each, one burnt to 529 ohm: half the current, a quarter of 100 W. */
  @Test
  void componentsHaveFiguresOfTheirOwn() {
    FaultRow burnt =
        FaultRow.fault("burnt", "contact burnt", 0.1)
            .changes(Contact.OHM.becomes(529 - 0.1))
            .curedBy(RENEW);
    FaultModel model =
        lit()
            .on(component("left", "switch"), SWITCH, Contact.ALL)
            .faults(burnt)
            .under(conditions -> state -> state)
            .observe(RESISTANCE, state -> state.of(Contact.OHM), Spread.constant(0.5))
            .on(component("right", "switch"), SWITCH, Contact.ALL)
            .faults(burnt)
            .under(conditions -> state -> state)
            .observe(RESISTANCE, state -> state.of(Contact.OHM), Spread.constant(0.5))
            .build();
    double[] order = forecast(model, model.questions(), 0, 0, 0, 0, 0)[0];
    assertEquals(100 * Math.pow(529 / 529.2, 2), order[1], 1e-9);
    double[] left = forecast(model, model.questions(), 0, 0, 1, 0, 0)[0];
    assertEquals(25, left[1], 1e-9);
    assertEquals(528.9, left[4], 1e-9);
    assertEquals(1, left[5], 1e-9); // 0.1 ohm lies below the span, which starts at 1
  }

  @Test
  void whatCannotBeIsRefusedWithAllNames() {
    FaultModel model =
        lamp()
            .under(PartModelTest::burning)
            .observe(POWER, lit -> Math.sqrt(-lit.power()), Spread.constant(1))
            .build();
    ModelDefect refused =
        assertThrows(ModelDefect.class, () -> forecast(model, model.questions(), 0, 0, 0));
    assertTrue(refused.getMessage().contains("lamp.power is NaN"), refused.getMessage());
    FaultModel flat =
        lamp().under(PartModelTest::burning).observe(POWER, Lit::power, Spread.constant(0)).build();
    ModelDefect spread =
        assertThrows(ModelDefect.class, () -> forecast(flat, flat.questions(), 1, 0, 0));
    assertTrue(spread.getMessage().startsWith("lamp, lamp.open at 1.0: "), spread.getMessage());
  }

  @Test
  void aChanceOutsideZeroToOneIsRefused() {
    FaultModel model =
        PartModel.of("lamp", INVENTED, Lamp.ALL)
            .on(component("lamp", "lamp"), LAMP)
            .faults(OPEN)
            .under(PartModelTest::burning)
            .observe(DARK, lit -> 1.01)
            .build();
    assertThrows(ModelDefect.class, () -> forecast(model, model.questions(), 0));
  }

  @Test
  void rowsThatFitNothingAreRefused() {
    assertThrows(
        ModelDefect.class, () -> lit().observe(POWER, Lit::power, Spread.constant(1)).build());
    assertThrows(
        ModelDefect.class,
        () ->
            PartModel.of("lamp", INVENTED, Lamp.ALL)
                .on(component("lamp", "lamp"), SWITCH)
                .faults(OPEN)
                .looks(SOOT, Lamp.SOOT)
                .build());
    assertThrows(ModelDefect.class, () -> lamp0().build());
  }

  private static String refusal(FaultRow row) {
    PartModel model =
        PartModel.of("lamp", INVENTED, Lamp.ALL).on(component("left", "switch"), SWITCH);
    return assertThrows(ModelDefect.class, () -> model.faults(row)).getMessage();
  }

  @Test
  void aFigureOfAnotherPartIsRefusedByItsName() {
    assertEquals(
        "lamp, fault burnt: no figure of this part: contact, resistance, Ohm",
        refusal(FaultRow.fault("burnt", "burnt", 0.1).changes(Contact.OHM.plus(1)).curedBy(RENEW)));
  }

  /** Whoever has the machine before him can mend none of them in the job. */
  @Test
  void whatCannotBeOfAFaultIsNoMistakeOfTheJob() {
    Part part =
        new Part() {
          @Override
          public List<ComponentKind> kinds() {
            return List.of(LAMP);
          }

          @Override
          public Optional<FaultModel> faultModel(Appliance appliance, Component lamp) {
            FaultRow sure = FaultRow.fault("open", "wire open", 1.2).curedBy(RENEW);
            return Optional.of(PartModel.of(lamp, LAMP, INVENTED, Lamp.ALL).faults(sure).build());
          }
        };
    Appliance machine =
        new Appliance(
            "lantern",
            "",
            "",
            "",
            Optional.empty(),
            Nameplate.UNREADABLE,
            List.of(component("lamp", "lamp")));
    assertThrows(ModelDefect.class, () -> part.faultModels(machine));
    assertTrue(refusal(FaultRow.fault("open", "open", 0.1)).contains("has a remedy"));
    assertTrue(refusal(OPEN.curedBy(Work.byHand("shake", "shake", 1, 1.9))).contains("shake"));
  }

  /** Its place would be that of a figure of another component. */
  @Test
  void aSetThatAModelHasTakesNoMoreFigures() {
    FigureSet plug = new FigureSet("plug");
    plug.figure("pins", 1);
    PartModel.of("plug", INVENTED, plug);
    IllegalStateException refused =
        assertThrows(IllegalStateException.class, () -> plug.figure("fuse", 1));
    assertEquals("plug: a model was made without fuse", refused.getMessage());
  }

  private static PartModel lamp0() {
    return PartModel.of("lamp", INVENTED, Lamp.ALL).on(component("lamp", "lamp"), LAMP);
  }
}
