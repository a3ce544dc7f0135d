package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kelter.cli.command.ExitCode;
import kelter.core.text.HarmlessText;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No text of others reaches the terminal, JSON or a drawing as it is where that does something. */
class HostileTextTest {

  private static final String LETTERS = "Müller 洗濯機 غسالة e\u0301";
  private static final List<String> HOSTILE =
      List.of(
          "\u001b[31mred",
          "\u001b]0;title\u0007",
          "\u009b2J",
          "a\nDANGER: none",
          "a\r\nb",
          "a\tb",
          "\u202etxt.exe",
          "\u2066x\u2069",
          "\u200fa",
          "\u2028b",
          "\ufeffc",
          "\u007f\b",
          "\udb40\udc41",
          "\ufdd0bold",
          "<script>&\"'");

  private static final Locale USUAL = Locale.getDefault();

  @TempDir private Path folder;

  @AfterEach
  void usualLocale() {
    Locale.setDefault(USUAL);
  }

  private static void assertHarmless(Console said) {
    String all = said.out() + said.err();
    String found = all.replace("\n", "");
    assertFalse(found.codePoints().anyMatch(HarmlessText::isHarmful), all);
    assertFalse(all.lines().anyMatch(line -> line.startsWith("DANGER")), all);
    assertTrue(said.code() < ExitCode.DEFECT, all);
  }

  private static String inJson(String text) {
    StringBuilder escaped = new StringBuilder();
    for (char unit : text.toCharArray()) {
      escaped.append("\\u%04x".formatted((int) unit));
    }
    return escaped.toString();
  }

  private Path job(String hostile) throws IOException {
    String text = inJson(hostile + " " + LETTERS);
    return Files.writeString(
        folder.resolve("job.json"),
        Files.readString(Path.of("..", "demo", "jobs", "dear-heater.json"))
            .replaceAll(
                "\"(maker|model|serial|said|displayed|note)\": \"[^\"]*\"",
                "\"$1\": \"" + text.replace("\\", "\\\\") + "\""));
  }

  @Test
  void textsOfAJob() throws IOException {
    for (String hostile : HOSTILE) {
      String job = job(hostile).toString();
      List<Console> all = new ArrayList<>();
      for (String format : List.of("text", "json")) {
        all.add(Console.run("diagnose", "--format", format, job));
        all.add(Console.run("check", "--format", format, job));
        all.add(Console.run("weigh", "--format", format, job));
        all.add(Console.run("quote", "--format", format, job));
        all.add(Console.run("quote", "--form", "json", job));
      }
      for (Console said : all) {
        assertHarmless(said);
        assertEquals(0, said.code(), said.err());
      }
      String shown = all.get(0).out().replaceAll("\\s+", " ");
      assertTrue(shown.contains("Müller 洗濯機 غسالة e\u0301"), shown);
    }
  }

  @Test
  void wrongArgumentsAndFileNames() throws IOException {
    for (String hostile : HOSTILE) {
      assertHarmless(Console.run(hostile));
      assertHarmless(Console.run("check", "--" + hostile));
      assertHarmless(Console.run("compute", hostile, hostile + "=" + hostile));
      assertHarmless(Console.run("compute", "heater-resistance", "power=" + hostile));
      assertHarmless(Console.run("diagnose", "--why", hostile, job("x").toString()));
      assertHarmless(Console.run("diagnose", "--what-if", hostile, job("x").toString()));
      assertHarmless(Console.run("diagnose", "--what-if", hostile + "=yes", job("x").toString()));
      assertHarmless(Console.run("diagnose", "--what-if", "leaks=" + hostile, job("x").toString()));
      assertHarmless(Console.run("check", folder.resolve("none" + hostile.replace('/', '.')) + ""));
      assertHarmless(Console.run("modules", "--plugins", folder + "/" + hostile));
      assertHarmless(Console.run("new", hostile));
      assertHarmless(Console.run("schema", hostile));
    }
  }

  @Test
  void headingsOfALogAndItsName() throws IOException {
    for (String hostile : HOSTILE) {
      String heading = hostile.replaceAll("[\r\n\"]", "\u0085");
      StringBuilder log = new StringBuilder("time,\"" + heading + " (V)\"\n");
      for (int second = 0; second < 60; second++) {
        log.append(second).append(",23").append(second % 2).append('\n');
      }
      Path file = folder.resolve("log" + hostile.replace('/', '.') + ".csv");
      Files.writeString(file, log);
      assertHarmless(Console.run("readings", file.toString()));
      assertHarmless(Console.run("readings", "--format", "json", file.toString()));
    }
  }

  @Test
  void drawings() throws IOException {
    Path drawing = folder.resolve("cost.svg");
    for (String hostile : HOSTILE) {
      Console said = Console.run("weigh", "--plot", drawing.toString(), job(hostile).toString());
      assertEquals(0, said.code(), said.err());
      String svg = Files.readString(drawing).replace("\n", "");
      assertFalse(svg.codePoints().anyMatch(HarmlessText::isHarmful), svg);
      assertFalse(svg.contains("<script"), svg);
    }
  }

  @Test
  void wordsOfDangerInAscii() throws IOException {
    for (String job : List.of("washer-extractor.json", "dear-heater.json")) {
      String path = Path.of("..", "demo", "jobs", job).toString();
      for (String command : List.of("diagnose", "check", "weigh")) {
        Console said = Console.run(StandardCharsets.US_ASCII, command, path);
        String withoutQuestions = said.out().replaceAll("[a-z]\\?", "");
        assertFalse(withoutQuestions.contains("?"), said.out());
        assertFalse(said.out().contains("\ufffd"), said.out());
      }
    }
  }

  /** Arabic and Nepali write other digits; the language of all texts is English. */
  @Test
  void digitsAreThoseOfTheText() throws IOException {
    Path broken = Files.writeString(folder.resolve("broken.json"), "{\n\n  \"format\": 1,,\n}\n");
    Path gap = Files.writeString(folder.resolve("gap.csv"), "t,U (V)\n0,1\n1,2,3,4\n2,3\n3,4\n");
    for (String tag : List.of("ar-EG-u-nu-arab", "ne-NP-u-nu-deva", "fa-IR-u-nu-arabext")) {
      Locale.setDefault(Locale.forLanguageTag(tag));
      for (Console said :
          List.of(
              Console.run("check", broken.toString()), Console.run("readings", gap.toString()))) {
        String all = said.out() + said.err();
        assertFalse(all.codePoints().anyMatch(c -> c > '~' && Character.isDigit(c)), all);
      }
    }
  }
}
