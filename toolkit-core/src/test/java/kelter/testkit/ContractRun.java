package kelter.testkit;

import java.io.PrintStream;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import kelter.core.module.CalculationModule;
import kelter.testkit.trial.TimeRules;
import org.junit.jupiter.api.Test;

/**
 * Holds a module against the contract without a test runner: a build that calls this cannot end
 * well because no test was found. The argument is the name of the class that extends {@link
 * ModuleContract}. Exit code 0 if every rule is kept, 1 otherwise.
 */
public final class ContractRun {

  private final PrintStream out;

  /**
   * A run.
   *
   * @param out where breaches and times are told
   */
  public ContractRun(PrintStream out) {
    this.out = out;
  }

  /**
   * Holds a module against the contract and ends the process.
   *
   * @param arguments the name of one class that extends {@link ModuleContract}
   */
  public static void main(String[] arguments) {
    System.exit(new ContractRun(System.out).run(arguments));
  }

  /**
   * Holds a module against the contract.
   *
   * @param arguments the name of one class that extends {@link ModuleContract}
   * @return 0 if every rule is kept, 1 otherwise
   */
  public int run(String... arguments) {
    if (arguments.length != 1) {
      out.println("Name one class that extends " + ModuleContract.class.getName() + ".");
      return 1;
    }
    try {
      return hold(made(arguments[0]));
    } catch (ReflectiveOperationException | LinkageError | ClassCastException missing) {
      out.println(
          "The contract did not run: "
              + arguments[0]
              + " cannot be made as a test of the contract ("
              + missing
              + ").");
      return 1;
    }
  }

  private static ModuleContract made(String name) throws ReflectiveOperationException {
    Constructor<?> constructor = Class.forName(name).getDeclaredConstructor();
    constructor.setAccessible(true);
    return (ModuleContract) constructor.newInstance();
  }

  private int hold(ModuleContract contract) throws ReflectiveOperationException {
    List<String> broken = new ArrayList<>();
    List<Method> rules = rules();
    for (Method rule : rules) {
      try {
        rule.invoke(contract);
      } catch (InvocationTargetException failed) {
        broken.add(rule.getName() + ": " + failed.getCause().getMessage());
      }
    }
    broken.forEach(out::println);
    CalculationModule module = contract.module();
    out.printf(
        "Module %s: %d of %d rules of the contract kept.%n",
        module.about().id(), rules.size() - broken.size(), rules.size());
    slowest(contract, module);
    return broken.isEmpty() ? 0 : 1;
  }

  private void slowest(ModuleContract contract, CalculationModule module) {
    TimeRules.Answer slowest = TimeRules.measured(module, contract.appliances()).get(0);
    out.printf(
        Locale.ROOT, "Slowest answer: %s, %.2f ms.%n", slowest.call(), slowest.milliseconds());
  }

  private static List<Method> rules() {
    return Stream.of(ModuleContract.class.getDeclaredMethods())
        .filter(method -> method.isAnnotationPresent(Test.class))
        .sorted(Comparator.comparing(Method::getName))
        .toList();
  }
}
