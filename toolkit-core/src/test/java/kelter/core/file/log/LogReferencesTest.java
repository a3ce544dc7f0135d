package kelter.core.file.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.NumberFormat;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import kelter.core.file.log.cell.CellTime;
import kelter.core.file.log.cell.DecimalEvidence;
import kelter.core.file.log.cell.FigureForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures and times held against standards and against what Java itself writes. */
class LogReferencesTest {

  private static double seconds(String cell) {
    CellTime time = CellTime.of(cell);
    assertTrue(time.isTime(), cell);
    return DateOrder.YEAR_FIRST.days(time).orElseThrow() * CellTime.DAY + time.clock(false);
  }

  /** The examples of RFC 3339, 5.8, with the instants that it states or that java.time gives. */
  @ParameterizedTest
  @CsvSource({
    "1985-04-12T23:20:50.52Z, 1985-04-12T23:20:50.52Z",
    "1996-12-19T16:39:57-08:00, 1996-12-20T00:39:57Z",
    "1990-12-31T23:59:60Z, 1991-01-01T00:00:00Z",
    "1990-12-31T15:59:60-08:00, 1991-01-01T00:00:00Z",
    "1937-01-01T12:00:27.87+00:20, 1937-01-01T11:40:27.87Z",
  })
  void timesOfRfc3339(String cell, Instant instant) {
    assertEquals(instant.getEpochSecond() + instant.getNano() / 1e9, seconds(cell), 1e-6);
  }

  /** RFC 5322, A.1.1, A.1.2, A.5: dates of its examples. */
  @Test
  void datesOfRfc5322() {
    for (String cell :
        List.of(
            "Fri, 21 Nov 1997 09:55:06 -0600",
            "Tue, 1 Jul 2003 10:52:37 +0200",
            "Thu, 13 Feb 1969 23:32:54 -0330")) {
      OffsetDateTime time = OffsetDateTime.parse(cell, DateTimeFormatter.RFC_1123_DATE_TIME);
      assertEquals(time.toEpochSecond(), seconds(cell), 1e-6, cell);
    }
  }

  /** ISO 8601:2004, 4.3.2: the same time in the extended and the basic form. */
  @Test
  void formsOfIso8601() {
    assertEquals(seconds("1985-04-12T10:15:30"), seconds("19850412T101530"), 0);
    assertEquals(seconds("1985-04-12T10:15:30+04:00"), seconds("1985-04-12 10:15:30 +04"), 0);
    assertEquals(seconds("2026-10-24T00:00:00"), seconds("2026-10-23T24:00:00"), 0);
  }

  /** What java.time writes in the orders and with the names of many countries is read back. */
  @Test
  void timesThatJavaWrites() {
    Random random = new Random(13);
    String[][] patterns = {
      {"uuuu-MM-dd HH:mm:ss.SSS", "ymd"},
      {"uuuu/MM/dd HH:mm:ss", "ymd"},
      {"uuuu.MM.dd HH:mm:ss", "ymd"},
      {"uuuuMMdd'T'HHmmss", "ymd"},
      {"uuuuMMddHHmmss", "ymd"},
      {"dd.MM.uuuu HH:mm:ss,SSS", "dmy"},
      {"d.M.uu H:mm:ss", "dmy"},
      {"dd/MM/uuuu, HH:mm:ss", "dmy"},
      {"dd-MM-uuuu HH.mm.ss", "dmy"},
      {"M/d/uuuu h:mm:ss a", "mdy"},
      {"MM/dd/uu hh:mm:ss.SSS a", "mdy"},
      {"MM-dd-uuuu HH:mm:ss:SSS", "mdy"},
      {"dd MMM uuuu HH:mm:ss", "ymd"},
      {"MMM d, uuuu h:mm:ss a", "ymd"},
      {"EEE MMM dd HH:mm:ss uuuu", "ymd"},
      {"EEEE, MMMM d, uuuu h:mm:ss a", "ymd"},
      {"d MMMM uuuu HH:mm:ss", "ymd"},
      {"uuuu-MMM-dd HH:mm:ss", "ymd"},
    };
    Locale[] locales = {
      Locale.US,
      Locale.UK,
      Locale.GERMANY,
      Locale.FRANCE,
      Locale.ITALY,
      new Locale("es", "ES"),
      new Locale("nl", "NL")
    };
    for (String[] pattern : patterns) {
      boolean names = pattern[0].contains("MMM");
      boolean halves = pattern[0].endsWith(" a");
      for (Locale locale : locales) {
        boolean english = locale.getLanguage().equals("en");
        if ((halves && locale != Locale.US) || (pattern[0].startsWith("EEE") && !english)) {
          continue;
        }
        DateTimeFormatter format = DateTimeFormatter.ofPattern(pattern[0], locale);
        for (int i = 0; i < 200; i++) {
          LocalDateTime time =
              LocalDateTime.of(2000, 1, 1, 0, 0)
                  .plus(random.nextInt(1_000_000_000), ChronoUnit.MILLIS)
                  .plusDays(random.nextInt(18_000));
          String cell = format.format(time);
          LocalDateTime written =
              pattern[0].contains("SSS") ? time : time.truncatedTo(ChronoUnit.SECONDS);
          CellTime read = CellTime.of(cell);
          double day = DateOrder.of(pattern[1]).orElseThrow().days(read).orElse(-1);
          assertEquals(names, read.namesMonth(), cell);
          assertEquals(
              written.toEpochSecond(ZoneOffset.UTC) + written.getNano() / 1e9,
              day * CellTime.DAY + read.clock(false),
              1e-6,
              cell);
        }
      }
    }
  }

  /** What java.text writes for many countries is read back, thousands and all. */
  @Test
  void figuresThatJavaWrites() {
    Random random = new Random(13);
    for (String tag :
        List.of("en-US", "de-DE", "fr-FR", "de-CH", "it-IT", "sv-SE", "es-ES", "pl-PL")) {
      NumberFormat format = NumberFormat.getNumberInstance(Locale.forLanguageTag(tag));
      format.setMinimumFractionDigits(2);
      format.setMaximumFractionDigits(2);
      for (int i = 0; i < 500; i++) {
        double value =
            Math.rint((random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(10))) / 100;
        String cell = format.format(value);
        DecimalEvidence evidence = new DecimalEvidence();
        evidence.add(cell);
        char decimal = evidence.sure(',') > 0 ? ',' : '.';
        assertEquals(1, evidence.sure(decimal), cell);
        FigureForm form = new FigureForm(decimal, true);
        assertEquals(cell.length(), form.end(cell), tag + " " + cell);
        assertEquals(value, form.value(cell), 0, tag + " " + cell);
        assertEquals(-2, form.lastDigit(cell), cell);
      }
    }
  }

  /** Spreadsheets count days from 1899-12-30, seen from March 1900 on. */
  @Test
  void dayNumbersOfSpreadsheets() {
    LocalDate day = LocalDate.of(2026, 10, 23);
    long number = ChronoUnit.DAYS.between(LocalDate.of(1899, 12, 30), day);
    assertEquals(
        day.toEpochDay() * CellTime.DAY + 21_600, TimeForm.SPREADSHEET_DAYS.seconds(number + 0.25));
  }
}
