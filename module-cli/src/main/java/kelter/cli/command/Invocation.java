package kelter.cli.command;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import kelter.cli.advice.JobAdvice;
import kelter.cli.advice.ShopAdvice;
import kelter.cli.json.output.JsonResult;
import kelter.cli.json.output.MadeBy;
import kelter.cli.terminal.Terminal;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.Given;
import kelter.cli.usage.ValueKind;
import kelter.cli.wiring.Found;
import kelter.cli.wiring.Opening;
import kelter.core.file.job.JobDocument;
import kelter.core.file.job.JobFile;
import kelter.core.file.json.Json;
import kelter.core.file.shop.ShopDocument;
import kelter.core.file.shop.ShopFolder;
import kelter.core.job.Appliance;
import kelter.core.job.Job;
import kelter.core.module.About;
import kelter.core.module.CalculationModule;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.shop.Shop;
import kelter.core.workshop.Case;
import kelter.core.workshop.Workshop;

/** One call of a command: what was given on the command line, and where the result goes. */
public final class Invocation {

  /** The shop, for the commands that read a job. */
  public static final CommandOption WITHOUT_BOOK =
      CommandOption.flag(
          "--without-book", "go by the tables of the kinds alone, not by the shop's job book");

  public static final CommandOption SHOP = NamedShop.OPTION;

  private static final int PLUGIN_SECONDS = 10;
  private static final long MILLISECONDS_PER_DAY = 86_400_000;

  private final Given given;
  private final Opening opening;
  private final Terminal terminal;
  private final Optional<String> shopOfEnvironment;
  private NamedShop namedShop;
  private Optional<JobDocument> job = Optional.empty();
  private final boolean diagnoses;
  private Found found;
  private boolean hasPlugins;
  private boolean advised;
  private int exitCode;
  private boolean withoutBook;
  private Workshop workshop;

  /**
   * A call.
   *
   * @param given the options and arguments of the command
   * @param opening finds the modules and wires the workshop
   * @param terminal where results and complaints go
   * @param diagnoses whether the command diagnoses, so that the wiring was begun ahead
   * @param shop the shop that the environment names
   */
  public Invocation(
      Given given, Opening opening, Terminal terminal, boolean diagnoses, Optional<String> shop) {
    this.shopOfEnvironment = shop;
    this.given = given;
    this.diagnoses = diagnoses;
    this.opening = opening;
    this.terminal = terminal;
  }

  /** The job that a command reads. */
  public static CommandArgument jobFile(String text) {
    return CommandArgument.one(
        "JOB", ValueKind.FILE, text + ", or the id of one in the shop's folder");
  }

  public Given given() {
    return given;
  }

  public Terminal terminal() {
    return terminal;
  }

  public boolean isTraced() {
    return given.has(CommandUsage.TRACE);
  }

  public boolean isJson() {
    return given.isJson();
  }

  /** The first argument. */
  public String argument() {
    return given.arguments().get(0);
  }

  /** The file that the first argument names. */
  public Path file() {
    return Path.of(argument());
  }

  /** The file of the job that the first argument names. */
  public Path jobFile() {
    return shop().job(argument());
  }

  /** What tells the day. */
  public Clock clock() {
    return opening.clock();
  }

  /** The modules at work; plugins that were left out are complained of once. */
  private Found modules() {
    if (found == null) {
      Optional<Path> plugins = plugins();
      hasPlugins = plugins.isPresent();
      found =
          hasPlugins
              ? opening.modules(
                  plugins.get(), given.count(CommandUsage.PLUGIN_SECONDS, PLUGIN_SECONDS))
              : opening.modules();
      for (Problem refused : found.refused()) {
        terminal.complain("kelter: " + refused.display());
      }
    }
    return found;
  }

  /** The plugin folder: the one of the command line, else the one that the shop profile names. */
  private Optional<Path> plugins() {
    Optional<Path> named = given.path(CommandUsage.PLUGINS);
    return named.isPresent() ? named : shop().plugins();
  }

  /** Whether plugins are at work. */
  public boolean hasPlugins() {
    return hasPlugins;
  }

  /** The plugins that were left out when the modules were loaded, each with the reason. */
  public List<Problem> refused() {
    return modules().refused();
  }

  /** Tells a result as JSON, with who made it. */
  public void tell(JsonResult result) {
    modules();
    tellAsFarAsLoaded(result);
  }

  /** Tells why there is no result as JSON, with the modules that were loaded until then. */
  public void tellAsFarAsLoaded(JsonResult errors) {
    terminal.printJson(errors.text(madeBy()));
  }

  /** The tool, and the modules that are loaded. */
  public MadeBy madeBy() {
    List<About> loaded =
        found == null ? List.of() : found.modules().stream().map(CalculationModule::about).toList();
    return MadeBy.loaded(loaded);
  }

  /** Notes that the command is done and still not well. */
  public void fail() {
    end(ExitCode.BAD_INPUT);
  }

  /** Notes with which exit code the command is done. */
  public void end(int code) {
    exitCode = code;
  }

  public int exitCode() {
    return exitCode;
  }

  /**
   * Makes ready to do it all once more, without what a plugin failed at. What was told stays told.
   */
  public void again() {
    workshop = null;
    advised = true;
  }

  /** The shop that is named; its rules hold. */
  public NamedShop shop() {
    if (namedShop == null) {
      namedShop = NamedShop.of(given, shopOfEnvironment);
    }
    return namedShop;
  }

  private Shop complete(ShopFolder folder, Shop profile, Workshop made) {
    return withoutBook || given.has(WITHOUT_BOOK)
        ? folder.completeWithoutBook(profile, made.vocabulary())
        : folder.complete(profile, made.vocabulary());
  }

  /** What the shop's book taught is not read: it may be what has to be written anew. */
  public void leaveOutBook() {
    withoutBook = true;
  }

  /** The job in a file, whose readings may be of instruments of the shop. */
  public JobDocument job(Path file) {
    return job(file, JobFile.content(file));
  }

  /** The job that the content of a file tells. */
  public JobDocument job(Path file, Json content) {
    try {
      return workshop().read(content);
    } catch (InputException mistakes) {
      throw JobFile.placed(file, mistakes);
    }
  }

  /** The job that the first argument names; what may not be meant in it is told. */
  public Job job() {
    JobDocument document = job(jobFile());
    job = Optional.of(document);
    if (!advised) {
      notes().forEach(note -> terminal.complain("kelter: " + note));
    }
    advise(JobAdvice.of(document, clock().millis() / MILLISECONDS_PER_DAY));
    return document.job();
  }

  /** The machine of the job that was read, as its file states it. */
  public Appliance stated() {
    return job.orElseThrow().stated();
  }

  /** How what the job that was read says was taken, where that needs telling. */
  public List<String> notes() {
    return job.map(JobDocument::notes).orElse(List.of());
  }

  /**
   * Mistakes that came up once the job was read, with their lines where they are mistakes of it.
   */
  public InputException placed(InputException mistakes) {
    return job.isPresent() ? JobFile.placed(jobFile(), mistakes) : mistakes;
  }

  /**
   * Tells what may not be meant in the job that the first argument names. What is said of something
   * that stood in from elsewhere is left out.
   */
  public void advise(List<Problem> advice) {
    List<Problem> ofFile =
        advice.stream()
            .filter(problem -> job.orElseThrow().content().holds(problem.where()))
            .toList();
    if (!advised && !ofFile.isEmpty()) {
      Complaints.tell(JobFile.placed(jobFile(), new InputException(ofFile)).problems(), terminal);
    }
  }

  /** Tells what of the shop's stock and prices is never used, beside the remedies of a case. */
  public void adviseOnShop(Case machine) {
    Optional<ShopFolder> folder = shop().folder();
    if (!advised && folder.isPresent()) {
      Complaints.tell(ShopAdvice.of(folder.get(), workshop(), machine), terminal);
    }
  }

  /** The case that the first argument names. */
  public Case open() {
    Case machine = workshop().open(job());
    terminal.speakAsIn(machine.market());
    return machine;
  }

  /**
   * The workshop. What only reads, checks or computes does not wait for an injector, which is worth
   * a good part of a bare start of Java.
   */
  public Workshop workshop() {
    if (workshop == null) {
      Found modules = modules();
      Shop profile = shop().document().map(ShopDocument::shop).orElse(Shop.UNKNOWN);
      Workshop made =
          diagnoses ? opening.workshop(modules, profile) : Workshop.of(modules.modules(), profile);
      Optional<ShopFolder> folder = shop().folder();
      workshop = folder.isPresent() ? made.in(complete(folder.get(), profile, made)) : made;
    }
    return workshop;
  }
}
