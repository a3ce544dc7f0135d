package kelter.testkit.ledger;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import org.junit.platform.commons.annotation.Testable;
import org.junit.platform.commons.support.AnnotationSupport;

/** The calculations of a module with their sources and checks, as a page in Markdown. */
public final class Ledger {

  /** Where the page stands, from the folder of the module. */
  public static final Path FILE = Path.of("calculations.md");

  private static final Path TESTS = Path.of("target", "test-classes");
  private static final String CLASS = ".class";

  private final CalculationModule module;
  private final Map<String, List<Check>> checks = new TreeMap<>();
  private final Map<String, List<Reason>> reasons = new TreeMap<>();
  private final List<String> breaches = new ArrayList<>();

  private record Check(OutsideCheck declared, String test) {

    String cell() {
      return declared.against() + declared.worth().mark() + " `" + test + "`";
    }
  }

  private record Reason(NoOutsideCheck declared, String test) {

    String cell() {
      return "none: " + declared.because() + " `" + test + "`";
    }
  }

  private Ledger(CalculationModule module) {
    this.module = module;
  }

  /**
   * What tests declare of the calculations of a module.
   *
   * @param module the module
   * @param tests classes of tests
   * @return the ledger
   */
  public static Ledger of(CalculationModule module, List<Class<?>> tests) {
    Ledger ledger = new Ledger(module);
    for (Class<?> test : tests) {
      for (Method method : test.getDeclaredMethods()) {
        ledger.take(method);
      }
    }
    ledger.complete();
    return ledger;
  }

  /**
   * The same, of the tests that were compiled in the folder of the module, which is the one in
   * which the program runs.
   *
   * @param module the module
   * @return the ledger
   * @throws IOException if the tests cannot be read
   */
  public static Ledger of(CalculationModule module) throws IOException {
    List<Class<?>> tests = new ArrayList<>();
    try (Stream<Path> files = Files.walk(TESTS)) {
      for (Path file : files.sorted().toList()) {
        String name = TESTS.relativize(file).toString();
        if (name.endsWith("Test" + CLASS)) {
          tests.add(load(name.substring(0, name.length() - CLASS.length()), module));
        }
      }
    }
    return of(module, tests);
  }

  private static Class<?> load(String path, CalculationModule module) {
    String name = path.replace(TESTS.getFileSystem().getSeparator(), ".");
    try {
      return Class.forName(name, false, module.getClass().getClassLoader());
    } catch (ClassNotFoundException gone) {
      throw new IllegalStateException(name + " was compiled and is not to be found", gone);
    }
  }

  private void take(Method method) {
    String test = method.getDeclaringClass().getSimpleName() + "." + method.getName();
    OutsideCheck[] held = method.getAnnotationsByType(OutsideCheck.class);
    NoOutsideCheck[] lacking = method.getAnnotationsByType(NoOutsideCheck.class);
    for (OutsideCheck each : held) {
      checks.computeIfAbsent(each.of(), id -> new ArrayList<>()).add(new Check(each, test));
    }
    for (NoOutsideCheck each : lacking) {
      reasons.computeIfAbsent(each.of(), id -> new ArrayList<>()).add(new Reason(each, test));
    }
    boolean declares = held.length + lacking.length > 0;
    if (declares && !AnnotationSupport.isAnnotated(method, Testable.class)) {
      breaches.add(test + " is no test");
    }
  }

  private void complete() {
    Comparator<Check> strongestFirst =
        Comparator.comparing((Check check) -> check.declared().worth())
            .thenComparing(Check::test)
            .thenComparing(check -> check.declared().against());
    checks.values().forEach(each -> each.sort(strongestFirst));
    reasons.values().forEach(each -> each.sort(Comparator.comparing(Reason::test)));
    List<String> known = module.calculations().stream().map(Calculation::id).toList();
    for (String id : known) {
      if (!checks.containsKey(id) && !reasons.containsKey(id)) {
        breaches.add(id + ": no test says against what it holds it, or why against nothing");
      }
      if (checks.containsKey(id) && reasons.containsKey(id)) {
        breaches.add(id + ": one test holds it against something, another says that none can");
      }
    }
    for (Map<String, ?> declared : List.of(checks, reasons)) {
      declared.keySet().stream()
          .filter(id -> !known.contains(id))
          .forEach(id -> breaches.add(id + ": the module has no such calculation"));
    }
  }

  /**
   * What is wrong with the ledger.
   *
   * @return a line for each calculation of which nothing or both is declared, each declaration of
   *     no calculation, and each that stands at no test
   */
  public List<String> breaches() {
    return List.copyOf(breaches);
  }

  /**
   * The page.
   *
   * @return Markdown
   */
  public String page() {
    StringBuilder text = new StringBuilder();
    text.append("# What ").append(module.about().id()).append(" computes, and how it was checked");
    text.append("\n\n");
    text.append(
        """
        Made by the code (`kelter.testkit.ledger.Ledger`) from the calculations and from what their tests
        declare. Source and standing are those that `kelter compute` prints. The last column tells against
        what outside the project a test holds the calculation, and which test; or why against nothing.
        """);
    text.append('\n').append(counted());
    text.append("\n| calculation | what it answers | source | standing | checked against |\n");
    text.append("|---|---|---|---|---|\n");
    for (Calculation calculation : module.calculations()) {
      text.append(row(calculation)).append('\n');
    }
    return text.toString();
  }

  private String counted() {
    int all = module.calculations().size();
    StringBuilder text = new StringBuilder("Of " + all + " calculations\n\n");
    for (Worth worth : Worth.values()) {
      long count =
          checks.values().stream().filter(each -> each.get(0).declared().worth() == worth).count();
      if (count > 0) {
        text.append("- ").append(count).append(": ").append(worth.words()).append('\n');
      }
    }
    if (!reasons.isEmpty()) {
      text.append("- ").append(reasons.size()).append(": no outside check, with the reason\n");
    }
    return text.toString();
  }

  private String row(Calculation calculation) {
    List<String> cells = new ArrayList<>();
    checks.getOrDefault(calculation.id(), List.of()).forEach(each -> cells.add(each.cell()));
    reasons.getOrDefault(calculation.id(), List.of()).forEach(each -> cells.add(each.cell()));
    return "| `%s` | %s | %s | %s | %s |"
        .formatted(
            calculation.id(),
            cell(calculation.title()),
            cell(calculation.source().document()),
            calculation.source().standing().words(),
            cell(String.join("; ", cells)));
  }

  private static String cell(String text) {
    return text.replace("|", "\\|");
  }
}
