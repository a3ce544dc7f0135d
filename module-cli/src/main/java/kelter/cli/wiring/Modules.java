package kelter.cli.wiring;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.Checker;
import kelter.core.check.DecisionRule;
import kelter.core.file.JobDocument;
import kelter.core.file.JobFile;
import kelter.core.file.json.Json;
import kelter.core.job.Instrument;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.shop.Shop;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Vocabulary;

/** The modules that are loaded, and the words that they give to a job. */
public final class Modules {

  private final List<CalculationModule> all;
  private final List<Problem> refused;
  private Vocabulary vocabulary;

  Modules(List<CalculationModule> all, List<Problem> refused) {
    this.all = List.copyOf(all);
    this.refused = List.copyOf(refused);
  }

  /**
   * Finds all modules.
   *
   * @param plugins the plugin folder, if the user named one
   * @return the modules on the module path and those plugins that go with them
   * @throws InputException if the folder cannot be read
   */
  public static Modules find(Optional<Path> plugins) {
    return ModuleSearch.find(plugins);
  }

  /**
   * The modules at work.
   *
   * @return the modules, by id
   */
  public List<CalculationModule> all() {
    return all;
  }

  /**
   * Plugins that were left out.
   *
   * @return each with the reason
   */
  public List<Problem> refused() {
    return refused;
  }

  /**
   * The words that a job may use.
   *
   * @return the vocabulary of all modules
   */
  public synchronized Vocabulary vocabulary() {
    if (vocabulary == null) {
      List<ComponentKind> kinds = new ArrayList<>();
      for (CalculationModule module : all) {
        kinds.addAll(module.componentKinds());
      }
      vocabulary = new Vocabulary(kinds);
    }
    return vocabulary;
  }

  /**
   * The instruments that a job may name without describing them, beside those of any trade.
   *
   * @param shop the shop
   * @return its instruments, then those of all modules
   */
  public List<Instrument> instruments(Shop shop) {
    List<Instrument> known = new ArrayList<>(shop.jobInstruments());
    for (CalculationModule module : all) {
      known.addAll(module.instruments());
    }
    return known;
  }

  /**
   * All checks.
   *
   * @param rule the rule by which verdicts are given
   * @return what applies them, in the order of the modules
   */
  public Checker checker(DecisionRule rule) {
    List<Check> checks = new ArrayList<>();
    for (CalculationModule module : all) {
      checks.addAll(module.checks());
    }
    return new Checker(checks, vocabulary(), instruments(Shop.UNKNOWN), rule);
  }

  /**
   * All calculations.
   *
   * @return calculations, by id
   */
  public List<Calculation> calculations() {
    List<Calculation> calculations = new ArrayList<>();
    for (CalculationModule module : all) {
      calculations.addAll(module.calculations());
    }
    calculations.sort((one, other) -> one.id().compareTo(other.id()));
    return calculations;
  }

  /**
   * Reads a job, which may use the instruments of a shop.
   *
   * @param content the content of a job file
   * @param shop the shop
   * @return the job with that content
   * @throws InputException with every mistake of it
   */
  public JobDocument job(Json content, Shop shop) {
    return JobFile.document(content, vocabulary(), instruments(shop));
  }

  /**
   * Reads a job from text, which may use the instruments of a shop.
   *
   * @param text the content of a job file
   * @param shop the shop
   * @return the job with its content
   * @throws InputException with every mistake of the text
   */
  public JobDocument job(String text, Shop shop) {
    return JobFile.parse(text, vocabulary(), instruments(shop));
  }
}
