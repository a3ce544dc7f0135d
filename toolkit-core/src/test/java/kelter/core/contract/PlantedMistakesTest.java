package kelter.core.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Pattern;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.LimitRule;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.job.Appliance;
import kelter.core.module.About;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.vocabulary.ComponentKind;
import kelter.testkit.ContractRun;
import kelter.testkit.ModuleContract;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Mistakes that an author of a module makes, each planted in a sound module, and found by the whole
 * kit. The sound one keeps all rules but one: it is a class of a test, which no descriptor
 * provides; that is the second.
 */
class PlantedMistakesTest {

  private static final LimitRule BELOW_20 =
      measured -> Optional.of(Allowed.of("resistance", SampleModule.LAW, Limits.atMost(20)));

  private static Check check(ComponentKind kind, LimitRule rule) {
    return LimitCheck.named("resistance-check", "Is the coil whole?")
        .on(kind, SampleModule.RESISTANCE, rule);
  }

  private static SampleModule sample(
      String title, Calculation calculation, ComponentKind kind, Check check, FaultModel model) {
    return new SampleModule(
        new About("sample", title, "1"),
        List.of(calculation),
        List.of(kind),
        List.of(check),
        List.of(model));
  }

  private static SampleModule with(Check check) {
    return sample(
        "a sample", SampleModule.calculation(), SampleModule.KIND, check, SampleModule.model());
  }

  private static SampleModule sound() {
    return with(check(SampleModule.KIND, BELOW_20));
  }

  private static SampleModule with(FaultModel model) {
    return sample(
        "a sample",
        SampleModule.calculation(),
        SampleModule.KIND,
        check(SampleModule.KIND, BELOW_20),
        model);
  }

  /** A sound module beside another that has nothing in common with it. */
  static class Sound extends ModuleContract {
    @Override
    protected CalculationModule module() {
      return sound();
    }

    @Override
    protected List<Appliance> appliances() {
      return List.of(SampleModule.appliance());
    }

    @Override
    protected List<CalculationModule> beside() {
      return List.of(
          new SampleModule(
              new About("other", "another", "1"), List.of(), List.of(), List.of(), List.of()));
    }
  }

  private static String told(Class<?> contract, int code) {
    return told(contract.getName(), code);
  }

  private static String told(String contract, int code) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int found = new ContractRun(new PrintStream(out, true, StandardCharsets.UTF_8)).run(contract);
    String told = out.toString(StandardCharsets.UTF_8);
    assertEquals(code, found, told);
    return told;
  }

  private static void assertFound(Class<?> contract, String rule, String words) {
    String told = told(contract, 1);
    assertTrue(told.contains(rule + ": "), told);
    assertTrue(told.contains(words), told);
  }

  @Test
  void theSoundModuleKeepsEveryOtherRule() {
    String told = told(Sound.class, 1);

    assertTrue(Pattern.compile("sample: (\\d+) of (?!\\1 )\\d+ rules").matcher(told).find(), told);
    assertEquals(
        1,
        Pattern.compile("breach(es)? of the module contract").matcher(told).results().count(),
        told);
    assertTrue(Pattern.compile("Slowest answer: .+, \\d+\\.\\d\\d ms").matcher(told).find(), told);
  }

  /** The first: nothing was tried, since no machine was named or the class is not there. */
  @Test
  void theContractDidNotRun() {
    assertTrue(told("coffee.NoSuchContract", 1).contains("The contract did not run"));
    assertFound(WithoutMachines.class, "everyKindOfComponentIsTried", "has a 'buzzer'");
  }

  static class WithoutMachines extends Sound {
    @Override
    protected List<Appliance> appliances() {
      return List.of();
    }
  }

  /** The second. */
  @Test
  void theDescriptorDoesNotProvideIt() {
    assertFound(
        Sound.class,
        "isProvidedByItsDescriptor",
        "lacks 'provides kelter.core.module.CalculationModule with kelter.core.contract.Sample");
  }

  /** The third; and to be held against nothing does not count. */
  @Test
  void anIdIsAnothers() {
    assertFound(
        TakenId.class, "idsAreNotThoseOfOthers", "there is a calculation 'ohms-law' already");
    assertFound(BesideNothing.class, "idsAreNotThoseOfOthers", "add kelter-hydraulics");
  }

  static class TakenId extends Sound {
    @Override
    protected List<CalculationModule> beside() {
      return List.of(
          new SampleModule(
              new About("other", "another", "1"),
              List.of(SampleModule.calculation()),
              List.of(),
              List.of(),
              List.of()));
    }
  }

  static class BesideNothing extends Sound {
    @Override
    protected List<CalculationModule> beside() {
      return List.of();
    }
  }

  /** The fourth: only beyond a reading that no job without readings has. */
  @Test
  void aCheckThrows() {
    assertFound(ThrowingCheck.class, "checksTakeAnyReading", "resistance-check threw");
    assertTrue(told(ThrowingCheck.class, 1).contains("on buzzer.resistance = "));
  }

  static class ThrowingCheck extends Sound {
    @Override
    protected CalculationModule module() {
      return with(
          check(
              SampleModule.KIND,
              measured -> {
                if (measured.measurement().readings().get(0).most() > 1e5) {
                  throw new IllegalStateException("a table that ends");
                }
                return BELOW_20.allowed(measured);
              }));
    }
  }

  /**
   * The fifth, in three places: in the check, on the machine of the test, in the file of a kind.
   */
  @Test
  void aKindIsMisspelt() {
    assertFound(MisspeltInCheck.class, "checksTakeAnyReading", "finds nothing in any reading");
    assertFound(
        MisspeltPart.class, "everyKindOfComponentIsTried", "has a 'buzer', so nothing of it was");
    assertFound(
        MisspeltInFile.class, "wordsOfKindFilesAreKnown", "no module knows 'buzer'; did you mean");
  }

  private static ComponentKind misspelt() {
    ComponentKind kind = SampleModule.KIND;
    return new ComponentKind(
        "buzer", kind.title(), kind.observables(), kind.figures(), kind.curves());
  }

  static class MisspeltInCheck extends Sound {
    @Override
    protected CalculationModule module() {
      return with(check(misspelt(), BELOW_20));
    }
  }

  static class MisspeltPart extends Sound {
    @Override
    protected CalculationModule module() {
      return sample(
          "a sample",
          SampleModule.calculation(),
          misspelt(),
          check(misspelt(), BELOW_20),
          SampleModule.model());
    }
  }

  @TempDir private static Path folder;

  static class MisspeltInFile extends Sound {
    @Override
    protected List<Path> kindFiles() {
      Path file = folder.resolve("doorbell.json");
      try {
        Files.writeString(
            file,
            """
            {
              "format": "kelter-kind/1",
              "id": "doorbell",
              "title": "doorbell",
              "typical-age": "8 a",
              "parts": [{ "id": "buzzer", "kind": "buzer", "title": "buzzer" }],
              "nothing-wrong": { "share": 0.1 },
              "something-else": 0.1,
              "causes": [{ "fault": "buzzer.open", "title": "coil open", "share": 0.8 }],
              "source": { "document": "made up for a test", "standing": "invented" }
            }
            """);
      } catch (IOException unwritable) {
        throw new UncheckedIOException(unwritable);
      }
      return List.of(file);
    }
  }

  /** The sixth, with the time. */
  @Test
  void anAnswerIsSlow() {
    assertFound(Slow.class, "answersComeQuickly", "calculation ohms-law took ");
    assertTrue(told(Slow.class, 1).contains("Slowest answer: calculation ohms-law"));
  }

  static class Slow extends Sound {
    @Override
    protected CalculationModule module() {
      Calculation slow =
          SampleModule.calculation(
              "ohms-law",
              SampleModule.voltage("12 V"),
              x -> {
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(8));
                return new double[] {x[0] / x[1]};
              });
      return sample(
          "a sample",
          slow,
          SampleModule.KIND,
          check(SampleModule.KIND, BELOW_20),
          SampleModule.model());
    }
  }

  /** The seventh: a decimal comma here and a point there. */
  @Test
  void anAnswerDependsOnTheLanguage() {
    assertFound(
        InTheLanguage.class,
        "answersAreTheSameEverywhere",
        "'the module: About[id=sample, title=holds 0,5 litres");
  }

  static class InTheLanguage extends Sound {
    @Override
    protected CalculationModule module() {
      return sample(
          String.format("holds %.1f litres", 0.5),
          SampleModule.calculation(),
          SampleModule.KIND,
          check(SampleModule.KIND, BELOW_20),
          SampleModule.model());
    }
  }

  /** The eighth: each machine of which it is asked wears what it forecasts. */
  @Test
  void anAnswerDependsOnEarlierOnes() {
    assertFound(
        Remembering.class, "answersDoNotDependOnEarlierOnes", "answers differently when it is");
  }

  static class Remembering extends Sound {
    @Override
    protected CalculationModule module() {
      AtomicInteger asked = new AtomicInteger();
      return with(
          SampleModule.model(
              (severity, value, spread) -> {
                value[0] = 10 + asked.getAndIncrement() + 1e5 * severity[0];
                spread[0] = 1;
              }));
    }
  }

  /** The ninth. */
  @Test
  void aFaultDoesNotShow() {
    assertFound(Faint.class, "everyFaultShows", "buzzer.open at its worst moves no observable");
  }

  static class Faint extends Sound {
    @Override
    protected CalculationModule module() {
      return with(
          SampleModule.model(
              (severity, value, spread) -> {
                value[0] = 10 + 0.5 * severity[0];
                spread[0] = 1;
              }));
    }
  }

  /** The tenth, told once, with what was thrown and where, whatever rules stumble over it. */
  @Test
  void theModuleThrows() {
    String told = told(Throwing.class, 1);
    assertTrue(
        Pattern.compile(
                "answersAreTheSameEverywhere and \\d+ more: threw java.lang.IllegalStateException,"
                    + " at .*PlantedMistakesTest.java:\\d+")
            .matcher(told)
            .find(),
        told);
    assertEquals(1, told.split("IllegalStateException", -1).length - 1, told);
  }

  static class Throwing extends Sound {
    @Override
    protected CalculationModule module() {
      return with(
          SampleModule.model(
              (severity, value, spread) -> {
                throw new IllegalStateException();
              }));
    }
  }

  /** The eleventh: neither must it hold up a build for ever. */
  @Test
  void anAnswerNeverComes() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);
    assertEquals(1, new ContractRun(to, Duration.ofMillis(1500)).run(Endless.class.getName()));
    String told = out.toString(StandardCharsets.UTF_8);
    assertTrue(told.contains("answersAreTheSameEverywhere: did not come back within 1 s"), told);
    assertTrue(told.contains("What else would be tried was not."), told);
  }

  static class Endless extends Sound {
    @Override
    protected CalculationModule module() {
      return with(
          SampleModule.model(
              (severity, value, spread) -> {
                while (severity.length > 0) {
                  LockSupport.parkNanos(1);
                }
              }));
    }
  }

  /** The twelfth: with an exit code of its own choice, as of a module that keeps every rule. */
  @Test
  void theModuleEndsTheProcess() throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty(
                        "surefire.test.class.path", System.getProperty("java.class.path"))
                    + File.pathSeparator
                    + System.getProperty("jdk.module.path", "")
                    + File.pathSeparator
                    + Path.of("target", "test-classes"),
                ContractRun.class.getName(),
                Leaving.class.getName())
            .redirectErrorStream(true)
            .start();
    String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(1, process.waitFor(), told);
    assertTrue(told.contains("something ended the process"), told);
  }

  static class Leaving extends Sound {
    @Override
    protected CalculationModule module() {
      System.exit(0);
      return super.module();
    }
  }
}
