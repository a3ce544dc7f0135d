package kelter.cli.hostile;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.module.Calculation;
import kelter.core.module.Parameter;

/** The families of hostile input. */
final class Families {

  private static final String JOB = "job.json";
  private static final String LOG = "log.csv";
  private static final String SHOP = "shop.json";
  private static final int MOST_MACHINES = 20;

  private static final List<Charset> CHARSETS =
      List.of(
          StandardCharsets.UTF_8,
          StandardCharsets.UTF_8,
          StandardCharsets.UTF_8,
          StandardCharsets.UTF_16,
          StandardCharsets.UTF_16LE,
          StandardCharsets.ISO_8859_1,
          Charset.forName("windows-1252"));

  /** Commands that take a job, behind which the job stands. */
  private static final List<String> OF_JOB =
      List.of(
          "check",
          "check --risk",
          "diagnose",
          "diagnose",
          "weigh",
          "weigh --why",
          "weigh --carbon",
          "diagnose --why heater.element-open",
          "diagnose --what-if heater.resistance=26ohm",
          "simulate -n 3 --led 1");

  private static final List<String> OF_LOG =
      List.of(
          "",
          "",
          "--map #3=heater.power",
          "--map #4=heater.power --map #3=heater.power.voltage --into @FOLDER@/job.json",
          "--steady 5% --window 1",
          "--window 5s..60s --map #4=heater.power",
          "--compare 1,2",
          "--every 1s",
          "--time elapsed",
          "--dates mdy --decimal comma",
          "--units #2=V --delimiter ;",
          "--encoding utf-8 --instrument plug-in-meter --map #4=heater.power");

  private static final List<String> LINES =
      List.of(
          "check --risk @FOLDER@/job.json",
          "diagnose --format json @FOLDER@/job.json",
          "diagnose --why heater.element-open @FOLDER@/job.json",
          "diagnose --what-if heater.resistance=OL --format json @FOLDER@/job.json",
          "weigh --why --carbon --format json @FOLDER@/job.json",
          "weigh --plot @FOLDER@/cost.svg --seed 5 @FOLDER@/job.json",
          "simulate -n 3 --led 1 --seed 4 --threads 2 @FOLDER@/job.json",
          "simulate --wrong-by 10 -n 3 --led 0 glasswasher",
          "readings @FOLDER@/log.csv --map #4=heater.power --into @FOLDER@/job.json",
          "readings --shop @FOLDER@/shop.json --format json @FOLDER@/log.csv",
          "readings --window 1 --steady 2% --at voltage=230V @FOLDER@/log.csv",
          "readings --every 1s --encoding utf-8 --delimiter ; --decimal comma @FOLDER@/log.csv",
          "compute heater-resistance power=2kW±5% voltage=230V --budget --trials 1000 --seed 3",
          "compute heater-resistance --format json",
          "new washer-extractor -o @FOLDER@/new.json",
          "new other",
          "schema job",
          "instruments",
          "modules --format json --plugins @FOLDER@/none",
          "--version",
          "help",
          "diagnose --help");

  private final Seeds seeds;
  private final TextMutation text;
  private final JsonMutation json;
  private final TableMutation table;
  private final List<Calculation> calculations;

  Families(Seeds seeds, List<Calculation> calculations) {
    this.seeds = seeds;
    this.calculations = List.copyOf(calculations);
    text = new TextMutation(Words.of(seeds.all()));
    json = new JsonMutation(text);
    table = new TableMutation(text);
  }

  /** All families, by name. */
  Map<String, Family> all() {
    Map<String, Family> all = new LinkedHashMap<>();
    all.put("jobs", this::job);
    all.put("shop profiles", this::shop);
    all.put("logs", this::log);
    all.put("quantities", this::quantity);
    all.put("plugins", this::plugin);
    all.put("command lines", this::line);
    return all;
  }

  private Attempt job(Chance chance) {
    String job = changed(chance.of(seeds.jobs()), chance);
    return new Attempt(
        Map.of(JOB, bytes(job, StandardCharsets.UTF_8, chance)),
        words(chance.of(OF_JOB), chance, Attempt.FOLDER + JOB),
        false);
  }

  private Attempt shop(Chance chance) {
    String shop = changed(seeds.shop(), chance);
    Map<String, byte[]> files =
        Map.of(
            SHOP,
            bytes(shop, StandardCharsets.UTF_8, chance),
            JOB,
            utf8(chance.of(seeds.jobs())),
            LOG,
            utf8(chance.of(seeds.logs())));
    String command = chance.oneIn(3) ? "readings" : chance.of(OF_JOB);
    String read = command.equals("readings") ? LOG : JOB;
    List<String> words = words(command, chance, Attempt.FOLDER + read);
    return new Attempt(files, with(words, "--shop", Attempt.FOLDER + SHOP), false);
  }

  private Attempt log(Chance chance) {
    String log = chance.of(seeds.logs());
    for (int i = chance.few(); i > 0; i--) {
      log = table.of(log, chance);
    }
    Map<String, byte[]> files =
        Map.of(
            LOG,
            bytes(log, chance.of(CHARSETS), chance),
            JOB,
            utf8(chance.of(seeds.jobs())),
            SHOP,
            utf8(seeds.shop()));
    List<String> words =
        words(("readings " + chance.of(OF_LOG)).strip(), chance, Attempt.FOLDER + LOG);
    if (chance.oneIn(4)) {
      words = with(words, "--shop", Attempt.FOLDER + SHOP);
    }
    return new Attempt(files, words, false);
  }

  private Attempt quantity(Chance chance) {
    if (chance.oneIn(3)) {
      String reading = plain(text.of("26.4 ohm ± 0.3 (k=2)", chance));
      return new Attempt(
          Map.of(JOB, utf8(chance.of(seeds.jobs()))),
          words(
              "diagnose",
              chance,
              "--what-if",
              "heater.resistance=" + reading,
              Attempt.FOLDER + JOB),
          false);
    }
    Calculation calculation = chance.of(calculations);
    List<String> words = words("compute", chance, calculation.id());
    for (Parameter parameter : calculation.parameters()) {
      if (parameter.usual().isEmpty() || chance.oneIn(2)) {
        words = with(words, parameter.id() + "=" + plain(value(parameter, chance)));
      }
    }
    if (chance.oneIn(3)) {
      words = with(words, "--budget", "--trials", "500");
    }
    return new Attempt(Map.of(), words, false);
  }

  /** A value from the range of the parameter, at an end of it, or something else. */
  private String value(Parameter parameter, Chance chance) {
    if (!parameter.choices().isEmpty()) {
      String word = chance.of(parameter.choices());
      return chance.oneIn(3) ? text.of(word, chance) : word;
    }
    double high = Math.min(parameter.high(), 1e9);
    double low = Math.max(parameter.low(), -1e9);
    double si =
        switch (chance.below(6)) {
          case 0 -> low;
          case 1 -> high;
          case 2 -> low > 0 ? low * Math.pow(high / low, chance.random().nextDouble()) : 0;
          default -> low + (high - low) * chance.random().nextDouble();
        };
    String symbol = parameter.kind().unit().symbol();
    double shown = (si - parameter.kind().unit().shift()) / parameter.kind().unit().factor();
    String usual = shown + (symbol.isEmpty() ? "" : " " + symbol);
    String value =
        parameter.usual().isPresent() && chance.oneIn(3) ? parameter.usual().get() : usual;
    if (chance.oneIn(3)) {
      value = value + " ± " + text.words().number(chance) + (chance.oneIn(2) ? " %" : "");
    }
    for (int i = chance.oneIn(2) ? chance.few() : 0; i > 0; i--) {
      value = text.of(value, chance);
    }
    return value;
  }

  private Attempt plugin(Chance chance) {
    String job =
        chance
            .of(seeds.jobs())
            .replaceFirst(
                "\"components\": \\[", "$0 { \"id\": \"lamp\", \"kind\": \"strip-light\" }, ")
            .replaceFirst(
                "\"measurements\": \\[",
                "$0 { \"of\": \"lamp\", \"observable\": \"dark\", \"reading\": \"yes\" }, ");
    List<String> words =
        switch (chance.below(8)) {
          case 0 -> words("modules", chance);
          case 1 -> words("instruments", chance);
          case 2, 3 -> words("compute", chance, "lamp-current", "power=60W", "voltage=230V");
          default -> words(chance.of(OF_JOB), chance, Attempt.FOLDER + JOB);
        };
    return new Attempt(
        Map.of(JOB, utf8(job), HostilePlugin.SEED, utf8("" + chance.random().nextLong())),
        with(words, "--plugins", FuzzRun.PLUGINS),
        false);
  }

  private Attempt line(Chance chance) {
    List<String> words = new ArrayList<>(List.of(chance.of(LINES).split(" ")));
    for (int i = chance.few(); i > 0 && !words.isEmpty(); i--) {
      changeLine(words, chance);
    }
    words.replaceAll(Families::inFolder);
    boundMachines(words);
    return new Attempt(
        Map.of(
            JOB,
            utf8(chance.of(seeds.jobs())),
            LOG,
            utf8(chance.of(seeds.logs())),
            SHOP,
            utf8(seeds.shop())),
        words,
        true);
  }

  private void changeLine(List<String> words, Chance chance) {
    int at = chance.below(words.size());
    String other = chance.of(List.of(chance.of(LINES).split(" ")));
    switch (chance.below(8)) {
      case 0 -> words.remove(at);
      case 1 -> words.add(at, words.get(at));
      case 2 -> words.set(at, words.set(chance.below(words.size()), words.get(at)));
      case 3 -> words.add(at, other);
      case 4 -> words.set(at, other);
      case 5 -> words.add(at, plain(text.words().any(chance)));
      default -> words.set(at, plain(text.of(words.get(at), chance)));
    }
  }

  /** A word that names a file anywhere else names one in the folder. */
  private static String inFolder(String word) {
    String rest = word.replace(Attempt.FOLDER, "").replace("/", "_").replace("\\", "_");
    return word.startsWith(Attempt.FOLDER) ? Attempt.FOLDER + rest : rest;
  }

  /** That many machines take that long is as it should be. */
  private static void boundMachines(List<String> words) {
    if (words.contains("simulate") || words.contains("compute")) {
      words.replaceAll(
          word -> word.matches("(--?[a-z]+=?)?\\+?\\d{2,}") && tooMany(word) ? "3" : word);
    }
    if (words.contains("simulate")) {
      words.addAll(List.of("-n", "2", "--led", "0"));
    }
  }

  private static boolean tooMany(String word) {
    String digits = word.replaceAll("\\D", "");
    return digits.length() > 3 || Integer.parseInt(digits) > MOST_MACHINES;
  }

  private String changed(String seed, Chance chance) {
    String changed = seed;
    boolean gentle = chance.oneIn(2);
    for (int i = (gentle ? 2 : 1) * chance.few(); i > 0; i--) {
      changed = gentle ? json.gentle(changed, chance) : json.of(changed, chance);
    }
    return changed;
  }

  /** The command of so many words, in one format or the other. */
  private static List<String> words(String command, Chance chance, String... more) {
    List<String> words = new ArrayList<>(List.of(command.split(" ")));
    words.addAll(List.of(more));
    if (chance.oneIn(2)) {
      words.addAll(List.of("--format", "json"));
    }
    return words;
  }

  private static List<String> with(List<String> words, String... more) {
    List<String> all = new ArrayList<>(words);
    all.addAll(List.of(more));
    return all;
  }

  /** No system hands a word with NUL to a program. */
  private static String plain(String word) {
    return word.replace("\u0000", "");
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** The bytes of a text, of which a few are changed now and then. */
  private static byte[] bytes(String text, Charset charset, Chance chance) {
    byte[] bytes = text.getBytes(charset);
    if (chance.oneIn(8) && bytes.length > 0) {
      for (int i = chance.few(); i > 0; i--) {
        bytes[chance.below(bytes.length)] = (byte) chance.below(256);
      }
    }
    return bytes;
  }
}
