package kelter.core.file.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import kelter.core.file.log.cell.FigureForm;
import kelter.core.log.Window;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Logs of many makes are recognised; damaged ones are told with row and column. */
class LogFileTest {

  private static final Charset WINDOWS = Charset.forName("windows-1252");

  @TempDir private Path folder;

  private Log read(byte[] content, LogOptions options) throws IOException {
    Path file = folder.resolve("log.csv");
    Files.write(file, content);
    return LogFile.read(file, options, LogFile.Progress.NONE);
  }

  private Log read(String content) throws IOException {
    return read(content.getBytes(StandardCharsets.UTF_8), LogOptions.NONE);
  }

  private List<Problem> problems(byte[] content) {
    InputException refused =
        assertThrows(InputException.class, () -> read(content, LogOptions.NONE));
    assertFalse(refused.getMessage().contains("Exception"), refused.getMessage());
    return refused.problems();
  }

  private List<Problem> problems(String content) {
    return problems(content.getBytes(StandardCharsets.UTF_8));
  }

  private static Window whole(Log log, int column) {
    return log.recording().column(column).whole().orElseThrow();
  }

  @Test
  void semicolonsDecimalCommaDayFirstWithLinesAbove() throws IOException {
    Log log =
        read(
            """
            Recorder R2;;
            Serial;0077;
            Version;2;

            Date;Time;Power (W)
            23.10.2026;14:03:05;2980,5
            23.10.2026;14:03:06;2981,5
            24.10.2026;14:03:07;2982,5
            """);

    assertEquals(';', log.format().delimiter());
    assertTrue(log.format().decimalComma());
    assertEquals(5, log.format().headerRow());
    assertEquals(6, log.format().firstRow());
    assertEquals("day, month, year and time of day", log.format().timing().description());
    assertFalse(log.format().timing().assumed());
    assertEquals(
        LocalDateTime.of(2026, 10, 23, 14, 3, 5).toEpochSecond(ZoneOffset.UTC), log.start());
    assertEquals(86_402, log.recording().lastTime());
    assertEquals(1, log.format().values().size());
    assertEquals("Power", log.format().values().get(0).name());
    assertEquals("W", log.format().values().get(0).unit());
    assertEquals(0.1, log.resolutions().get(0), 1e-15);
    assertEquals(2981.5, whole(log, 0).mean(), 1e-9);
    assertEquals(6, whole(log, 0).firstRow());
    assertEquals(Optional.of(0), log.format().find("Power (W)"));
    assertEquals(Optional.of(0), log.format().find("power"));
    assertEquals(Optional.of(0), log.format().find("#3"));
    assertEquals(Optional.empty(), log.format().find("Time"));
  }

  @Test
  void commasIsoTimesWithOffsetAndNoValue() throws IOException {
    Log log =
        read(
            """
            no,timestamp,R [Ohm],remark
            1,2026-10-23T14:03:05.250+02:00,26.4,cold
            2,2026-10-23T14:03:05.500+02:00,OL,probe off
            3,2026-10-23T14:03:05.750+02:00,26.6,
            4,2026-10-23T14:03:06.000+02:00,---,
            """);

    assertEquals(',', log.format().delimiter());
    assertEquals(1, log.format().values().size());
    assertEquals(1, log.recording().missing(0));
    assertEquals(1, log.recording().overRange(0).count());
    assertEquals(1, log.recording().overRange(0).count(0.2, 0.3));
    assertEquals(0, log.recording().overRange(0).count(0.3, 0.75));
    assertEquals(2, log.recording().column(0).count());
    assertEquals(0.75, log.recording().lastTime(), 1e-6);
    assertEquals(
        LocalDateTime.of(2026, 10, 23, 14, 3, 5).toEpochSecond(ZoneOffset.UTC) + 0.25,
        log.start(),
        1e-6,
        "by the clock of the log");
    assertEquals(26.5, whole(log, 0).mean(), 1e-12);
  }

  @Test
  void tabsElapsedMillisecondsUnitsInARowOfTheirOwn() throws IOException {
    Log log = read("time\tT1\tT2\nms\t°C\t°C\n0\t19.5\t20\n500\t19.6\t20\n1000\t19.7\t20\n");

    assertEquals('\t', log.format().delimiter());
    assertEquals("elapsed, in ms", log.format().timing().description());
    assertEquals(1, log.recording().lastTime(), 1e-12);
    assertEquals(0.2, whole(log, 0).slope(), 1e-12);
    assertEquals("°C", log.format().values().get(1).unit());
    assertEquals(1, log.format().headerRow());
    assertEquals(3, log.format().firstRow());
  }

  @Test
  void withoutHeadingsAndTimesRowsAreCounted() throws IOException {
    Log log = read("230.1 V|10\n230.3 V|11\n230.2 V|12\n");

    assertTrue(log.format().timing().counted());
    assertEquals(0, log.format().headerRow());
    assertEquals("column 1", log.format().values().get(0).name());
    assertEquals("V", log.format().values().get(0).unit());
    assertEquals(2, log.recording().lastTime());

    LogOptions every =
        new LogOptions(Optional.empty(), Optional.empty(), 0.5, List.of(), LogOptions.Said.NOTHING);
    assertEquals(1, read("1|10\n2|11\n3|12\n".getBytes(WINDOWS), every).recording().lastTime());
  }

  @Test
  void timesOfDayGoOnAfterMidnight() throws IOException {
    Log log = read("Time;P\n23:59:59;1\n00:00:00;2\n00:00:01;3\n");
    assertEquals(2, log.recording().lastTime());
    assertEquals("time of day", log.format().timing().description());
  }

  @Test
  void orderOfDayAndMonth() throws IOException {
    assertEquals(
        "month, day, year and time of day",
        read("t,P\n10/23/2026 2:03 PM,1\n10/23/2026 2:04 PM,2\n").format().timing().description());
    LogFormat guess = read("t,P\n10/11/2026 14:03,1\n10/11/2026 14:04,2\n").format();
    assertEquals("day, month, year and time of day", guess.timing().description());
    assertTrue(guess.timing().assumed());
  }

  @Test
  void characterSets() throws IOException {
    String text = "Zeit;T (°C)\n12:00:00;19,5\n12:00:01;19,6\n";
    for (Charset charset :
        List.of(
            StandardCharsets.UTF_8,
            StandardCharsets.UTF_16,
            StandardCharsets.UTF_16LE,
            StandardCharsets.UTF_16BE,
            WINDOWS)) {
      Log log = read(text.getBytes(charset), LogOptions.NONE);
      assertEquals("°C", log.format().values().get(0).unit(), charset.name());
      assertEquals(charset == WINDOWS, log.format().encodingAssumed(), charset.name());
      assertEquals(19.55, whole(log, 0).mean(), 1e-12, charset.name());
    }
    Log marked = read("\uFEFF" + text);
    assertEquals("Zeit", marked.format().columns().get(0).name());
  }

  @Test
  void quotesAndTrailingDelimiters() throws IOException {
    Log log = read("\"Time\";\"Power; total (W)\"\n\"12:00:00\";\"5,5\";\n\"12:00:01\";\"6,5\";\n");
    assertEquals("Power; total", log.format().values().get(0).name());
    assertEquals(6, whole(log, 0).mean());
  }

  @Test
  void stretchesByClockAndFromTheStart() throws IOException {
    StringBuilder text = new StringBuilder("Time,P\n");
    for (int i = 0; i < 600; i++) {
      text.append("14:%02d:%02d,%d%n".formatted(i / 60, i % 60, i));
    }
    LogOptions options =
        new LogOptions(
            Optional.empty(),
            Optional.empty(),
            Double.NaN,
            List.of(LogSpan.parse("14:02..14:03:30"), LogSpan.parse("1min..90 s")),
            LogOptions.Said.NOTHING);

    Log log = read(text.toString().getBytes(StandardCharsets.UTF_8), options);

    Window clock = log.spans().get(0).columns().get(0).whole().orElseThrow();
    assertEquals(91, clock.samples());
    assertEquals(165, clock.mean());
    assertEquals(31, log.spans().get(1).columns().get(0).count());

    LogOptions calendar =
        new LogOptions(
            Optional.empty(),
            Optional.empty(),
            Double.NaN,
            List.of(LogSpan.parse("2026-10-23T14:00..2026-10-23T15:00")),
            LogOptions.Said.NOTHING);
    InputException refused =
        assertThrows(
            InputException.class,
            () -> read(text.toString().getBytes(StandardCharsets.UTF_8), calendar));
    assertTrue(refused.getMessage().contains("does not tell"), refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"5min", "10min..5min..", "14:99..15:00", "a..b"})
  void whatIsNoSpan(String text) {
    assertThrows(IllegalArgumentException.class, () -> LogSpan.parse(text));
  }

  private static final String GOOD = "Time;P (W);T (°C)\n12:00:00;5,5;19\n12:00:01;5,6;19\n";

  @Test
  void raggedRows() {
    List<Problem> problems = problems(GOOD + "12:00:02;5,7\n12:00:03;5,7;19;1\n12:00:04;5,7;19\n");
    assertEquals(2, problems.size());
    assertTrue(problems.get(0).where().endsWith("row 4, column 3"), problems.get(0).where());
    assertTrue(problems.get(0).what().contains("has 2 columns, the others have 3"));
    assertTrue(problems.get(1).where().endsWith("row 5, column 4"), problems.get(1).where());
  }

  @Test
  void raggedFirstRowIsNotTakenForWordsAboveTheReadings() {
    Problem problem = problems("time,W\n1,2,3\n2,3\n3,4\n").get(0);
    assertTrue(problem.where().endsWith("row 2, column 3"), problem.where());
    assertTrue(problem.what().contains("has 3 columns, the others have 2"));
  }

  @Test
  void mixedDelimiters() {
    Problem problem = problems(GOOD + "12:00:02,5.7,19\n").get(0);
    assertTrue(problem.where().endsWith("row 4, column 2"), problem.where());
    assertTrue(problem.remedy().contains("split by ','"), problem.remedy());
  }

  @Test
  void textInFigures() {
    List<Problem> problems = problems(GOOD + "12:00:02;ready;19\n12:00:03;5.7;19\n");
    assertTrue(problems.get(0).where().endsWith("row 4, column 2 (P)"), problems.get(0).where());
    assertTrue(problems.get(0).what().contains("'ready' is not a figure"));
    assertTrue(problems.get(1).what().contains("decimal comma"), problems.get(1).what());
  }

  @Test
  void emptyAndHeadingOnly() {
    assertTrue(problems("").get(0).what().contains("is empty"));
    assertTrue(problems(" \n\n").get(0).what().contains("nothing but blanks"));
    assertTrue(problems("Time;P;T\n").get(0).what().contains("heading but no row"));
    assertTrue(problems("Dear Sir,\nno log, this.\nYours\nme\n").get(0).what().contains("no row"));
  }

  @Test
  void nulBytes() {
    byte[] content = (GOOD + "12:00:02;5,7;19\n").getBytes(StandardCharsets.UTF_8);
    byte[] damaged = Arrays.copyOf(content, content.length + 4096);
    Problem problem = problems(damaged).get(0);
    assertTrue(problem.what().contains("NUL"), problem.what());
    assertTrue(problem.where().endsWith("row 5, column 1"), problem.where());
  }

  @Test
  void aMillionColumns() {
    Problem header = problems("a" + ",a".repeat(999_999) + "\n1\n").get(0);
    assertTrue(header.what().contains("more than 1000 columns"), header.what());
    assertTrue(header.where().contains("row 1"), header.where());
    Problem later =
        problems("t;P\n" + "12:00:00;1\n".repeat(50_000) + "1" + ";1".repeat(999_999)).get(0);
    assertTrue(later.where().contains("row 50002"), later.where());
  }

  @Test
  void wrongEncoding() {
    byte[] start = (GOOD + "12:00:02;5,7;19\n".repeat(20_000)).getBytes(StandardCharsets.UTF_8);
    byte[] tail = "12:00:02;5,7;19°\n".getBytes(WINDOWS);
    byte[] content = Arrays.copyOf(start, start.length + tail.length);
    System.arraycopy(tail, 0, content, start.length, tail.length);

    Problem problem = problems(content).get(0);
    assertTrue(problem.where().endsWith("row 20004, column 3"), problem.where());
    assertTrue(problem.what().contains("not UTF-8"), problem.what());
  }

  @Test
  void timesThatGoBackwards() {
    Problem problem = problems(GOOD + "11:59:58;5,7;19\n").get(0);
    assertTrue(problem.where().endsWith("row 4, column 1 (Time)"), problem.where());
    assertTrue(problem.what().contains("'11:59:58' comes before"), problem.what());
  }

  @Test
  void aTimeThatIsNone() {
    Problem problem = problems("t,P\n2026-02-27,1\n2026-02-28,2\n2026-02-30,3\n").get(0);
    assertTrue(problem.where().contains("row 4, column 1"), problem.where());
    assertTrue(problem.what().contains("'2026-02-30' is not a date"), problem.what());
  }

  @Test
  void aQuoteWithoutEndAndARowWithoutEnd() {
    assertTrue(
        problems(GOOD + "12:00:02;\"5,7;" + "x".repeat(300_000)).get(0).what().contains("quote"));
    assertTrue(
        problems(GOOD + "12:00:02;" + "7".repeat(2_000_000)).get(0).what().contains("characters"));
  }

  @Test
  void noMoreThanTwentyMistakesAreTold() {
    List<Problem> problems =
        problems(GOOD + "12:00:02;5,7;19\n".repeat(300) + "x;y;z\n".repeat(1000));
    assertTrue(problems.size() <= 22, () -> "" + problems.size());
    assertTrue(problems.get(problems.size() - 1).what().contains("stopped"));
  }

  @Test
  void figuresAreReadToTheNearestDouble() {
    for (String figure :
        List.of(
            "0.1",
            "2980.5",
            "-0.000123",
            "123456789012345",
            "1234567890123456.7",
            "1e-3",
            "6.02214076E23",
            "+5",
            "0.30000000000000004",
            ".5",
            "5.")) {
      assertEquals(Double.parseDouble(figure), FigureForm.POINT.value(figure), figure);
    }
  }

  /** Seeded damage: a log is read, or what is wrong is told; nothing else happens. */
  @Test
  void damagedLogsAreReadOrTold() throws IOException {
    String[] logs = {
      GOOD + "12:00:02;5,7;19\n".repeat(30),
      "no,timestamp,R [Ohm],remark\n" + "1,2026-10-23T14:03:05.250+02:00,26.4,cold\n".repeat(20),
      "time\tT1\tT2\nms\t°C\t°C\n" + "1000\t19.7\t20\n".repeat(20),
    };
    byte[] noise = "0123456789.,;:\t|\"-+eTZ/ \n\r\0a%°".getBytes(StandardCharsets.UTF_8);
    Random random = new Random(23);
    int told = 0;
    int read = 0;
    for (int run = 0; run < 3000; run++) {
      byte[] content = logs[run % logs.length].getBytes(StandardCharsets.UTF_8);
      for (int i = random.nextInt(6); i >= 0; i--) {
        content[random.nextInt(content.length)] = noise[random.nextInt(noise.length)];
      }
      byte[] cut = Arrays.copyOf(content, content.length - random.nextInt(content.length));
      try {
        assertTrue(read(cut, LogOptions.NONE).recording().rows() > 0);
        read++;
      } catch (InputException refused) {
        assertFalse(refused.getMessage().contains("Exception"), refused.getMessage());
        assertTrue(refused.getMessage().contains("log.csv"), refused.getMessage());
        told++;
      }
    }
    assertTrue(told > 100 && read > 100, told + " told, " + read + " read");
  }
}
