package kelter.cli.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaConstructorCall;
import com.tngtech.archunit.lang.ArchRule;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The rules of the house, for packages under any root. */
final class HouseRules {

  private static final List<String> CALCULATION_MODULES =
      List.of("hydraulics", "electrical", "costing");

  private static final Set<String> TERMINAL_TYPES =
      Set.of("java.io.Console", "java.lang.System$Logger");
  private static final Set<String> STANDARD_STREAMS = Set.of("out", "err", "in");

  private static final Set<String> DISK_TYPES =
      Set.of(
          "java.io.File",
          "java.io.FileInputStream",
          "java.io.FileOutputStream",
          "java.io.FileReader",
          "java.io.FileWriter",
          "java.io.RandomAccessFile",
          "java.nio.channels.AsynchronousFileChannel",
          "java.nio.channels.FileChannel",
          "java.nio.file.FileSystem",
          "java.nio.file.FileSystems",
          "java.nio.file.Files",
          "java.util.jar.JarFile",
          "java.util.logging.FileHandler",
          "java.util.zip.ZipFile");

  /** Classes that open a file when they are made with its name. */
  private static final Set<String> OPENED_BY_NAME =
      Set.of("java.io.PrintStream", "java.io.PrintWriter", "java.util.Formatter");

  private static final Set<String> WRITING =
      Set.of(
          "copy",
          "createFile",
          "createLink",
          "createTempFile",
          "delete",
          "deleteIfExists",
          "move",
          "newBufferedWriter",
          "newByteChannel",
          "newOutputStream",
          "write",
          "writeString");

  private final String root;

  HouseRules(String root) {
    this.root = root;
  }

  /** Every rule by a name that says what it demands. */
  Map<String, ArchRule> all() {
    Map<String, ArchRule> rules = new LinkedHashMap<>();
    rules.put("the core depends on no other part", coreStandsAlone());
    for (String module : CALCULATION_MODULES) {
      rules.put(module + " depends on the core only", dependsOnCoreOnly(module));
    }
    rules.put("only the command line knows the container", containerStaysOutside());
    rules.put("only the command line writes to the terminal", terminalStaysOutside());
    rules.put("only the core's file package touches the disk", diskStaysOutside());
    rules.put("files are written in one place", onePlaceWrites());
    rules.put("no cycles between packages", noCycles());
    rules.put("a calculation never reads a job", calculationsReadNoJob());
    rules.putAll(new FrameRules(root).all());
    return rules;
  }

  private ArchRule coreStandsAlone() {
    return noClasses()
        .that()
        .resideInAPackage(root + ".core..")
        .should()
        .dependOnClassesThat(
            describe(
                "belong to another part",
                type -> isUnder(type, root) && !isUnder(type, root + ".core")));
  }

  private ArchRule dependsOnCoreOnly(String module) {
    String own = root + "." + module;
    return classes()
        .that()
        .resideInAPackage(own + "..")
        .should()
        .onlyDependOnClassesThat(
            resideInAnyPackage(
                own + "..",
                root + ".core..",
                "kelter.core..",
                "java..",
                "org.apache.commons.numbers..",
                "org.apache.commons.rng..",
                "org.apache.commons.statistics.."))
        .allowEmptyShould(true);
  }

  private ArchRule containerStaysOutside() {
    return outsideCommandLine(
        resideInAnyPackage(
            "com.google.inject..",
            "com.google.common..",
            "jakarta.inject..",
            "javax.inject..",
            "org.apache.commons.cli.."));
  }

  private ArchRule outsideCommandLine(DescribedPredicate<JavaClass> forbidden) {
    return noClasses()
        .that()
        .resideInAPackage(root + "..")
        .and()
        .resideOutsideOfPackage(root + ".cli..")
        .should()
        .dependOnClassesThat(forbidden);
  }

  private ArchRule terminalStaysOutside() {
    return noClasses()
        .that()
        .resideInAPackage(root + "..")
        .and()
        .resideOutsideOfPackage(root + ".cli..")
        .should()
        .accessTargetWhere(describe("reaches the terminal", HouseRules::reachesTerminal))
        .orShould()
        .dependOnClassesThat(
            describe(
                "write to the terminal",
                type ->
                    TERMINAL_TYPES.contains(type.getName())
                        || type.getPackageName().equals("java.util.logging")));
  }

  private static boolean reachesTerminal(JavaAccess<?> access) {
    String owner = access.getTargetOwner().getName();
    String name = access.getTarget().getName();
    boolean system =
        owner.equals("java.lang.System")
            && (STANDARD_STREAMS.contains(name) || name.equals("console") || name.equals("exit"));
    boolean trace =
        name.equals("printStackTrace")
            && access.getTargetOwner().isAssignableTo(Throwable.class)
            && access.getTarget().getDescription().endsWith("printStackTrace()>");
    return system || trace;
  }

  private ArchRule diskStaysOutside() {
    return noClasses()
        .that()
        .resideInAPackage(root + "..")
        .and()
        .resideOutsideOfPackages(root + ".cli..", root + ".core.file..")
        .should()
        .dependOnClassesThat(
            describe("reach the disk", type -> DISK_TYPES.contains(type.getName())))
        .orShould()
        .callConstructorWhere(describe("opens a file by its name", HouseRules::opensByName));
  }

  private ArchRule onePlaceWrites() {
    return noClasses()
        .that()
        .resideInAPackage(root + "..")
        .and()
        .resideOutsideOfPackage(root + ".core.file.disk..")
        .should()
        .accessTargetWhere(describe("writes a file", HouseRules::writesFile));
  }

  private static boolean writesFile(JavaAccess<?> access) {
    return access.getTargetOwner().getName().equals("java.nio.file.Files")
        && WRITING.contains(access.getTarget().getName());
  }

  private static boolean opensByName(JavaConstructorCall call) {
    List<JavaClass> parameters = call.getTarget().getRawParameterTypes();
    return OPENED_BY_NAME.contains(call.getTargetOwner().getName())
        && !parameters.isEmpty()
        && parameters.get(0).getName().equals(String.class.getName());
  }

  private ArchRule noCycles() {
    return slices().matching(root + ".(**)").should().beFreeOfCycles();
  }

  private ArchRule calculationsReadNoJob() {
    return noClasses()
        .that(
            describe(
                "offer a calculation",
                type ->
                    isUnder(type, root)
                        && type.getMethods().stream()
                            .anyMatch(
                                method ->
                                    method
                                        .getRawReturnType()
                                        .getName()
                                        .equals("kelter.core.module.Calculation"))))
        .and()
        .resideOutsideOfPackages(
            "kelter.core..", "kelter.cli", "kelter.cli.command..", "kelter.cli.program")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("kelter.core.job..")
        .allowEmptyShould(true);
  }

  private static boolean isUnder(JavaClass type, String root) {
    return type.getPackageName().equals(root) || type.getPackageName().startsWith(root + ".");
  }
}
