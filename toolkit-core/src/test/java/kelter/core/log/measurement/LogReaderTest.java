package kelter.core.log.measurement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kelter.core.file.job.StatedJob;
import kelter.core.file.log.Log;
import kelter.core.file.log.LogFile;
import kelter.core.file.log.LogOptions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.log.SteadyRule;
import kelter.core.problem.InputException;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Logs turned into measurements with the core alone; what is expected was put into them. */
class LogReaderTest {

  private static final Observable FLOW =
      Observable.named("flow", "flow")
          .quantity(QuantityKind.FLOW, 0, 1)
          .by(new Procedure("Read it.", 1, Hazard.DEAD, new Accuracy(0.02, 0), List.of()));

  private static final Vocabulary VOCABULARY =
      new Vocabulary(
          List.of(new ComponentKind("pump", "pump", List.of(FLOW), List.of(), List.of())));

  private static final Job JOB =
      StatedJob.parse(
              """
              {
                "format": "kelter-job/1",
                "id": "j-1",
                "appliance": {
                  "kind": "washer",
                  "components": [{ "id": "pump" }],
                  "nameplate": { "voltage": "230 V" }
                },
                "instruments": [
                  {
                    "id": "meter",
                    "functions": [
                      { "measures": "flow", "accuracy": "0.6 L/min", "resolution": "0.1 L/min" },
                      { "measures": "volume", "accuracy": "1 %" }
                    ]
                  }
                ]
              }
              """,
              VOCABULARY)
          .job();

  @TempDir private Path folder;

  /** 15 L/min, in turn 0.1 L/min up and down, and the volume 0.25 L in each second. */
  private LogReport log() throws IOException {
    StringBuilder text = new StringBuilder("t [s];Flow [L/min];Volume [L]\n");
    for (int i = 0; i < 100; i++) {
      text.append(i).append(i % 2 == 0 ? ";14.9;" : ";15.1;").append(0.25 * i).append('\n');
    }
    Path file = Files.writeString(folder.resolve("log.csv"), text);
    Log log = LogFile.read(file, LogOptions.NONE, LogFile.Progress.NONE);
    return LogReport.of("log.csv", log, SteadyRule.USUAL);
  }

  private static LogReading read(LogReport report, String map, List<Stretch> stretches) {
    ColumnMaps maps =
        ColumnMaps.of(List.of(map), Optional.of("meter"), List.of(), report.log().format());
    List<LogReading> readings =
        new LogReader(JOB, VOCABULARY, List.of()).readings(report, maps, stretches, List.of());
    assertEquals(1, readings.size());
    return readings.get(0);
  }

  /**
   * The mean is 15.0 L/min. Its standard deviation is 0.1 sqrt(100/99) L/min and 0.01005 L/min of
   * the mean (JCGM 100:2008, equation (5)); the limits of error 0.6 / sqrt 3 = 0.3464 L/min, the
   * last digit 0.1 / sqrt 12 = 0.02887 L/min; together 0.3478 L/min.
   */
  @Test
  void aSteadyWindowIsAMeasurementWithItsUncertainty() throws IOException {
    LogReading reading = read(log(), "Flow=pump.flow", List.of());

    assertEquals(15, reading.quantity().value(), 1e-9);
    assertEquals(0.01005, reading.parts().scatter(), 5e-6);
    assertEquals(0.3464, reading.parts().instrument(), 5e-5);
    assertEquals(0.02887, reading.parts().rounding(), 5e-6);
    assertEquals(0.3478, reading.quantity().standardUncertainty(), 5e-5);
    Measurement measurement = reading.measurement("log.csv");
    assertEquals("pump", measurement.component());
    assertEquals(Optional.of("meter"), measurement.instrument());
    assertTrue(measurement.note().startsWith("mean of rows 2 to 101"), measurement.note());
  }

  /** 0.25 L in each second are 15 L/min; 1 % of it as a rectangle is 0.0866 L/min. */
  @Test
  void theTrendOfAVolumeIsAFlow() throws IOException {
    LogReport report = log();
    Stretch whole = Stretch.of(new LogReport.Numbered(1, 0, report.windows().get(0).steady()));

    LogReading reading = read(report, "Volume=pump.flow", List.of(whole));

    assertTrue(reading.trend());
    assertEquals(15, reading.quantity().value(), 1e-9);
    assertEquals("L/min", reading.quantity().unit().code());
    assertEquals(0.0866, reading.parts().instrument(), 5e-5);
  }

  @Test
  void aTrendWithoutAStretchIsRefused() throws IOException {
    LogReport report = log();
    InputException refused =
        assertThrows(InputException.class, () -> read(report, "Volume=pump.flow", List.of()));
    assertTrue(refused.getMessage().contains("trend of a column"), refused.getMessage());
  }
}
