package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of a command line that cannot be understood; nothing is done then. */
class UsageMistakesTest {

  private static final String TRY = "Try 'kelter %s --help'.";

  private static List<String> told(String... words) {
    Console console = Console.run(words);
    assertEquals(2, console.code(), console.err());
    assertEquals("", console.out());
    return console.err().lines().toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "diagnose x.json --fromat=json | there is no option '--fromat'; did you mean '--format'?",
        "diagnose x.json --zzzzzzzz | there is no option '--zzzzzzzz'",
        "diagnose x.json -x | there is no option '-x'",
        "check --ris x.json | there is no option '--ris'; did you mean '--risk'?",
        "diagnose x.json --why | --why needs a value: FAULT",
        "diagnose x.json --why= | --why needs a value: FAULT",
        "new other -o | --output needs a value: FILE",
        "diagnose x.json --shop --why a.b | --shop needs a value: DIR",
        "diagnose x.json --shop --wyh | --shop needs a value, DIR, before '--wyh'",
        "check --risk=yes x.json | --risk takes no value",
        "simulate x -n many | --jobs takes a whole number up to 2147483647, not 'many'",
        "simulate x -n 2.5 | --jobs takes a whole number up to 2147483647, not '2.5'",
        "simulate x --led 2147483648 |"
            + " --led takes a whole number up to 2147483647, not '2147483648'",
        "weigh x --seed 1e3 | --seed takes a whole number up to 9223372036854775807, not '1e3'",
        "simulate x --wrong-by much | --wrong-by takes a number, not 'much'",
        "simulate x --wrong-by NaN | --wrong-by takes a number, not 'NaN'",
        "simulate x --wrong-by 1e999 | --wrong-by takes a number, not '1e999'",
        "check x.json --format xml | --format takes text or json, not 'xml'",
        "check x.json --format JSON | --format takes text or json, not 'JSON'",
        "check | JOB is missing: a job file, or the id of one in the shop's folder",
        "check -- | JOB is missing: a job file, or the id of one in the shop's folder",
        "compute --budget | NAME is missing: the name of a calculation",
        "modules more | 'more' is an argument too many",
        "check x.json y.json | 'y.json' is an argument too many",
        "check x.json -- --risk | '--risk' is an argument too many",
        "weigh --seed 1 x --seed=2 | --seed is given 2 times; keep one of them",
        "simulate x -n 5 --jobs 6 -n7 | --jobs is given 3 times; keep one of them",
        "check --risk x --risk | --risk is given 2 times; keep one of them"
      })
  void aMistakeIsToldInPlainWords(String line, String mistake) {
    String[] words = line.split(" ");

    assertEquals(List.of("kelter: " + mistake, TRY.formatted(words[0])), told(words));
  }

  @Test
  void allMistakesAreToldAtOnce() {
    assertEquals(
        List.of(
            "kelter: there is no option '--fromat'; did you mean '--format'?",
            "kelter: there is no option '-q'",
            "kelter: --jobs takes a whole number up to 2147483647, not 'many'",
            "kelter: --seed is given 2 times; keep one of them",
            "kelter: --wrong-by needs a value: PERCENT",
            "kelter: --format takes text or json, not 'xml'",
            "kelter: JOB-or-KIND is missing: a job file, for its machine, or a kind of appliance",
            TRY.formatted("simulate")),
        told(
            "simulate",
            "--fromat=json",
            "-n",
            "many",
            "-q",
            "--seed",
            "1",
            "--seed",
            "2",
            "--format",
            "xml",
            "--wrong-by"));
  }

  /** The word behind an option that is not known may be its value. */
  @Test
  void theValueOfAnUnknownOptionIsNoArgumentTooMany() {
    assertEquals(2, told("check", "--fromat", "json", "x.json").size());
    assertEquals(
        "kelter: 'y.json' is an argument too many",
        told("check", "--fromat", "json", "x.json", "y.json").get(1));
    assertEquals(3, told("check", "--fromat=json", "x.json", "y.json").size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "diagnoes | there is no command 'diagnoes'; did you mean 'diagnose'?",
        "something | there is no command 'something'",
        "--format | the command stands first, before '--format'",
        "-- | the command stands first, before '--'"
      })
  void aWordThatIsNoCommandIsToldOnce(String word, String mistake) {
    assertEquals(
        List.of("kelter: " + mistake, "Try 'kelter --help'."), told(word, "--what", "x.json"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"--form", "--forma"})
  void anOptionIsNotShortened(String option) {
    assertTrue(told("check", "x.json", option + "=json").get(0).contains(option));
  }
}
