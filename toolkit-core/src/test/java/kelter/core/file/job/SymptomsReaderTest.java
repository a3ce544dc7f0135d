package kelter.core.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.Market;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.job.SymptomReport.Circumstance;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.text.HarmlessText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Why a call was made, and what was said of symptoms, in files of version 2. */
class SymptomsReaderTest {

  private static final String PLAIN =
      """
      {
        "format": "kelter-job/2",
        "id": "b-18",
        %s
        "appliance": { "kind": "bilge-unit", "components": [] }
      }
      """;

  private static Job parse(String members) {
    return StatedJob.parse(PLAIN.formatted(members), Samples.VOCABULARY).job();
  }

  private static List<Problem> problems(String members) {
    return assertThrows(InputException.class, () -> parse(members)).problems();
  }

  private static Problem problem(String members) {
    List<Problem> problems = problems(members);
    assertEquals(1, problems.size(), problems.toString());
    return problems.get(0);
  }

  private static List<SymptomReport> reports(String members) {
    return parse(members).complaint().symptoms();
  }

  private static SymptomReport report(String symptom, Answer answer) {
    return new SymptomReport(symptom, answer);
  }

  @Test
  void allThatVersionTwoTellsArrives() {
    Job job = StatedJob.parse(Samples.FULL, Samples.VOCABULARY).job();

    assertEquals(Optional.of(Market.EU), job.market());
    assertEquals(
        new Complaint(
            Complaint.Reason.FAULT,
            "it floods",
            "F1",
            List.of(
                report("does-not-drain", Answer.NO),
                report("drains-slowly", Answer.YES),
                report("loud", Answer.SOMETIMES),
                new SymptomReport(
                    "leaks",
                    Answer.SOMETIMES,
                    Optional.of(Circumstance.HOT),
                    "when it is full",
                    "3 weeks"),
                report("shows-drain", Answer.YES),
                report("shows-leak", Answer.YES))),
        job.complaint());
  }

  @Test
  void aFileOfVersionTwoComesBackAsItWas() {
    JobDocument document = StatedJob.parse(Samples.FULL, Samples.VOCABULARY);
    JobDocument again = StatedJob.parse(document.text(), Samples.VOCABULARY);

    assertEquals(document.job(), again.job());
    assertEquals(document.content(), again.content());
    assertEquals(List.of(), again.notes());
  }

  @Test
  void whereNothingIsSaidSomethingIsWrong() {
    Job job = parse("");

    assertEquals(Complaint.UNSAID, job.complaint());
    assertTrue(job.complaint().isMade());
    assertEquals(Optional.empty(), job.market());
    assertTrue(parse("\"complaint\": { \"said\": \"\" },").complaint().isMade());
  }

  @Test
  void aRoutineCheckIsSaidToBeOne() {
    assertEquals(Complaint.NONE, parse("\"reason\": \"inspection\",").complaint());
    assertTrue(
        parse("\"reason\": \"inspection\", \"symptoms\": { \"loud\": \"yes\" },")
            .complaint()
            .isMade());
  }

  @ParameterizedTest
  @ValueSource(strings = {"EU", "UK", "NA"})
  void everyMarketIsKnown(String word) {
    assertEquals(word, parse("\"market\": \"" + word + "\",").market().orElseThrow().name());
  }

  @Test
  void whatWasNotAskedIsNoReport() {
    assertEquals(
        List.of(report("loud", Answer.NO)),
        reports(
            "\"symptoms\": { \"leaks\": \"not asked\", \"loud\": \"no\","
                + " \"vibrates\": { \"report\": \"not asked\", \"since\": \"?\" } },"));
  }

  @Test
  void whatTheMachineShowsIsToldOnceEvenIfItIsReportedToo() {
    assertEquals(
        List.of(report("shows-heat", Answer.SOMETIMES)),
        reports("\"symptoms\": { \"shows-heat\": \"sometimes\" }, \"displayed\": [\"heat\"],"));
    assertEquals(
        List.of(report("shows-too-hot", Answer.YES)), reports("\"displayed\": [\"too-hot\"],"));
  }

  @Test
  void whatIsDisplayedAndReportedAsNoContradictsItself() {
    Problem problem =
        problem("\"symptoms\": { \"shows-heat\": \"no\" }, \"displayed\": [\"drain\", \"heat\"],");

    assertEquals("/displayed/1", problem.where());
    assertEquals("'heat' is displayed, but 'shows-heat' is reported as no", problem.what());
    assertTrue(problem.remedy().startsWith("keep the one that is so"), problem.remedy());
  }

  /** By letters, by a word of title or question, by several such words. */
  @ParameterizedTest
  @CsvSource({
    "stays-cld, did you mean 'stays-cold'?",
    "Leaks, did you mean 'leaks'?",
    "shakes, did you mean 'vibrates'?",
    "tingle, did you mean 'shock-felt'?",
    "fuse, did you mean 'trips-breaker'?",
    "damp, did you mean 'does-not-dry'?",
    "smell-of-mould, did you mean 'smells-foul'?",
    "cold, did you mean 'stays-cold' or 'temperature-swings' or 'too-cold-inside'?",
  })
  void aMisspeltSymptomIsToldWithTheOneMeant(String word, String remedy) {
    Problem problem = problem("\"symptoms\": { \"" + word + "\": \"yes\" },");

    assertEquals("/symptoms/" + word, problem.where());
    assertEquals("'" + word + "' is not a known symptom", problem.what());
    assertEquals(remedy, problem.remedy());
  }

  @ParameterizedTest
  @ValueSource(strings = {"does-it", "qwertzuiop", "___", "not"})
  void aWordThatFitsNoneOrManyIsToldWithAll(String word) {
    Problem problem = problem("\"symptoms\": { \"" + word + "\": \"yes\" },");

    assertTrue(problem.remedy().startsWith("known: does-not-start, display-dead, "), word);
    assertTrue(problem.remedy().endsWith(", shows-too-hot"), problem.remedy());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"symptoms\": { \"leaks\": \"yess\" }|/symptoms/leaks"
            + "|'yess' is not a known report of a symptom|did you mean 'yes'?",
        "\"symptoms\": { \"leaks\": \"maybe\" }|/symptoms/leaks"
            + "|'maybe' is not a known report of a symptom"
            + "|known: yes, no, sometimes, not asked",
        "\"symptoms\": { \"leaks\": true }|/symptoms/leaks|is true|a text in quotes is expected",
        "\"symptoms\": { \"leaks\": null }|/symptoms/leaks|is null|a text in quotes is expected",
        "\"symptoms\": [\"leaks\"]|/symptoms|is an array|an object is expected",
        "\"symptoms\": { \"leaks\": { \"when\": \"hot\" } }|/symptoms/leaks"
            + "|has no 'report'|it is needed",
        "\"symptoms\": { \"leaks\": { \"report\": \"yes\", \"when\": \"ho\" } }"
            + "|/symptoms/leaks/when|'ho' is not a known circumstance|did you mean 'hot'?",
        "\"symptoms\": { \"leaks\": { \"report\": \"yes\", \"steps\": \"\" } }"
            + "|/symptoms/leaks/steps|is not known|did you mean 'step'?",
        "\"symptoms\": { \"leaks\": { \"report\": \"yes\", \"since\": 3 } }"
            + "|/symptoms/leaks/since|is a number|a text in quotes is expected",
        "\"displayed\": [\"heet\"]|/displayed/0"
            + "|'heet' is not a known meaning of a display|did you mean 'heat'?",
        "\"displayed\": [\"heat\", \"heat\"]|/displayed/1"
            + "|'heat' stands here twice|keep one of them",
        "\"displayed\": \"E18\"|/displayed|is a string|an array is expected",
        "\"market\": \"US\"|/market|'US' is not a known market|known: EU, UK, NA",
        "\"reason\": \"check\"|/reason|'check' is not a known reason|known: fault, inspection",
      })
  void everyMistakeSaysWhereWhatAndWhatIsAllowed(
      String member, String where, String what, String remedy) {
    Problem problem = problem(member + ",");

    assertEquals(where, problem.where());
    assertEquals(what, problem.what());
    assertEquals(remedy, problem.remedy());
  }

  @Test
  void allMistakesAreToldAtOnce() {
    List<Problem> problems =
        problems(
            "\"market\": \"XX\", \"reason\": \"x\", \"displayed\": [\"x\", 1],"
                + "\"symptoms\": { \"leeks\": { \"report\": \"x\", \"when\": \"x\" }, \"loud\": 1 },");

    assertEquals(
        List.of(
            "/market",
            "/symptoms/leeks",
            "/symptoms/leeks/report",
            "/symptoms/leeks/when",
            "/symptoms/loud",
            "/displayed/0",
            "/displayed/1",
            "/reason"),
        problems.stream().map(Problem::where).toList());
  }

  @Test
  void anUnknownFormatIsToldWithTheKnownOnes() {
    for (String format : List.of("kelter-job/3", "kelter-shop/1", "")) {
      InputException refused =
          assertThrows(
              InputException.class,
              () ->
                  StatedJob.parse(
                      PLAIN.formatted("").replace("kelter-job/2", format), Samples.VOCABULARY));
      assertEquals("'" + format + "' is not a known format", refused.problems().get(0).what());
      assertEquals("known: kelter-job/2, kelter-job/1", refused.problems().get(0).remedy());
    }
  }

  @Test
  void hostileWordsComeOutHarmless() {
    String hostile = "\\u001b[31m\\u202e" + "x".repeat(5000);
    String members =
        """
        "symptoms": { "%1$s": "%2$s", "leaks": { "report": "yes", "when": "%2$s" } },
        "displayed": ["%2$s"], "market": "%2$s", "reason": "%2$s",
        """
            .formatted(hostile.substring(0, 150), hostile);

    List<Problem> problems = problems(members);

    assertEquals(6, problems.size(), problems.toString());
    for (Problem problem : problems) {
      String told = problem.display();
      assertFalse(told.codePoints().anyMatch(HarmlessText::isHarmful), told);
      assertTrue(told.length() < 2000, told);
    }
    SymptomReport kept =
        reports(
                "\"symptoms\": { \"leaks\": { \"report\": \"yes\", \"step\": \"%s\" } },"
                    .formatted(hostile))
            .get(0);
    assertTrue(kept.step().startsWith("\u001b[31m"), "what was written is kept as it is");
  }
}
