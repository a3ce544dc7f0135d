package kelter.cli.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.file.catalogue.KindFile;
import kelter.core.job.Conditions;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What should conduct and reads over range is open: that leads in every kind, at every part that a
 * fault can open, with nothing else told. A meter that shows some megohms says the same.
 */
class OpenConductorTest {

  /** From here on a path is open, Ohm: {@code OpenContact} holds open ones against it. */
  private static final double OPEN = 1e6;

  /** The most that may be left to what nobody knows, and to a machine in order. */
  private static final double LITTLE = 0.05;

  /** The same where a meter showed some megohms. */
  private static final double OF_MEGOHMS = 0.1;

  private static final int YEARS = 8;

  static List<String> kinds() {
    return KindFile.shipped();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void isNamed(String kind) {
    List<String> wrong = new ArrayList<>();
    int tried = 0;
    for (FaultModel model : new TrueKind(Calls.TOOL, kind, YEARS).usualModels()) {
      for (Question question : model.questions()) {
        Set<String> opening = opening(model, question);
        if (!opening.isEmpty()) {
          tried++;
          List<Reading> shown = List.of(new Reading.OverRange(), ohms(1e7));
          for (Reading reading : shown) {
            Diagnosis diagnosis = diagnosis(kind, List.of(of(question, reading)));
            double most = reading instanceof Reading.OverRange ? LITTLE : OF_MEGOHMS;
            String lead = diagnosis.faults().get(0).fault().key();
            if (!opening.contains(lead)
                || diagnosis.unexplained().probability() > most
                || diagnosis.healthy() > most) {
              wrong.add(
                  "%s %s: %s %.2f, nobody knows %.2f, in order %.2f"
                      .formatted(
                          question.key(),
                          reading.display(),
                          lead,
                          diagnosis.faults().get(0).probability(),
                          diagnosis.unexplained().probability(),
                          diagnosis.healthy()));
            }
          }
        }
      }
    }

    assertEquals(List.of(), wrong);
    assertTrue(tried > 0, kind);
  }

  /** A cord that drops out is broken whatever its ends leave between them. */
  @ParameterizedTest
  @ValueSource(doubles = {3, 10, 1e3, 1e5, 1e6, 5e6, 5e7, Double.POSITIVE_INFINITY})
  void aCordThatDropsOutIsBroken(double ohms) {
    for (String kind : List.of("vacuum-cleaner", "iron", "hair-dryer", "kettle", "toaster")) {
      Diagnosis diagnosis = diagnosis(kind, cord(ohms));

      assertEquals("supply-cord.broken", diagnosis.faults().get(0).fault().key(), kind);
      assertTrue(
          diagnosis.faults().get(0).probability() > (Double.isInfinite(ohms) ? 0.95 : 0.9),
          () -> kind + " " + diagnosis.faults().get(0).probability());
    }
  }

  /** Strands that still touch: too much for a cord in order, and it was seen to drop out. */
  @ParameterizedTest
  @ValueSource(strings = {"vacuum-cleaner", "iron", "hair-dryer"})
  void aFewStrandsLead(String kind) {
    Diagnosis diagnosis = diagnosis(kind, cord(0.9));

    assertEquals("supply-cord.broken", diagnosis.faults().get(0).fault().key());
    assertTrue(
        diagnosis.faults().get(0).probability() > 0.4,
        () -> "" + diagnosis.faults().get(0).probability());
  }

  private static List<Measurement> cord(double ohms) {
    Reading read = Double.isInfinite(ohms) ? new Reading.OverRange() : ohms(ohms);
    return List.of(
        measurement("supply-cord", "drops-out", Conditions.NONE, new Reading.YesNo(true)),
        measurement("supply-cord", "conductor-resistance", Conditions.NONE, read));
  }

  /** The faults that open a path which conducts in a machine in order. */
  private static Set<String> opening(FaultModel model, Question question) {
    Set<String> opening = new HashSet<>();
    if (question.observable().kind().equals(QuantityKind.RESISTANCE)) {
      Forecaster forecaster = model.forecaster(List.of(question));
      double[] severity = new double[model.faults().size() + model.shared().size()];
      if (forecast(forecaster, severity) < OPEN) {
        for (int i = 0; i < model.faults().size(); i++) {
          severity[i] = 1;
          if (forecast(forecaster, severity) >= OPEN) {
            opening.add(model.faults().get(i).key());
          }
          severity[i] = 0.25; // a fault may be one of two things
          if (forecast(forecaster, severity) >= OPEN) {
            opening.add(model.faults().get(i).key());
          }
          severity[i] = 0;
        }
      }
    }
    return opening;
  }

  private static double forecast(Forecaster forecaster, double[] severity) {
    double[] value = new double[1];
    forecaster.forecast(severity, value, new double[1]);
    assertFalse(Double.isNaN(value[0]));
    return value[0];
  }

  private static Diagnosis diagnosis(String kind, List<Measurement> read) {
    return Calls.TOOL.open(Calls.job(Calls.appliance(kind, YEARS), List.of(), read)).diagnosis();
  }

  private static Reading ohms(double ohms) {
    return new Reading.Value(Quantity.of(ohms, "Ohm", QuantityKind.RESISTANCE), ohms / 100);
  }

  private static Measurement of(Question question, Reading reading) {
    return measurement(
        question.component(), question.observable().id(), question.conditions(), reading);
  }

  private static Measurement measurement(
      String component, String observable, Conditions conditions, Reading reading) {
    return new Measurement(
        component, observable, List.of(reading), conditions, Optional.empty(), "");
  }
}
