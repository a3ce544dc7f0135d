package kelter.cli.command;

import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.cli.json.ReadingsJson;
import kelter.cli.readings.Change;
import kelter.cli.readings.ColumnMaps;
import kelter.cli.readings.JobEntries;
import kelter.cli.readings.LogReader;
import kelter.cli.readings.LogReading;
import kelter.cli.readings.LogReport;
import kelter.cli.readings.Stretch;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.ReadingsText;
import kelter.cli.wiring.Workshop;
import kelter.core.file.JobDocument;
import kelter.core.file.JobFile;
import kelter.core.file.ShopDocument;
import kelter.core.file.ShopFile;
import kelter.core.file.log.Log;
import kelter.core.file.log.LogFile;
import kelter.core.file.log.LogOptions;
import kelter.core.log.SteadyRule;
import kelter.core.problem.InputException;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.shop.LogColumn;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** {@code kelter readings LOG}: an instrument log turned into readings of a job. */
final class ReadingsCommand implements Command {

  private static final String MAP = "--map";
  private static final String INTO = "--into";
  private static final String WINDOW = "--window";
  private static final String COMPARE = "--compare";
  private static final String AT = "--at";
  private static final String INSTRUMENT = "--instrument";
  private static final String EVERY = "--every";
  private static final String STEADY = "--steady";
  private static final String ENCODING = "--encoding";
  private static final String DELIMITER = "--delimiter";
  private static final long BETWEEN_TELLINGS = 200_000_000;

  @Override
  public CommandSpec spec() {
    return Arguments.command(
            "readings",
            Arguments.lines(
                "Look at the log of an instrument: what was recognised, where its columns",
                "stand still, and what they show there. Turn windows into readings of a job.",
                "With a shop profile, what --map says is remembered in it."),
            "kelter readings demo/logs/boiler-heating.csv",
            "kelter readings LOG.csv --compare 1,3",
            "kelter readings LOG.csv --map Power=heater.power --window 2 --into job.json",
            "kelter readings LOG.csv --map 'T1[Cel]=heater.heating-rate' \\",
            "         --window 5min..20min --at volume=20L --into job.json")
        .addOption(
            list(MAP, "MAP")
                .description(
                    "what a column holds: COLUMN=component.observable, or"
                        + " COLUMN=component.observable.condition; COLUMN[UNIT] if the heading has no"
                        + " unit; #3 is the third column")
                .build())
        .addOption(
            list(WINDOW, "WINDOW")
                .description(
                    "a stretch to look at and to read: the number of a steady window, or FROM..TO as"
                        + " 5min..10min from the start, or 14:05..14:20 by the clock")
                .build())
        .addOption(
            one(COMPARE, "BEFORE,AFTER", String.class, "what changed between two such stretches"))
        .addOption(list(AT, "NAME=VALUE").description("a condition of the readings").build())
        .addOption(one(INSTRUMENT, "ID", String.class, "the instrument, of the job or the shop"))
        .addOption(one(INTO, "JOB", Path.class, "the job file to write the readings into"))
        .addOption(one(EVERY, "TIME", String.class, "from row to row, for a log without times"))
        .addOption(
            one(STEADY, "PERCENT", String.class, "the band of a steady window (default 1 %%)"))
        .addOption(one(ENCODING, "NAME", String.class, "the character set, if it is mistaken"))
        .addOption(one(DELIMITER, "SIGN", String.class, "what splits columns, if it is mistaken"))
        .addOption(Arguments.shop())
        .addPositional(Arguments.parameter("LOG", Path.class, "the log, text in columns"));
  }

  private static OptionSpec.Builder list(String name, String label) {
    return OptionSpec.builder(name)
        .paramLabel(label)
        .arity("1")
        .type(List.class)
        .auxiliaryTypes(String.class);
  }

  private static OptionSpec one(String name, String label, Class<?> type, String description) {
    return OptionSpec.builder(name).paramLabel(label).type(type).description(description).build();
  }

  @Override
  public void run(Invocation invocation) {
    Terminal terminal = invocation.terminal();
    Path file = invocation.argument();
    List<String> windows = texts(invocation, WINDOW);
    List<String> compared = compared(invocation);
    List<String> called = new ArrayList<>(windows);
    called.addAll(compared);
    LogOptions options = options(invocation, called);
    SteadyRule rule = rule(invocation);
    Optional<Path> profile = invocation.option(Invocation.SHOP);
    Optional<ShopDocument> shop = profile.map(ShopFile::read);
    Optional<Path> into = invocation.option(INTO);
    Workshop workshop = into.isPresent() ? invocation.workshop() : null;
    Optional<JobDocument> job = into.map(path -> workshop.read(path));

    Log log = read(file, options, terminal);
    LogReport report = LogReport.of(file.toString(), log, rule);
    ColumnMaps maps =
        ColumnMaps.of(
            texts(invocation, MAP),
            invocation.option(INSTRUMENT),
            shop.map(known -> known.shop().columns()).orElse(List.of()),
            log.format());
    List<Stretch> stretches = windows.stream().map(word -> Stretch.of(word, report)).toList();
    List<Change> changes =
        compared.isEmpty()
            ? List.of()
            : Change.of(
                Stretch.of(compared.get(0), report), Stretch.of(compared.get(1), report), report);
    List<LogReading> readings =
        job.map(
                document ->
                    LogReader.readings(
                        document.job(),
                        workshop.vocabulary(),
                        workshop.shop().jobInstruments(),
                        report,
                        maps,
                        stretches,
                        texts(invocation, AT)))
            .orElse(List.of());
    List<String> outcome = new ArrayList<>();
    if (job.isPresent()) {
      outcome.add(
          write(workshop, job.get(), shop, readings, file.getFileName().toString(), into.get()));
    } else if (!maps.given().isEmpty()) {
      outcome.add("Nothing was written into a job: name one with --into.");
    }
    remember(shop, maps, profile).ifPresent(outcome::add);
    if (invocation.isJson()) {
      terminal.printUtf8(ReadingsJson.of(report, stretches, changes, readings, outcome));
    } else {
      terminal.print(ReadingsText.of(report, stretches, changes, readings, outcome, terminal));
    }
  }

  private static List<String> texts(Invocation invocation, String option) {
    return invocation.<List<String>>option(option).orElse(List.of());
  }

  private static List<String> compared(Invocation invocation) {
    Optional<String> said = invocation.option(COMPARE);
    if (said.isEmpty()) {
      return List.of();
    }
    List<String> parts = List.of(said.get().strip().split("\\s*,\\s*", -1));
    if (parts.size() != 2) {
      throw new InputException(
          COMPARE + " " + said.get(), "is not two stretches", "write for instance 1,3");
    }
    return parts;
  }

  private static LogOptions options(Invocation invocation, List<String> called) {
    Optional<String> every = invocation.option(EVERY);
    Optional<String> encoding = invocation.option(ENCODING);
    Optional<String> delimiter = invocation.option(DELIMITER);
    try {
      return new LogOptions(
          encoding.map(ReadingsCommand::charset),
          delimiter.map(ReadingsCommand::sign),
          every.map(text -> QuantityParser.parse(text, QuantityKind.TIME).si()).orElse(Double.NaN),
          Stretch.spans(called));
    } catch (IllegalArgumentException wrong) {
      throw new InputException(EVERY, wrong.getMessage(), "");
    }
  }

  private static Charset charset(String name) {
    try {
      return Charset.forName(name);
    } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
      throw new InputException(
          ENCODING, "'" + name + "' is not known here", "for instance UTF-8 or windows-1252");
    }
  }

  private static char sign(String text) {
    if (text.equals("tab") || text.equals("\\t")) {
      return '\t';
    }
    if (text.length() != 1 || Character.isLetterOrDigit(text.charAt(0)) || text.equals("\"")) {
      throw new InputException(
          DELIMITER, "'" + text + "' cannot split columns", "for instance ; or , or tab");
    }
    return text.charAt(0);
  }

  private static SteadyRule rule(Invocation invocation) {
    Optional<String> band = invocation.option(STEADY);
    try {
      return band.map(
              text ->
                  new SteadyRule(
                      QuantityParser.parse(text, QuantityKind.PERCENT).si(),
                      SteadyRule.USUAL.leastSamples()))
          .orElse(SteadyRule.USUAL);
    } catch (IllegalArgumentException wrong) {
      throw new InputException(STEADY, wrong.getMessage(), "for instance 2 %");
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
        terminal.progress("%d %%, %d rows".formatted(percent, rows));
      }
    };
  }

  /** Writes the readings behind those of the job, after the whole has been read back. */
  private static String write(
      Workshop workshop,
      JobDocument job,
      Optional<ShopDocument> shop,
      List<LogReading> readings,
      String log,
      Path into) {
    if (readings.isEmpty()) {
      throw new InputException(
          INTO + " " + into,
          "no column of the log is mapped to a component of the job",
          "write for instance --map 'Power=heater.power'");
    }
    JobDocument written =
        workshop.parse(
            new JobDocument(
                    job.job(),
                    JobEntries.with(job.content(), shop.map(ShopDocument::content), readings, log))
                .text());
    int more = written.job().measurements().size() - job.job().measurements().size();
    if (more == 0) {
      return "Nothing was written: the job %s has these readings already.".formatted(into);
    }
    JobFile.write(written, into);
    return "Written into the job %s: %d %s."
        .formatted(into, more, more == 1 ? "reading" : "readings");
  }

  /** Remembers what was said of the columns, if a shop profile was named. */
  private static Optional<String> remember(
      Optional<ShopDocument> shop, ColumnMaps maps, Optional<Path> profile) {
    List<LogColumn> said = maps.given().stream().map(ColumnMaps.Mapped::what).toList();
    if (shop.isEmpty() || shop.get().shop().columns().containsAll(said)) {
      return Optional.empty();
    }
    ShopFile.write(shop.get().with(said), profile.get());
    return Optional.of(
        "Remembered in %s: %s."
            .formatted(
                profile.get(),
                String.join(
                    ", ",
                    said.stream().map(each -> each.column() + " = " + each.target()).toList())));
  }
}
