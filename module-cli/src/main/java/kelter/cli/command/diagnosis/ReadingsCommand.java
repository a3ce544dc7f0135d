package kelter.cli.command.diagnosis;

import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.json.ReadingsJson;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.readings.ReadingsText;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.file.job.JobDocument;
import kelter.core.file.log.DateOrder;
import kelter.core.file.log.Log;
import kelter.core.file.log.LogFile;
import kelter.core.file.log.LogOptions;
import kelter.core.file.log.TimeForm;
import kelter.core.file.shop.ShopDocument;
import kelter.core.file.shop.ShopFile;
import kelter.core.job.Job;
import kelter.core.log.SteadyRule;
import kelter.core.log.measurement.Change;
import kelter.core.log.measurement.ColumnMaps;
import kelter.core.log.measurement.LogReader;
import kelter.core.log.measurement.LogReading;
import kelter.core.log.measurement.LogReport;
import kelter.core.log.measurement.ReadAs;
import kelter.core.log.measurement.Stretch;
import kelter.core.problem.InputException;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.shop.LogColumn;

/** {@code kelter readings LOG}: an instrument log turned into readings of a job. */
public final class ReadingsCommand implements Command {

  private static final CommandOption MAP =
      CommandOption.many(
          "--map",
          "MAP",
          "what a column holds: COLUMN=component.observable, with .condition behind it"
              + " for a condition; COLUMN[UNIT] if the heading has no unit; #3 is the third column");
  private static final CommandOption INTO =
      CommandOption.one(
          "--into",
          ValueKind.FILE,
          "JOB",
          "the job to write the readings into, a file or the id of one in the shop's folder");
  private static final CommandOption WINDOW =
      CommandOption.many(
          "--window",
          "WINDOW",
          "a stretch to look at and to read: the number of a steady window, or FROM..TO as"
              + " 5min..10min from the start, or 14:05..14:20 by the clock");
  private static final CommandOption COMPARE =
      CommandOption.one(
          "--compare", ValueKind.TEXT, "BEFORE,AFTER", "what changed between two such stretches");
  private static final CommandOption LEAD_IN =
      CommandOption.one(
          "--lead-in",
          ValueKind.TEXT,
          "WINDOW",
          "a healthy stretch that tells how far the columns drift by themselves"
              + " (default: BEFORE)");
  private static final CommandOption AT =
      CommandOption.many("--at", "NAME=VALUE", "a condition of the readings");
  private static final CommandOption INSTRUMENT =
      CommandOption.one(
          "--instrument", ValueKind.TEXT, "ID", "the instrument, of the job or the shop");
  private static final CommandOption EVERY =
      CommandOption.one(
          "--every", ValueKind.TEXT, "TIME", "from row to row, for a log without times");
  private static final CommandOption STEADY =
      CommandOption.one(
          "--steady", ValueKind.TEXT, "PERCENT", "the band of a steady window (default 1 %)");
  private static final CommandOption ENCODING =
      CommandOption.one(
          "--encoding", ValueKind.TEXT, "NAME", "the character set, if it is mistaken");
  private static final CommandOption DELIMITER =
      CommandOption.one(
          "--delimiter", ValueKind.TEXT, "SIGN", "what splits columns, if it is mistaken");
  private static final CommandOption DECIMAL =
      CommandOption.one(
          "--decimal", ValueKind.TEXT, "SIGN", "the decimal sign, point or comma, if asked for");
  private static final CommandOption DATES =
      CommandOption.one(
          "--dates",
          ValueKind.TEXT,
          "ORDER",
          "how dates are written, ymd, dmy or mdy, if asked for");
  private static final CommandOption TIME =
      CommandOption.one(
          "--time",
          ValueKind.TEXT,
          "FORM",
          "what the times are, if asked for: "
              + TimeForm.words()
              + "; COLUMN=FORM names their column");
  private static final CommandOption UNITS =
      CommandOption.many(
          "--units",
          "COLUMN=UNIT",
          "the unit of a column, if the log does not tell it or is wrong");
  private static final long BETWEEN_TELLINGS = 200_000_000;

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "readings",
        "Look at the log of an instrument and turn it into readings.",
        "It tells what was recognised, where the columns stand still, and what they show there."
            + " Windows become readings of a job. With a shop profile, what --map says is"
            + " remembered in it.",
        List.of(
            MAP,
            WINDOW,
            COMPARE,
            LEAD_IN,
            AT,
            INSTRUMENT,
            INTO,
            EVERY,
            STEADY,
            ENCODING,
            DELIMITER,
            DECIMAL,
            DATES,
            TIME,
            UNITS,
            Invocation.SHOP),
        List.of(CommandArgument.one("LOG", ValueKind.FILE, "the log, text in columns")),
        List.of(
            "kelter readings demo/logs/boiler-heating.csv",
            "kelter readings demo/logs/boiler-heating.csv --compare 1,3",
            "kelter readings demo/logs/boiler-heating.csv --map Power=heater.power --window 2"
                + " --into job.json",
            "kelter readings demo/logs/boiler-heating.csv --map 'Water[Cel]=heater.heating-rate'"
                + " --window 2min..5min --at volume=20L --into job.json"));
  }

  @Override
  public void run(Invocation invocation) {
    Terminal terminal = invocation.terminal();
    Path file = invocation.file();
    List<String> windows = invocation.given().list(WINDOW);
    List<String> compared = compared(invocation);
    List<String> called = new ArrayList<>(windows);
    called.addAll(compared);
    Optional<String> leadIn = leadIn(invocation, compared);
    leadIn.ifPresent(called::add);
    LogOptions options = options(invocation, called);
    SteadyRule rule = rule(invocation);
    Optional<Path> profile = invocation.shop().profile();
    Optional<ShopDocument> shop = invocation.shop().document();
    Optional<Path> into = invocation.given().text(INTO).map(invocation.shop()::job);
    // Mistakes of the job are told before a long log is read.
    Optional<Job> job = into.map(invocation::job).map(JobDocument::job);

    Log log = read(file, options, terminal);
    LogReport report = LogReport.of(file.toString(), log, rule);
    ColumnMaps columns =
        ColumnMaps.of(
            invocation.given().list(MAP),
            invocation.given().text(INSTRUMENT),
            shop.map(known -> known.shop().columns()).orElse(List.of()),
            log.format());
    List<Stretch> stretches = windows.stream().map(word -> Stretch.of(word, report)).toList();
    List<Change> changes =
        compared.isEmpty()
            ? List.of()
            : Change.of(
                Stretch.of(compared.get(0), report),
                Stretch.of(compared.get(1), report),
                Stretch.of(leadIn.orElse(compared.get(0)), report),
                report);
    List<ReadAs> maps =
        columns.given().isEmpty()
            ? List.of()
            : ReadAs.of(columns, job, invocation.workshop().vocabulary(), report);
    List<String> outcome = new ArrayList<>();
    List<LogReading> readings = List.of();
    if (into.isPresent()) {
      JobEntry entry =
          new JobEntry(
              invocation,
              shop,
              file.getFileName().toString(),
              (written, workshop) ->
                  new LogReader(written, workshop.vocabulary(), workshop.instruments())
                      .readings(report, columns, stretches, invocation.given().list(AT)));
      outcome.add(entry.write(into.get()));
      readings = entry.readings();
    } else if (!maps.isEmpty()) {
      outcome.add("Nothing was written into a job: name one with --into.");
    }
    remember(shop, columns, profile).ifPresent(outcome::add);
    List<LogReading> entered = readings;
    Command.show(
        invocation,
        () -> ReadingsJson.of(report, maps, stretches, changes, entered, outcome),
        () -> ReadingsText.of(report, maps, stretches, changes, entered, outcome, terminal));
  }

  private static List<String> compared(Invocation invocation) {
    Optional<String> said = invocation.given().text(COMPARE);
    if (said.isEmpty()) {
      return List.of();
    }
    List<String> parts = List.of(said.get().strip().split("\\s*,\\s*", -1));
    if (parts.size() != 2) {
      throw new InputException(
          COMPARE.name() + " " + said.get(), "is not two stretches", "write for instance 1,3");
    }
    return parts;
  }

  private static Optional<String> leadIn(Invocation invocation, List<String> compared) {
    Optional<String> said = invocation.given().text(LEAD_IN);
    if (said.isPresent() && compared.isEmpty()) {
      throw new InputException(
          LEAD_IN.name() + " " + said.get(),
          "tells of the drift for a comparison, and none was asked for",
          "name two stretches with " + COMPARE.name());
    }
    return said;
  }

  private static LogOptions options(Invocation invocation, List<String> called) {
    Optional<String> every = invocation.given().text(EVERY);
    Optional<String> encoding = invocation.given().text(ENCODING);
    Optional<String> delimiter = invocation.given().text(DELIMITER);
    try {
      return new LogOptions(
          encoding.map(ReadingsCommand::charset),
          delimiter.map(ReadingsCommand::sign),
          every.map(text -> QuantityParser.parse(text, QuantityKind.TIME).si()).orElse(Double.NaN),
          Stretch.spans(called),
          said(invocation));
    } catch (IllegalArgumentException wrong) {
      throw new InputException(EVERY.name(), wrong.getMessage(), "");
    }
  }

  private static LogOptions.Said said(Invocation invocation) {
    Optional<String> time = invocation.given().text(TIME);
    int sign = time.map(text -> text.lastIndexOf('=')).orElse(-1);
    Map<String, String> units = new LinkedHashMap<>();
    for (String each : invocation.given().list(UNITS)) {
      int at = each.lastIndexOf('=');
      if (at <= 0) {
        throw new InputException(
            UNITS.name() + " " + each, "is not of the form COLUMN=UNIT", "for instance Power=kW");
      }
      units.put(each.substring(0, at).strip(), each.substring(at + 1).strip());
    }
    return new LogOptions.Said(
        invocation.given().text(DECIMAL).map(ReadingsCommand::decimal),
        invocation.given().text(DATES).map(ReadingsCommand::dates),
        time.map(text -> form(text.substring(sign + 1))),
        sign < 0 ? Optional.empty() : time.map(text -> text.substring(0, sign).strip()),
        units);
  }

  private static char decimal(String word) {
    return switch (word.strip()) {
      case "point", "." -> '.';
      case "comma", "," -> ',';
      default ->
          throw new InputException(
              DECIMAL.name(), "'" + word + "' is no decimal sign", "write point or comma");
    };
  }

  private static DateOrder dates(String code) {
    return DateOrder.of(code)
        .orElseThrow(
            () ->
                new InputException(
                    DATES.name(), "'" + code + "' is no order", "write ymd, dmy or mdy"));
  }

  private static TimeForm form(String word) {
    return TimeForm.of(word)
        .orElseThrow(
            () ->
                new InputException(
                    TIME.name(), "'" + word + "' is not known", "known: " + TimeForm.words()));
  }

  private static Charset charset(String name) {
    try {
      return Charset.forName(name);
    } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
      throw new InputException(
          ENCODING.name(),
          "'" + name + "' is not known here",
          "for instance UTF-8 or windows-1252");
    }
  }

  private static char sign(String text) {
    if (text.equals("tab") || text.equals("\\t")) {
      return '\t';
    }
    if (text.length() != 1 || Character.isLetterOrDigit(text.charAt(0)) || text.equals("\"")) {
      throw new InputException(
          DELIMITER.name(), "'" + text + "' cannot split columns", "for instance ; or , or tab");
    }
    return text.charAt(0);
  }

  private static SteadyRule rule(Invocation invocation) {
    Optional<String> band = invocation.given().text(STEADY);
    try {
      return band.map(
              text ->
                  new SteadyRule(
                      QuantityParser.parse(text, QuantityKind.PERCENT).si(),
                      SteadyRule.USUAL.leastSamples()))
          .orElse(SteadyRule.USUAL);
    } catch (IllegalArgumentException wrong) {
      throw new InputException(STEADY.name(), wrong.getMessage(), "for instance 2 %");
    }
  }

  private static Log read(Path file, LogOptions options, Terminal terminal) {
    try {
      return LogFile.read(file, options, progress(terminal));
    } finally {
      terminal.progress("");
    }
  }

  private static LogFile.Progress progress(Terminal terminal) {
    long[] told = {System.nanoTime()};
    return (read, size, rows) -> {
      long now = System.nanoTime();
      if (now - told[0] > BETWEEN_TELLINGS) {
        told[0] = now;
        long percent = size == 0 ? 100 : Math.min(100, 100 * read / size);
        terminal.progress("%s %%, %s rows".formatted(percent, rows));
      }
    };
  }

  /** Remembers what was said of the columns, if a shop profile was named. */
  private static Optional<String> remember(
      Optional<ShopDocument> shop, ColumnMaps maps, Optional<Path> profile) {
    List<LogColumn> said = maps.given().stream().map(ColumnMaps.Mapped::what).toList();
    if (shop.isEmpty() || shop.get().shop().columns().containsAll(said)) {
      return Optional.empty();
    }
    ShopFile.change(
        profile.get(), now -> now.shop().columns().containsAll(said) ? now : now.with(said));
    return Optional.of(
        "Remembered in %s: %s."
            .formatted(
                profile.get(),
                String.join(
                    ", ",
                    said.stream().map(each -> each.column() + " = " + each.target()).toList())));
  }
}
