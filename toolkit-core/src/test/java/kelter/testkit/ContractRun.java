package kelter.testkit;

import java.io.PrintStream;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import kelter.testkit.trial.TimeRules;
import org.junit.jupiter.api.Test;

/**
 * Holds a module against the contract without a test runner: a build that calls this cannot end
 * well because no test was found, because the module ended the process, or because it never comes
 * back. The argument is the name of the class that extends {@link ModuleContract}. Exit code 0 if
 * every rule is kept, 1 otherwise.
 */
public final class ContractRun {

  private final PrintStream out;
  private final Duration patience;
  private boolean ended;

  /**
   * A run that waits a minute for each rule.
   *
   * @param out where breaches and times are told
   */
  public ContractRun(PrintStream out) {
    this(out, Duration.ofSeconds(ModuleContract.SECONDS));
  }

  /**
   * A run.
   *
   * @param out where breaches and times are told
   * @param patience how long one rule may take
   */
  public ContractRun(PrintStream out, Duration patience) {
    this.out = out;
    this.patience = patience;
  }

  /**
   * Holds a module against the contract and ends the process.
   *
   * @param arguments the name of one class that extends {@link ModuleContract}
   */
  public static void main(String[] arguments) {
    ContractRun run = new ContractRun(System.out);
    Runtime.getRuntime().addShutdownHook(new Thread(run::requireEnd));
    System.exit(run.run(arguments));
  }

  /** What ends the process in the middle must not look like a module that keeps all rules. */
  private void requireEnd() {
    if (!ended) {
      out.println("The contract was not held to its end: something ended the process.");
      out.println("Does the module call System.exit? Take that out.");
      out.flush();
      Runtime.getRuntime().halt(1);
    }
  }

  /**
   * Holds a module against the contract.
   *
   * @param arguments the name of one class that extends {@link ModuleContract}
   * @return 0 if every rule is kept, 1 otherwise
   */
  public int run(String... arguments) {
    int code = 1;
    if (arguments.length == 1) {
      code = run(arguments[0]);
    } else {
      out.println("Name one class that extends " + ModuleContract.class.getName() + ".");
    }
    ended = true;
    return code;
  }

  private int run(String name) {
    try {
      return hold(made(name));
    } catch (ReflectiveOperationException | LinkageError | ClassCastException missing) {
      out.println(
          "The contract did not run: "
              + name
              + " cannot be made as a test of the contract ("
              + missing
              + ").");
      return 1;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      out.println("The contract was not held to its end: it was interrupted.");
      return 1;
    }
  }

  private static ModuleContract made(String name) throws ReflectiveOperationException {
    Constructor<?> constructor = Class.forName(name).getDeclaredConstructor();
    constructor.setAccessible(true);
    return (ModuleContract) constructor.newInstance();
  }

  private int hold(ModuleContract contract) throws InterruptedException {
    Map<String, List<String>> broken = new LinkedHashMap<>();
    List<Method> rules = rules();
    int kept = 0;
    for (Method rule : rules) {
      HeldRule held = HeldRule.of(rule, contract, patience);
      kept += held.breach().isEmpty() ? 1 : 0;
      held.breach()
          .ifPresent(
              told -> broken.computeIfAbsent(told, any -> new ArrayList<>()).add(rule.getName()));
      if (!held.ended()) {
        tell(broken);
        out.println("What else would be tried was not.");
        return 1;
      }
    }
    tell(broken);
    return end(contract, kept, rules.size());
  }

  /** What several rules stumble over is told once. */
  private void tell(Map<String, List<String>> broken) {
    broken.forEach(
        (told, rules) ->
            out.println(
                rules.get(0)
                    + (rules.size() == 1 ? "" : " and " + (rules.size() - 1) + " more")
                    + ": "
                    + told));
  }

  /** What is thrown was told above. */
  private int end(ModuleContract contract, int kept, int rules) {
    try {
      String id = contract.module().about().id();
      out.printf("Module %s: %d of %d rules of the contract kept.%n", id, kept, rules);
      TimeRules.Answer slowest =
          TimeRules.measured(contract.module(), contract.appliances()).get(0);
      out.printf(
          Locale.ROOT, "Slowest answer: %s, %.2f ms.%n", slowest.call(), slowest.milliseconds());
    } catch (RuntimeException | LinkageError thrown) {
      out.println("No times were taken, since the module throws.");
      return 1;
    }
    return kept == rules ? 0 : 1;
  }

  private static List<Method> rules() {
    return Stream.of(ModuleContract.class.getDeclaredMethods())
        .filter(method -> method.isAnnotationPresent(Test.class))
        .sorted(Comparator.comparing(Method::getName))
        .toList();
  }
}
