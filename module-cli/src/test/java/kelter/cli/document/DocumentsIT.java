package kelter.cli.document;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every command of README, DEVELOPERS and the helps, run at the built tool: it ends well and prints
 * what the document shows. Those that call Maven are builds and trials and are not run here; the
 * page of the outside module is followed by {@code -Doutside}.
 *
 * <p>The commands of a section are typed one after another in a folder of their own. A command that
 * the text names is run in a folder of its own, with words such as JOB filled in as {@link #FILLED}
 * says.
 */
@DisabledOnOs(OS.WINDOWS)
class DocumentsIT {

  private static final Path README = Path.of("..", "README.md");
  private static final Path DEVELOPERS = Path.of("..", "DEVELOPERS.md");

  /** So few machines are drawn, since the figures of a simulation are held elsewhere. */
  private static final String FEW = " -n 2";

  /** What the text names, and what is run for it: JOB and the like need something to stand for. */
  private static final Map<String, String> FILLED = new LinkedHashMap<>();

  static {
    fill("kelter bench [JOB]", "kelter bench job.json");
    fill("kelter bench", "kelter bench");
    fill("kelter new KIND", "kelter new kettle");
    fill("kelter new KIND -o JOB", "kelter new kettle -o new.json");
    fill("kelter new --all", "kelter new kettle --all");
    fill("kelter enter JOB", "kelter enter job.json --saw leaks=no");
    fill("kelter check JOB", "kelter check job.json");
    fill("kelter check --risk JOB", "kelter check --risk job.json");
    fill("kelter diagnose JOB", "kelter diagnose job.json");
    fill("kelter diagnose --full JOB", "kelter diagnose --full job.json");
    fill("kelter diagnose DIR", "kelter diagnose demo/jobs");
    fill("kelter diagnose --why FAULT JOB", "kelter diagnose --why heater.open job.json");
    fill(
        "kelter diagnose --what-if \"PART.OBSERVABLE=READING\" JOB",
        "kelter diagnose --what-if \"heater.resistance=26 ohm\" job.json");
    fill("kelter diagnose marrowby-0412", "KELTER_SHOP=my-shop kelter diagnose marrowby-0412");
    fill("kelter sheet JOB", "kelter sheet job.json");
    fill("kelter sheet -o", "kelter sheet -o sheet.html job.json");
    fill("kelter weigh", "kelter weigh job.json");
    fill("kelter weigh JOB", "kelter weigh job.json");
    fill("kelter weigh --full JOB", "kelter weigh --full job.json");
    fill("kelter weigh --why JOB", "kelter weigh --why job.json");
    fill("kelter quote", "kelter quote job.json");
    fill("kelter quote JOB", "kelter quote job.json");
    fill("kelter quote --accept N JOB", "kelter quote --accept 1 job.json");
    fill("kelter quote --final JOB", "kelter quote --final job.json");
    fill("kelter done JOB WORK", "kelter done job.json heater.renew-heater");
    fill("kelter prove JOB", "kelter prove job.json");
    fill("kelter report JOB -o report.html", "kelter report job.json -o report.html");
    fill("kelter close JOB --outcome WORD", "kelter close job.json --outcome left");
    fill("kelter reopen JOB", "kelter reopen closed.json");
    fill("kelter simulate JOB", "kelter simulate job.json");
    fill("kelter readings LOG", "kelter readings demo/logs/boiler-heating.csv");
    fill("kelter compute NAME", "kelter compute heater-resistance");
    fill("kelter compute NAME k=v ...", "kelter compute heater-resistance power=2kW voltage=230V");
    fill(
        "kelter compute NAME ... --budget",
        "kelter compute heater-resistance power='2kW±5%' voltage=230V --budget");
    fill("kelter shop init DIR", "kelter shop init new-shop");
    fill("kelter shop person ID", "kelter shop person p-17 --shop my-shop");
    fill("kelter shop forget ID", "kelter shop forget p-17 --shop my-shop");
    fill("kelter model learn JOB", "kelter model learn demo/jobs/healthy-washer.json");
    fill("kelter book add FILE", "kelter book add closed.json --shop my-shop");
    fill("kelter book add", "kelter book add closed.jsonl --shop my-shop");
    fill("kelter book import FILE", "kelter book import repairs.csv --shop my-shop");
    fill("kelter book list", "kelter book list --shop my-shop");
    fill("kelter book show JOB", "kelter book show marrowby-0412 --shop my-shop");
    fill("kelter book search WORDS", "kelter book search seal --shop my-shop");
    fill("kelter book similar JOB", "kelter book similar marrowby-0412 --shop my-shop");
    fill("kelter book learn", "kelter book learn --shop my-shop");
    fill("kelter book stats", "kelter book stats --shop my-shop");
    fill(
        "kelter book stats --hour-costs '38 EUR'",
        "kelter book stats --hour-costs '38 EUR' --shop my-shop");
    fill("kelter book export", "kelter book export --shop my-shop");
    fill("kelter book backup FILE", "kelter book backup copy.db --shop my-shop");
    fill("kelter book check", "kelter book check --shop my-shop");
    fill("kelter modules --plugins DIR", "kelter modules --plugins my-plugins");
    fill("kelter schema [NAME]", "kelter schema job");
    fill("kelter completion SHELL", "kelter completion bash");
    fill("kelter completion", "kelter completion bash");
    fill("kelter man [COMMAND]", "kelter man diagnose");
  }

  /** The way of a whole shop, which {@code CarriedCasesIT} goes. */
  private static final Set<String> ELSEWHERE = Set.of("demo/carry FOLDER");

  private static final String MODULES = "{\"id\": 1, \"command\": \"modules\"}\n";

  /** What is typed while a command runs that asks. */
  private static final Map<String, String> TYPED =
      Map.of(
          "kelter bench", "kettle\n3a\nIt stays cold\ny\ndone\n",
          "kelter bench job.json", "done\n",
          "kelter bench demo/jobs/tumble-dryer.json", "done\n",
          "kelter prove --led job.json", "27.8 ohm\ndone\n",
          "kelter answer", MODULES,
          "kelter answer --shop my-shop", MODULES);

  /** What has to be so before a command can be run alone, by how it begins. */
  private static final Map<String, String> BEFORE =
      Map.of(
          "kelter new washing-machine", "rm job.json",
          "kelter new dryer", "rm job.json",
          "kelter close job.json",
              "kelter done job.json heater.renew-heater --found heater.open"
                  + " && kelter prove job.json --saw stays-cold=no",
          "kelter quote --final", "kelter done job.json heater.renew-heater",
          "kelter prove", "kelter done job.json heater.renew-heater --found heater.open",
          "kelter reopen job.json", "kelter close job.json --outcome left");

  private static final Pattern WRITTEN = Pattern.compile(" -o (\\S+)");

  private static AtHand atHand;

  @TempDir private static Path folder;
  private static int folders;

  private static void fill(String named, String run) {
    FILLED.put(named, run);
  }

  @BeforeAll
  static void layOut() throws IOException, InterruptedException {
    atHand = AtHand.all(Files.createDirectory(folder.resolve("at hand")));
  }

  private static AtHand another() throws IOException {
    folders++;
    return atHand.copied(folder.resolve("folder-" + folders));
  }

  @Test
  void theReadmeDoesWhatItSays() throws IOException, InterruptedException {
    Set<String> named = follow(Page.of(README));
    named.addAll(follow(Page.of(DEVELOPERS)));
    Set<String> unused = new TreeSet<>(FILLED.keySet());
    unused.removeAll(named);
    assertEquals(Set.of(), unused, "no document names these any more");
  }

  /** Follows a page from its beginning; gives the commands that its text names. */
  private static Set<String> follow(Page page) throws IOException, InterruptedException {
    Set<String> named = new TreeSet<>();
    AtHand section = another();
    String said = "";
    int typed = 0;
    for (Page.Step step : page.steps()) {
      String text = step.text();
      switch (step.sort()) {
        case HEADING -> section = begun(text);
        case PRINTED -> assertPrinted(text, said);
        case TYPED -> {
          if (!text.startsWith("mvn ")) {
            said = run(section, text);
            typed++;
          }
        }
        case NAMED -> {
          if (!text.startsWith("mvn ") && !ELSEWHERE.contains(text) && isRunnable(text)) {
            named.add(text);
            said = runAlone(FILLED.getOrDefault(text, text));
          }
        }
      }
    }
    assertTrue(typed > 1, "too few commands were found: " + typed);
    return named;
  }

  /** A folder for a section; that of the call begins with nothing. */
  private static AtHand begun(String heading) throws IOException {
    return heading.equals("From the call")
        ? AtHand.bare(Files.createDirectory(folder.resolve("from the call")))
        : another();
  }

  /** Paths of the tool that the text names are no commands. */
  private static boolean isRunnable(String named) {
    return !named.startsWith("module-cli/target/");
  }

  @Test
  void theExamplesOfEveryHelpRun() throws IOException, InterruptedException {
    List<Executable> examples = new ArrayList<>();
    List<String> without = new ArrayList<>();
    for (String command : commands()) {
      List<String> found = examples(atHand.done("kelter " + command + " --help"));
      if (found.isEmpty()) {
        without.add(command);
      }
      found.forEach(example -> examples.add(() -> runAlone(example)));
    }
    assertEquals(List.of(), without, "commands whose help has no example");
    assertTrue(examples.size() > 50, "too few examples were found: " + examples.size());
    assertAll(examples);
  }

  private static String runAlone(String command) throws IOException, InterruptedException {
    AtHand place = another();
    for (var before : BEFORE.entrySet()) {
      if (command.startsWith(before.getKey())) {
        place.done(before.getValue());
      }
    }
    return run(place, command);
  }

  private static List<String> commands() throws IOException, InterruptedException {
    List<String> names = new ArrayList<>();
    Pattern row = Pattern.compile("  ([a-z]+( [a-z]+)?)  +\\S.*");
    String overview = atHand.done("kelter --help");
    for (String line : overview.substring(overview.indexOf("\nCommands\n")).lines().toList()) {
      var matcher = row.matcher(line);
      if (matcher.matches()) {
        names.add(matcher.group(1));
      }
    }
    return names;
  }

  private static List<String> examples(String help) {
    int begin = help.lastIndexOf("\nExample");
    return begin < 0 ? List.of() : Page.commands(help.substring(help.indexOf('\n', begin + 1) + 1));
  }

  /** A command that writes a file may say nothing, since it says it there. */
  private static String run(AtHand place, String command) throws IOException, InterruptedException {
    String said = place.done(fewer(command), TYPED.getOrDefault(command, ""));
    Matcher written = WRITTEN.matcher(command);
    assertTrue(
        !said.isBlank() || written.find() && Files.exists(place.folder().resolve(written.group(1))),
        () -> command + " prints nothing and writes nothing");
    return said;
  }

  private static String fewer(String command) {
    return command.contains("kelter simulate ")
        ? command.replaceAll(" -n \\d+", "") + FEW
        : command;
  }

  /** Each line of a block is printed, in the order of the block. */
  private static void assertPrinted(String block, String said) {
    Iterator<String> printed = said.lines().iterator();
    for (String line : block.lines().filter(each -> !each.isBlank()).toList()) {
      boolean found = false;
      while (!found && printed.hasNext()) {
        found = printed.next().strip().equals(line.strip());
      }
      assertTrue(found, () -> "'" + line + "' is not printed, or not there:\n" + said);
    }
  }
}
