package kelter.cli.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import kelter.cli.program.StatedJob;
import kelter.cli.wiring.Found;
import kelter.core.job.Job;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.vocabulary.Vocabulary;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Symptoms that nobody reported, beside readings that nobody took. */
class WhatIfTest {

  private static final Vocabulary WORDS = Workshop.of(Found.usual().modules()).vocabulary();
  private static final Job HEATER =
      StatedJob.read(Path.of("..", "demo", "jobs", "dear-heater.json"), WORDS).job();

  private static Job in(String... readings) {
    return WhatIf.in(HEATER, WORDS, List.of(readings));
  }

  private static SymptomReport report(String symptom, Answer answer) {
    return new SymptomReport(symptom, answer);
  }

  @ParameterizedTest
  @CsvSource({"yes, YES", "no, NO", "sometimes, SOMETIMES", "' Yes ', YES"})
  void aReportTakesThePlaceOfTheOneThatWasGiven(String word, Answer answer) {
    assertEquals(
        List.of(report("stays-cold", answer)), in("stays-cold=" + word).complaint().symptoms());
  }

  @ParameterizedTest
  @CsvSource({"not-asked", "not asked"})
  void aReportCanBeTakenBack(String word) {
    assertEquals(List.of(), in("stays-cold=" + word).complaint().symptoms());
  }

  @Test
  void symptomsAndReadingsStandBesideEachOther() {
    Job other = in("leaks=yes", "heater.resistance=26 ohm", "loud=no", "leaks=sometimes");

    assertEquals(
        List.of(
            report("stays-cold", Answer.YES),
            report("loud", Answer.NO),
            report("leaks", Answer.SOMETIMES)),
        other.complaint().symptoms());
    assertEquals(1, other.measurements("heater", "resistance").size());
    assertEquals(HEATER.complaint().said(), other.complaint().said());
    assertEquals(HEATER.market(), other.market());
    assertEquals(
        List.of(report("stays-cold", Answer.YES)),
        HEATER.complaint().symptoms(),
        "the job stays as it is");
  }

  @Test
  void allMistakesAreToldAtOnceWithWhatIsNear() {
    InputException refused =
        assertThrows(
            InputException.class,
            () ->
                in(
                    "stays-cld=yes",
                    "stays-cold=yess",
                    "fuse=maybe",
                    "heater.washes-cold=yes",
                    "heater.resistanc=OL",
                    "nonsense"));

    assertEquals(
        List.of(
            "--what-if \"stays-cld=yes\": 'stays-cld' is not a known symptom;"
                + " did you mean 'stays-cold'?",
            "--what-if \"stays-cold=yess\": 'yess' is not a known report of a symptom;"
                + " did you mean 'yes'?",
            "--what-if \"fuse=maybe\": 'fuse' is not a known symptom;"
                + " did you mean 'trips-breaker'?",
            "--what-if \"fuse=maybe\": 'maybe' is not a known report of a symptom;"
                + " known: yes, no, sometimes, not-asked",
            "--what-if \"heater.washes-cold=yes\": 'washes-cold' of a heater is a symptom of the"
                + " whole machine; write for instance stays-cold=yes",
            "--what-if \"heater.resistanc=OL\": there is no observable 'resistanc' of a heater;"
                + " did you mean 'resistance'?",
            "--what-if \"nonsense\": is no reading; write it as component.observable=reading, or a"
                + " symptom as stays-cold=yes"),
        refused.problems().stream().map(Problem::display).toList());
  }
}
