package kelter.cli.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kelter.core.workshop.Case;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A report is a sound page by itself, and what a job says stays text. */
class ReportPageTest {

  /** What no page may claim: the tool has seen nothing but what was entered. */
  private static final Pattern CLAIMS =
      Pattern.compile(
          "(?i)\\b(is|are|be|now|again|machine) (safe|compliant|certified|harmless)\\b|\\bcomplies\\b"
              + "|\\bas new\\b|\\b100 ?%|\\blifetime\\b|\\bauthori[sz]ed\\b|\\bno fault\\b"
              + "|\\bpassed\\b|\\bproven\\b|\\bno liability\\b|\\bvoid if\\b");

  static List<Path> demos() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("..", "demo", "jobs"))) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  void aReportOnEveryDemoJobIsSound(Path job) {
    assertSound(Pages.of(Pages.open(job), List.of("A. Sample", "2 Mill Lane"), false));
  }

  @Test
  void aClosedJobIsSound() {
    assertSound(Pages.of(Pages.closed(), List.of(), false));
  }

  private static void assertSound(String page) {
    assertByItself(page);
    assertFalse(CLAIMS.matcher(text(page)).find(), () -> claim(page));
  }

  private static String claim(String page) {
    return CLAIMS.matcher(text(page)).results().map(each -> each.group()).toList().toString();
  }

  private static String text(String page) {
    return page.replaceAll("(?s)<style>.*?</style>", " ").replaceAll("<[^>]*>", " ");
  }

  /** Nothing is run, and nothing is loaded from anywhere. */
  private static void assertByItself(String page) {
    String plain = page.replace("http://www.w3.org/2000/svg", "").replace("url(#allowed)", "");
    for (String word : List.of("<script", "http:", "https:", "url(", "@import", "<link", "<img")) {
      assertFalse(plain.contains(word), word);
    }
    assertFalse(Pattern.compile("<[^>]*\\s(on[a-z]+|src|href)\\s*=").matcher(plain).find());
  }

  @Test
  void hostileTextStaysText() {
    String page = Pages.of(Pages.hostile(), List.of(Pages.HOSTILE), false);

    assertSound(page);
    assertTrue(page.contains("&lt;script&gt;alert(1)&lt;/script&gt;"));
    assertTrue(page.contains("{{job}}"));
  }

  @Test
  void anAnonymousPageTellsNobody() {
    Case machine = Pages.closed();
    String page = Pages.of(machine, List.of("A. Sample", "2 Mill Lane"), true);

    for (String told :
        List.of(
            "A. Sample",
            "Mill Lane",
            machine.job().appliance().serial(),
            machine.job().complaint().said())) {
      assertFalse(page.contains(told), told);
    }
  }

  @Test
  void itHasOneHeadingOfTheFirstLevelAndNoLevelIsSkipped() {
    String page = Pages.of(Pages.closed(), List.of(), false);
    int before = 0;
    for (String level :
        Pattern.compile("<h([1-6])").matcher(page).results().map(each -> each.group(1)).toList()) {
      int now = Integer.parseInt(level);
      assertTrue(now <= before + 1, "h" + now + " behind h" + before);
      assertTrue(now > 1 || before == 0);
      before = now;
    }
  }

  @Test
  void ownersPointsComeFirstInTheirOrder() {
    String page = text(Pages.of(Pages.closed(), List.of(), false));
    int at = -1;
    for (String question :
        List.of(
            "May I use it?",
            "What was wrong?",
            "What was done?",
            "What does it cost?",
            "What was looked at and measured",
            "What do I have to do",
            "Did it work, and what is still open?",
            "Guarantee, whom to call",
            "Figures for the technician")) {
      assertTrue(page.indexOf(question) > at, question);
      at = page.indexOf(question);
    }
  }

  /** "Open" is a word of the trade: to an owner a heater that is open has a lid. */
  @Test
  void theOwnerIsToldWhatCurrentDoes() {
    String page = text(Pages.of(Pages.open(Pages.WASHER), List.of(), false));
    String owners = page.substring(0, page.indexOf("Figures for the technician"));

    assertFalse(owners.contains("element of the heater open"), owners);
    assertTrue(owners.contains("one element of the heater: no current gets through"), owners);
  }
}
