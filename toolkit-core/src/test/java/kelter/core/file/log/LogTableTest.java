package kelter.core.file.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kelter.core.file.log.LogFormat.Guess;
import kelter.core.log.Series;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Small logs as instruments of many makes write them, each with what stands in it: how long it is,
 * the least and the greatest value of its first column of figures, its unit. What cannot be told is
 * refused with the name of the flag that says it. All logs are invented.
 */
class LogTableTest {

  @TempDir private Path folder;

  /** What a log is given with: words such as {@code decimal=comma time=ms}. */
  private static LogOptions options(String flags) {
    Optional<Character> decimal = Optional.empty();
    Optional<Character> delimiter = Optional.empty();
    Optional<DateOrder> dates = Optional.empty();
    Optional<TimeForm> time = Optional.empty();
    Optional<String> column = Optional.empty();
    Map<String, String> units = new HashMap<>();
    for (String flag : flags.split(" ")) {
      String[] parts = flag.split("=", 2);
      switch (parts[0]) {
        case "decimal" -> decimal = Optional.of(parts[1].equals("comma") ? ',' : '.');
        case "delimiter" -> delimiter = Optional.of(parts[1].charAt(0));
        case "dates" -> dates = DateOrder.of(parts[1]);
        case "time" -> {
          String[] said = parts[1].split("=");
          time = TimeForm.of(said[said.length - 1]);
          column = said.length > 1 ? Optional.of(said[0]) : Optional.empty();
        }
        case "units" -> units.put(parts[1].split("=")[0], parts[1].split("=")[1]);
        default -> assertEquals("", flag);
      }
    }
    return new LogOptions(
        Optional.empty(),
        delimiter,
        Double.NaN,
        List.of(),
        new LogOptions.Said(decimal, dates, time, column, units));
  }

  /** A log and what it holds; a refusal if {@code told} is not empty. */
  record Row(
      String name,
      String text,
      String flags,
      double seconds,
      double least,
      double most,
      String unit,
      String told) {
    @Override
    public String toString() {
      return name;
    }

    Row with(String said) {
      return new Row(name + " " + said, text, said, seconds, least, most, unit, told);
    }
  }

  private static Row read(
      String name, double seconds, double least, double most, String unit, String text) {
    return new Row(name, text, "", seconds, least, most, unit, "");
  }

  private static Row refused(String name, String told, String text) {
    return new Row(name, text, "", 0, 0, 0, "", told);
  }

  private static final String NAN = "";

  static Stream<Row> figures() {
    return Stream.of(
        read(
            "decimal comma in quotes between commas",
            2,
            5.5,
            6.5,
            "W",
            "Time,Power (W)\n\"12:00:00\",\"5,5\"\n\"12:00:02\",\"6,5\"\n"),
        read(
            "thousands in quotes",
            1,
            1234.5,
            1235.5,
            "W",
            "Time,Power (W)\n12:00:00,\"1,234.5\"\n12:00:01,\"1,235.5\"\n"),
        read(
            "thousands with an apostrophe",
            1,
            1234.5,
            1235.5,
            "W",
            "Time;Power (W)\n12:00:00;1'234.5\n12:00:01;1'235.5\n"),
        read(
            "thousands with the other apostrophe",
            1,
            1234.5,
            1235.5,
            "W",
            "Time;Power (W)\n12:00:00;1\u2019234.5\n12:00:01;1\u2019235.5\n"),
        read(
            "thousands with a narrow blank",
            1,
            1234.5,
            1235.5,
            "W",
            "Time;Power (W)\n12:00:00;1\u202f234,5\n12:00:01;1\u202f235,5\n"),
        read(
            "thousands with a blank",
            1,
            12345,
            12346,
            "W",
            "Time;Power (W)\n12:00:00;12 345\n12:00:01;12 346\n"),
        read(
            "thousands with points",
            1,
            1234.5,
            1235.5,
            "W",
            "Time;Power (W)\n12:00:00;1.234,5\n12:00:01;1.235,5\n"),
        read(
            "millions with points",
            1,
            1234567,
            1234568,
            "W",
            "Time;Power (W)\n12:00:00;1.234.567\n12:00:01;1.234.568\n"),
        read(
            "thousands beside hundreds, decimals elsewhere",
            1,
            987,
            1234,
            "W",
            "Time,Power (W),U (V)\n12:00:00,987,230.1\n12:00:01,\"1,234\",230.2\n"),
        refused(
            "a comma before three digits throughout",
            "--decimal comma",
            "Time;Power (W)\n12:00:00;1,234\n12:00:01;1,235\n"),
        read(
                "a comma before three digits throughout",
                1,
                1.234,
                1.235,
                "W",
                "Time;Power (W)\n12:00:00;1,234\n12:00:01;1,235\n")
            .with("decimal=comma"),
        read(
                "a comma before three digits throughout",
                1,
                1234,
                1235,
                "W",
                "Time;Power (W)\n12:00:00;1,234\n12:00:01;1,235\n")
            .with("decimal=point"),
        refused(
            "a point before three digits throughout",
            "--decimal point",
            "Time;Power (W)\n12:00:00;1.234\n12:00:01;1.235\n"),
        read(
                "a point before three digits throughout",
                1,
                1.234,
                1.235,
                "W",
                "Time;Power (W)\n12:00:00;1.234\n12:00:01;1.235\n")
            .with("decimal=point"),
        read(
                "a point before three digits throughout",
                1,
                1234,
                1235,
                "W",
                "Time;Power (W)\n12:00:00;1.234\n12:00:01;1.235\n")
            .with("decimal=comma"),
        read(
            "three decimals behind a zero",
            1,
            0.123,
            1.234,
            "A",
            "Time;I (A)\n12:00:00;0.123\n12:00:01;1.234\n"),
        read(
            "three decimals between commas",
            1,
            1.234,
            1.235,
            "A",
            "Time,I (A)\n12:00:00,1.234\n12:00:01,1.235\n"),
        read(
            "three decimals with an exponent",
            1,
            1234,
            1235,
            "W",
            "Time;P (W)\n12:00:00;1.234E+03\n12:00:01;1.235E+03\n"),
        read(
            "the sign shows only late",
            400,
            1,
            5.5,
            "W",
            "Time;P (W)\n" + clock(400, i -> "1") + "12:06:40;5,5\n"),
        refused("a comma between columns or decimals", "--delimiter", "Power (W)\n5,5\n5,6\n5,7\n"),
        read("a comma between columns or decimals", 2, 5.5, 5.7, "W", "Power (W)\n5,5\n5,6\n5,7\n")
            .with("decimal=comma"),
        refused(
            "fewer headings than columns",
            "--delimiter",
            "Time,P (W),T (Cel)\n12:00:00,5,5,19,1\n12:00:01,5,6,19,2\n"),
        refused(
            "a figure of both kinds",
            "decimal comma",
            "Time;P (W)\n12:00:00;5,5\n12:00:01;5,6\n12:00:02;5.7\n"),
        read(
            "a true minus",
            1,
            -5.5,
            -4.5,
            "Cel",
            "Time;T (Cel)\n12:00:00;\u22125,5\n12:00:01;\u22124,5\n"));
  }

  /** Rows from 12:00:00, one a second. */
  private static String clock(int rows, java.util.function.IntFunction<String> value) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < rows; i++) {
      text.append("12:%02d:%02d;%s%n".formatted(i / 60, i % 60, value.apply(i)));
    }
    return text.toString().replace("\r", "");
  }

  static Stream<Row> times() {
    return Stream.of(
        read("elapsed seconds", 1, 5, 6, "W", "t [s];P (W)\n0;5\n1;6\n"),
        read("elapsed milliseconds", 1, 5, 6, "W", "Time (ms);P (W)\n0;5\n1000;6\n"),
        read("milliseconds behind an underscore", 1, 5, 6, "W", "time_ms;P (W)\n0;5\n1000;6\n"),
        read("seconds behind an underscore", 1, 5, 6, "W", "elapsed_s;P (W)\n0;5\n1;6\n"),
        read("milliseconds as a word", 1, 5, 6, "W", "millis,P (W)\n0,5\n1000,6\n"),
        read("minutes", 90, 5, 6, "W", "Time [min];P (W)\n0,5;5,0\n2,0;6,0\n"),
        read("hours", 3600, 5, 6, "W", "Time [h];P (W)\n0.5;5.0\n1.5;6.0\n"),
        refused("elapsed without a unit", "--time", "Time;P (W)\n0;5\n1;6\n"),
        refused("two words without a unit", "--time", "Elapsed time;P (W)\n0;5\n1;6\n"),
        read("elapsed without a unit", 60, 5, 6, "W", "Time;P (W)\n0;5\n1;6\n").with("time=min"),
        read("elapsed without a unit", 1, 0, 1, "", "Time;P (W)\n0;5\n1;6\n").with("time=none"),
        read("a column that nobody would know", 2, 5, 6, "W", "Abscissa;P (W)\n0;5\n2000;6\n")
            .with("time=Abscissa=ms"),
        refused(
                "a column that is not there",
                "no column is called",
                "Abscissa;P (W)\n0;5\n2000;6\n")
            .with("time=Ordinate=ms"),
        read(
            "milliseconds since 1970",
            1,
            5,
            6,
            "W",
            "timestamp,P (W)\n1792764185000,5\n1792764186000,6\n"),
        read(
            "milliseconds since 1970, told",
            1,
            5,
            6,
            "W",
            "time [ms],P (W)\n1792764185000,5\n1792764186000,6\n"),
        read("seconds since 1970", 1, 5, 6, "W", "epoch,P (W)\n1792764185,5\n1792764186,6\n"),
        read(
            "seconds since 1970 with decimals",
            0.5,
            5,
            6,
            "W",
            "time,P (W)\n1792764185.25,5\n1792764185.75,6\n"),
        read(
            "day numbers of a spreadsheet",
            60,
            5,
            6,
            "W",
            "Timestamp;P (W)\n46318,585474537;5\n46318,586168981;6\n"),
        refused(
            "day numbers under a heading that may be seconds",
            "--time",
            "Time;P (W)\n46318,585474537;5\n46318,586168981;6\n"),
        read(
                "day numbers under a heading that may be seconds",
                60,
                5,
                6,
                "W",
                "Time;P (W)\n46318,585474537;5\n46318,586168981;6\n")
            .with("time=sheet-days"),
        read(
            "hours, minutes, seconds in one figure",
            3,
            5,
            8,
            "W",
            "Time;P (W)\n140358;5\n140359;6\n140400;7\n140401;8\n"),
        refused(
            "one figure that may be seconds",
            "--time",
            "Time;P (W)\n140305;5\n140306;6\n140307;7\n"),
        read(
                "one figure that may be seconds",
                2,
                5,
                7,
                "W",
                "Time;P (W)\n140305;5\n140306;6\n140307;7\n")
            .with("time=hhmmss"),
        read(
            "one figure beside a date",
            61,
            5,
            6,
            "W",
            "Date;Time;P (W)\n20261023;140359;5\n20261023;140500;6\n"),
        read(
            "all in one figure (ISO 8601, basic form)",
            61,
            5,
            6,
            "W",
            "Time;P (W)\n20261023140359;5\n20261023140500;6\n"),
        read(
            "basic form with T and Z",
            61.5,
            5,
            6,
            "W",
            "Time;P (W)\n20261023T140359Z;5\n20261023T140500.5Z;6\n"),
        refused("two numbers", "--time hh:mm", "Time;P (W)\n14:03;5\n14:04;6\n"),
        read("two numbers", 60, 5, 6, "W", "Time;P (W)\n14:03;5\n14:04;6\n").with("time=hh:mm"),
        read("two numbers", 1, 5, 6, "W", "Time;P (W)\n14:03;5\n14:04;6\n").with("time=mm:ss"),
        read(
            "two numbers beside a date",
            60,
            5,
            6,
            "W",
            "Date;Time;P (W)\n23.10.2026;14:03;5\n23.10.2026;14:04;6\n"),
        read(
            "two numbers and the half of the day",
            60,
            5,
            6,
            "W",
            "Time;P (W)\n2:03 PM;5\n2:04 PM;6\n"),
        read(
            "noon and the half of the day",
            60,
            5,
            6,
            "W",
            "Time;P (W)\n11:59 a.m.;5\n12:00 p.m.;6\n"),
        read(
            "two numbers with parts of a second",
            0.5,
            5,
            6,
            "W",
            "Time;P (W)\n14:03.0;5\n14:03.5;6\n"),
        read("two numbers, then three", 1, 5, 6, "W", "Time;P (W)\n59:59;5\n1:00:00;6\n"),
        read(
            "two numbers, the heading tells",
            1,
            5,
            6,
            "W",
            "Time (mm:ss);P (W)\n14:03;5\n14:04;6\n"),
        read("elapsed over a day", 2, 5, 6, "W", "Elapsed;P (W)\n23:59:59;5\n24:00:01;6\n"),
        read(
            "points in a time beside a date",
            1,
            5,
            6,
            "W",
            "Date;Time;P (W)\n23.10.2026;10.03.00;5\n23.10.2026;10.03.01;6\n"),
        read(
            "points in date and time in one cell",
            1,
            5,
            6,
            "W",
            "Time;P (W)\n23.10.2026 10.03.00;5\n23.10.2026 10.03.01;6\n"),
        read(
            "points in a time that is no date",
            1,
            5,
            6,
            "W",
            "Time;P (W)\n10.45.00;5\n10.45.01;6\n"),
        refused(
            "points in a time or a date",
            "--time hh.mm.ss",
            "Time;P (W)\n10.03.00;5\n10.03.01;6\n"),
        read("points in a time or a date", 1, 5, 6, "W", "Time;P (W)\n10.03.00;5\n10.03.01;6\n")
            .with("time=hh.mm.ss"),
        read(
            "milliseconds behind a colon",
            0.5,
            5,
            6,
            "W",
            "Time;P (W)\n14:03:05:500;5\n14:03:06:000;6\n"),
        read(
            "milliseconds behind a comma",
            0.5,
            5,
            6,
            "W",
            "Time;P (W)\n14:03:05,500;5,0\n14:03:06,000;6,0\n"),
        read(
            "US dates that show only late",
            3 * 86_400,
            5,
            6,
            "W",
            "Date,P (W)\n10/11/2026,5\n10/12/2026,5\n10/13/2026,6\n10/14/2026,6\n"),
        read("US dates that show in row 400", 400, 1, 2, "W", "Time,P (W)\n" + late()),
        refused(
            "dates that tell nothing",
            "--dates dmy or --dates mdy",
            "Date,P (W)\n10/11/2026,5\n11/11/2026,6\n"),
        read(
                "dates that tell nothing",
                86_400,
                5,
                6,
                "W",
                "Date,P (W)\n10/11/2026,5\n11/11/2026,6\n")
            .with("dates=dmy"),
        read(
                "dates that tell nothing",
                31 * 86_400,
                5,
                6,
                "W",
                "Date,P (W)\n10/11/2026,5\n11/11/2026,6\n")
            .with("dates=mdy"),
        read(
            "dates that would go backwards",
            86_400,
            5,
            6,
            "W",
            "Date,P (W)\n10/31/2026,5\n11/01/2026,6\n"),
        read(
                "dates by their sequence alone",
                86_400 * 20.0,
                5,
                6,
                "W",
                "Date,P (W)\n12/01/2026,5\n01/02/2026,6\n")
            .with("dates=dmy"),
        read("month by name", 86_400, 5, 6, "W", "Date,P (W)\n31-Oct-2026,5\n01-Nov-2026,6\n"),
        read(
            "month by name, two digits of the year",
            86_400,
            5,
            6,
            "W",
            "Date,P (W)\n31-Oct-26,5\n01-Nov-26,6\n"),
        read(
            "month by name in front",
            60,
            5,
            6,
            "W",
            "Date;P (W)\nOct 31, 2026 11:59:30 PM;5\nNov 1, 2026 12:00:30 AM;6\n"),
        read(
            "month by a German name",
            86_400,
            5,
            6,
            "W",
            "Datum;P (W)\n31. Okt. 2026;5\n1. November 2026;6\n"),
        read(
            "month by a French name",
            86_400,
            5,
            6,
            "W",
            "Date;P (W)\n31 juil. 2026;5\n1 août 2026;6\n"),
        read(
            "weekday and year at the end",
            1,
            5,
            6,
            "W",
            "Date;P (W)\nFri Oct 23 14:03:05 2026;5\nFri Oct 23 14:03:06 2026;6\n"),
        refused(
            "a time that nobody knows",
            "not understood as a time",
            "Time;P (W)\nhalf past two;5\na quarter to three;6\n"),
        read(
                "a time that nobody knows",
                1,
                5,
                6,
                "W",
                "Time;P (W)\nhalf past two;5\na quarter to three;6\n")
            .with("time=none"),
        refused(
            "a time that nobody knows beside a date",
            "not understood as a time",
            "Date;Time;P (W)\n2026-10-23;14h03;5\n2026-10-23;14h04;6\n"),
        refused(
                "what was said does not fit",
                "has no such times",
                "Time;P (W)\n14:03:05;5\n14:03:06;6\n")
            .with("time=mm:ss"),
        refused(
            "an hour of thirteen and PM",
            "not understood",
            "Time;P (W)\n13:03:05 PM;5\n13:03:06 PM;6\n"));
  }

  private static String late() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 401; i++) {
      String day =
          i < 400
              ? "10/12/2026 23:%02d:%02d".formatted(53 + (i + 20) / 60, (i + 20) % 60)
              : "10/13/2026 00:00:00";
      text.append(day).append(i == 400 ? ",2\n" : ",1\n");
    }
    return text.toString();
  }

  static Stream<Row> units() {
    return Stream.of(
        read(
            "a unit with a slash as the last word",
            1,
            5,
            6,
            "l/min",
            "t [s];Flow l/min\n0;5\n1;6\n"),
        read(
            "a unit with a slash behind a slash",
            1,
            5,
            6,
            "l/min",
            "t [s];Flow / l/min\n0;5\n1;6\n"),
        read("a heading that is a unit", 1, 5, 6, "l/min", "t [s];l/min\n0;5\n1;6\n"),
        read("a unit behind a slash", 1, 5, 6, "°C", "t/s;T/°C\n0;5\n1;6\n"),
        read("a unit with a power behind a slash", 1, 5, 6, "m3/h", "t [s];q/m3/h\n0;5\n1;6\n"),
        read("a unit behind in", 1, 5, 6, "°C", "t [s];Temperature in °C\n0;5\n1;6\n"),
        read("a unit behind a comma", 1, 5, 6, "V", "t [s];\"Voltage, V\"\n0;5\n1;6\n"),
        read("a unit behind an underscore", 1, 5, 6, "kW", "t [s];P_kW\n0;5\n1;6\n"),
        read("a unit in front of a remark", 1, 5, 6, "W", "t [s];P [W] (mean)\n0;5\n1;6\n"),
        read("a remark in brackets", 1, 5, 6, NAN, "t [s];P (mean)\n0;5\n1;6\n"),
        read("a phase is no unit", 1, 5, 6, NAN, "t [s];Phase A\n0;5\n1;6\n"),
        read("an inlet is no inch", 1, 5, 6, NAN, "t [s];Water in\n0;5\n1;6\n"),
        read("a least value is no minute", 1, 5, 6, NAN, "t [s];T min\n0;5\n1;6\n"),
        read("a row of units", 1, 5, 6, "°C", "t;T1\ns;°C\n0;5\n1;6\n"),
        read("a row of units in brackets", 1, 5, 6, "°C", "t;T1\n[s];[°C]\n0;5\n1;6\n"),
        read(
            "units, then how they were taken",
            1,
            5,
            6,
            "Deg C",
            "\"TIMESTAMP\",\"T1\"\n\"TS\",\"Deg C\"\n\"\",\"Avg\"\n"
                + "\"2026-10-23 14:03:05\",5\n\"2026-10-23 14:03:06\",6\n"),
        read("two rows of headings", 1, 5, 6, "W", "t [s];P (W)\nstart;inlet\n0;5\n1;6\n")
            .with("time=#1=s"),
        read("a column of units", 1, 5, 6, "W", "t [s];Value;Unit\n0;5;W\n1;6;W\n"),
        read(
            "a column of units that switches",
            1,
            999,
            1001,
            "W",
            "t [s];Value;Unit\n0;999.0;W\n1;1.001;kW\n"),
        read(
            "a column of units that switches down",
            1,
            0.9,
            1.1,
            "V",
            "t [s];Value;Unit\n0;1.1;V\n1;900;mV\n"),
        read(
            "a column of degrees that switches",
            1,
            50,
            100,
            "°C",
            "t [s];Value;Unit\n0;50;°C\n1;212;°F\n"),
        refused(
            "a column of units that turns to another quantity",
            "the unit is A",
            "t [s];Value;Unit\n0;230.1;V\n1;1.1;A\n"),
        refused(
            "a unit that is missing once",
            "has no unit",
            "t [s];Value;Unit\n0;230.1;V\n1;231.1;\n"),
        read(
            "units behind figures that switch",
            1,
            999,
            1001,
            "W",
            "t [s];Value\n0;999.0 W\n1;1.001 kW\n"),
        read(
            "units behind figures with a slash",
            1,
            5,
            6,
            "L/min",
            "t [s];Flow\n0;5.0 L/min\n1;6.0 L/min\n"),
        read("units with a digit", 1, 5, 6, "m3/h", "t [s];Flow\n0;5.0 m3/h\n1;6.0 m3/h\n"),
        read(
            "a heading in kW over figures in W",
            1,
            0.98,
            1.1,
            "kW",
            "t [s];P (kW)\n0;980 W\n1;1100 W\n"),
        read("a unit that is said", 1, 5, 6, "kW", "t [s];P\n0;5\n1;6\n").with("units=P=kW"),
        refused("a unit that is said of no column", "no column is called", "t [s];P\n0;5\n1;6\n")
            .with("units=Q=kW"),
        refused("a unit that is said and is none", "not known as a unit", "t [s];P\n0;5\n1;6\n")
            .with("units=P=bananas"));
  }

  static Stream<Row> marks() {
    return Stream.of(
            "OL",
            "O.L",
            "0.L",
            ".OL",
            "0L",
            "OL.",
            "OVLD",
            "OVERLOAD",
            "OFL",
            "+OL",
            "> 20",
            ">20",
            ">20.0",
            "OVER",
            "O.F.L",
            "OL MOhm",
            "Out of range",
            "---OL---",
            "inf",
            "9.9E37",
            "9.90000000E+37",
            "Open",
            "HI",
            "*OL*",
            "Overflow",
            "Over range")
        .map(
            mark ->
                read(
                    "over range " + mark,
                    2,
                    5,
                    6,
                    "Ohm",
                    "t [s];R [Ohm];n\n0;5;1\n1;" + mark + ";1\n2;6;1\n"));
  }

  static Stream<Row> rows() {
    String good = "Time;P (W)\n12:00:00;5,5\n12:00:01;6,5\n";
    return Stream.of(
        read("statistics at the end", 1, 5.5, 6.5, "W", good + "Min;5,5\nMax;6,5\nMean;6,0\n"),
        read("statistics behind a blank row", 1, 5.5, 6.5, "W", good + "\n\nAverage;6,0\n"),
        read("text at the end", 1, 5.5, 6.5, "W", good + "End of log\n"),
        read(
            "text at the end in its own columns",
            1,
            5.5,
            6.5,
            "W",
            good + "Rows;2;of;2\nSigned;nobody\n"),
        read(
            "statistics beside an empty time",
            1,
            5.5,
            6.5,
            "W",
            "Time;What;P (W)\n12:00:00;;5,5\n12:00:01;;6,5\n;Mean;6,0\n"),
        refused("text between readings", "row 4", good + "pause\n12:00:03;7,5\n"),
        refused(
            "text in a reading at the end", "'ready' is not a figure", good + "12:00:02;ready\n"),
        refused("a row cut short at the end", "has 1 column", good + "12:00:02\n"),
        read("headings again", 2, 5.5, 7.5, "W", good + "Time;P (W)\n12:00:02;7,5\n"),
        refused("headings again with other columns", "row 4", good + "Time;Q (W)\n12:00:02;7,5\n"),
        read("headings again in a spreadsheet's directive", 1, 5.5, 6.5, "W", "sep=;\n" + good),
        read(
            "a log that is over range throughout",
            1,
            Double.NaN,
            Double.NaN,
            "Ohm",
            "Time;R (Ohm)\n12:00:00;OL\n12:00:01;OL\n"),
        read("over range throughout, of one column", 2, Double.NaN, Double.NaN, "", "OL\nOL\nOL\n")
            .with("time=none"),
        read(
            "a heading over two lines (RFC 4180, 2.6)",
            1,
            5,
            6,
            "W",
            "Time,\"Power\n(W)\"\n12:00:00,5\n12:00:01,6\n"),
        read(
            "quotes in quotes (RFC 4180, 2.7)",
            1,
            5,
            6,
            "W",
            "Time,\"the \"\"new\"\" Power (W)\"\r\n12:00:00,5\r\n12:00:01,6\r\n"),
        read("rows that end with CR", 1, 5, 6, "W", "Time,P (W)\r12:00:00,5\r12:00:01,6\r"),
        read("pipes", 1, 5, 6, "W", "Time|P (W)\n12:00:00|5\n12:00:01|6\n"),
        refused(
            "a figure of 1e300", "beyond any reading", good.replace(',', '.') + "12:00:02;1e300\n"),
        refused(
            "a figure of 1e999", "beyond any reading", good.replace(',', '.') + "12:00:02;1e999\n"),
        refused("a time of 1e300", "beyond any time", "t [s];P\n0;1\n1e300;2\n"),
        refused("newest first", "comes before", "Time;P\n12:00:03;1\n12:00:02;2\n12:00:01;3\n"));
  }

  private Log log(Row row) throws IOException {
    Path file = Files.write(folder.resolve("log.csv"), row.text().getBytes(StandardCharsets.UTF_8));
    return LogFile.read(file, options(row.flags()), LogFile.Progress.NONE);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource({"figures", "times", "units", "marks", "rows"})
  void isReadOrAskedFor(Row row) throws IOException {
    if (!row.told().isEmpty()) {
      InputException refused = assertThrows(InputException.class, () -> log(row));
      String said = String.join("\n", refused.problems().stream().map(Problem::display).toList());
      assertTrue(said.contains(row.told()), said);
      return;
    }
    Log log = log(row);
    Series series = log.recording().column(0);
    assertEquals(row.seconds(), log.recording().lastTime(), 2e-4, "length");
    assertEquals(row.unit(), log.format().values().get(0).unit(), "unit");
    double[] range = series.outline(1).get(0);
    assertEquals(row.least(), range[0], 1e-9, "least");
    assertEquals(row.most(), range[1], 1e-9, "greatest");
  }

  @Test
  void aGuessIsToldWithItsSureness() throws IOException {
    Log log = log(read("", 0, 0, 0, "", "t,P\n10/11/2026 14:03,1.5\n10/11/2026 14:04,2.5\n"));
    List<Guess> guesses = log.format().guesses();
    assertEquals(List.of("decimals", "dates"), guesses.stream().map(Guess::about).toList());
    assertEquals(LogFormat.Sureness.CERTAIN, guesses.get(0).sureness());
    assertEquals(LogFormat.Sureness.EVEN, guesses.get(1).sureness());
    assertTrue(guesses.get(1).why().contains("--dates mdy"), guesses.get(1).why());
  }

  @Test
  void allThatMustBeSaidIsAskedAtOnce() {
    InputException refused =
        assertThrows(
            InputException.class, () -> log(refused("", "", "Time;P\n0;1,234\n1;1,235\n")));
    assertEquals(2, refused.problems().size(), refused.getMessage());
  }

  @Test
  void overRangeRowsAreCounted() throws IOException {
    for (Row row : marks().toList()) {
      assertEquals(1, log(row).recording().overRange(0).count(), row.name());
    }
    Log below = log(read("", 0, 0, 0, "", "t [s];R\n0;5.5\n1;<0.1\n2;-OL\n3;6.5\n"));
    assertEquals(2, below.recording().overRange(0).count());
    assertEquals(-1, below.recording().overRange(0).outline(1).get(0)[1]);
  }

  /** Each start second of a day: the first row lies in a span that starts with it. */
  @Test
  void theFirstRowIsNeverLost() {
    LogFormat.Timing timing = new LogFormat.Timing("", true, false, false, false);
    for (int second = 0; second < 86_400; second++) {
      String clock = "%02d:%02d:%02d".formatted(second / 3600, second / 60 % 60, second % 60);
      double[] within = LogSpan.parse(clock + ".." + clock).within(second, timing);
      assertEquals(0, within[0], clock);
      assertFalse(within[1] < 0, clock);
    }
  }

  /** A guess that changes no reading does change what a date names. */
  @Test
  void aSpanByDateAsksForTheOrderThatIsAGuess() {
    LogFormat.Timing guess = new LogFormat.Timing("", true, true, true, false);
    LogSpan span = LogSpan.parse("2026-11-10T14:00..2026-11-10T15:00");
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> span.within(0, guess));
    assertTrue(refused.getMessage().contains("--dates"), refused.getMessage());
  }

  @Test
  void aResolutionFollowsTheCoarsestUnitAndTheExponent() throws IOException {
    Log units = log(read("", 0, 0, 0, "", "t [s];V;Unit\n0;999.1;W\n1;1.001;kW\n"));
    assertEquals(1, units.resolutions().get(0), 1e-12);
    Log exponent = log(read("", 0, 0, 0, "", "t [s],V\n0,1.2345E+03\n1,1.2346E+03\n"));
    assertEquals(0.1, exponent.resolutions().get(0), 1e-12);
  }
}
