package kelter.cli.command.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kelter.cli.program.Console;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person is told of symptoms: what was reported, what to ask, and what is assumed. */
class SymptomsToldTest {

  private static final String JOB =
      """
      { "format": "kelter-job/2", "id": "callow-0003", "date": "2026-11-12", "market": "UK",
        "appliance": {
          "kind": "washing-machine", "maker": "Quillby", "age": "6 years",
          "nameplate": { "voltage": "230 V", "frequency": "50 Hz", "protection-class": "I" },
          "components": [
            { "id": "heater", "nameplate": { "power": "2 kW", "voltage": "230 V" } },
            { "id": "drain-pump", "nameplate": { "power": "30 W", "voltage": "230 V" } } ] },
        "complaint": { "said": "@said@" },
        @symptoms@
        "measurements": [] }
      """;

  @TempDir private Path folder;

  private String job(String said, String symptoms) throws IOException {
    String text = JOB.replace("@said@", said).replace("@symptoms@", symptoms);
    return Files.writeString(folder.resolve("job.json"), text).toString();
  }

  private static String words(Console console) {
    assertEquals(0, console.code(), console.err());
    assertTrue(console.widest() <= 80, console.out());
    return console.out().replaceAll("\\s+", " ");
  }

  @Test
  void whatWasReportedIsToldWithItsCircumstances() throws IOException {
    String job =
        job(
            "it leaks",
            """
            "symptoms": {
              "leaks": { "report": "sometimes", "when": "hot", "step": "rinse", "since": "3 weeks" },
              "drains-slowly": "yes", "loud": "no", "stays-cold": "no" },
            "displayed": ["drain"],
            """);

    for (Console console :
        List.of(Console.run("check", job), Console.run("diagnose", "--full", job))) {
      String said = words(console);
      assertTrue(said.contains("Market: UK Reason: fault Complaint: it leaks"), said);
      assertTrue(
          said.contains(
              "Reported: leaks (sometimes; when hot; step: rinse; since: 3 weeks), drains slowly,"
                  + " shows a fault of draining; not: is loud, stays cold"),
          said);
    }
  }

  @Test
  void aRoutineCheckIsToldAsOne() throws IOException {
    String said = words(Console.run("diagnose", "--full", job("", "\"reason\": \"inspection\",")));
    assertTrue(said.contains("Reason: inspection"), said);
    assertFalse(said.contains("Somebody complains"), said);
    assertFalse(said.contains("Reported:"), said);
  }

  @Test
  void aComplaintThatNobodyMadeIsAssumedAndTold() throws IOException {
    String assumed =
        "Somebody complains of this machine; put \"reason\": \"inspection\" into the job";
    String said = words(Console.run("diagnose", "--full", job("", "")));
    assertTrue(said.contains(assumed), said);
    assertFalse(
        words(Console.run("diagnose", "--full", job("it stays cold", ""))).contains(assumed));
    String asked = job("", "\"symptoms\": { \"loud\": \"no\" },");
    assertFalse(words(Console.run("diagnose", "--full", asked)).contains(assumed));
  }

  /** What is asked is what an answer tells 0.05 bits of or more, and not more than three. */
  @Test
  void theOwnerIsAskedBeforeAnythingIsMeasured() throws IOException {
    String job = job("", "\"symptoms\": { \"leaks\": \"no\" },");
    String out = Console.run("diagnose", "--full", job).out();
    assertTrue(out.indexOf("Ask the owner first") > 0, out);
    assertTrue(out.indexOf("Ask the owner first") < out.indexOf("Check next"), out);
    List<String> asked = new ArrayList<>();
    Matcher question =
        Pattern.compile("\\? \\(([a-z-]+)\\)")
            .matcher(out.substring(0, out.indexOf("Check next")).replaceAll("\\s+", " "));
    while (question.find()) {
      asked.add(question.group(1));
    }

    List<String> telling = new ArrayList<>();
    for (Json each : ask(job)) {
      Json.Obj one = (Json.Obj) each;
      double bits = Double.parseDouble(((Json.Num) one.members().get("bits")).spelling());
      if (bits >= 0.05) {
        telling.add(((Json.Str) one.members().get("symptom")).text());
      }
    }
    assertEquals(telling.subList(0, Math.min(3, telling.size())), asked);
    assertFalse(asked.contains("leaks"), "nobody is asked twice");
  }

  private static List<Json> ask(String job) {
    String json = Console.run("diagnose", "--format", "json", job).out();
    Json.Obj result = (Json.Obj) JsonText.read(json.getBytes(StandardCharsets.UTF_8), "result", "");
    return ((Json.Arr) result.members().get("ask")).items();
  }

  /** Both ways that are printed work as they are printed. */
  @Test
  void anAnswerGoesInAsItIsPrinted() throws IOException {
    String out = Console.run("diagnose", "--full", job("", "")).out();
    Matcher change = Pattern.compile("kelter (diagnose JOB --what-if [a-z-]+=yes)").matcher(out);
    assertTrue(change.find(), out);
    assertTrue(words(run(change.group(1))).startsWith("What if "), out);

    Matcher entry = Pattern.compile("kelter (enter JOB --saw [a-z-]+=yes)").matcher(out);
    assertTrue(entry.find(), out);
    words(run(entry.group(1)));
    String file = folder.resolve("job.json").toString();
    assertTrue(words(Console.run("diagnose", "--full", file)).contains("Reported:"));
  }

  /** A command as it is printed, on the job. */
  private Console run(String printed) {
    return Console.run(printed.replace("JOB", folder.resolve("job.json").toString()).split(" "));
  }

  /** A reading goes in as it is printed, with what was read. */
  @Test
  void aReadingGoesInAsItIsPrinted() throws IOException {
    String job = job("", "\"symptoms\": { \"loud\": \"no\" },");
    String out = Console.run("diagnose", job).out();
    while (!out.contains("Enter it: ")) {
      Matcher asked = Pattern.compile("kelter (enter JOB --saw [a-z-]+=)yes").matcher(out);
      assertTrue(asked.find(), out);
      out = run(asked.group(1) + "no").out();
    }
    Matcher entry =
        Pattern.compile("kelter (enter JOB --read [a-z.-]+=)READING \\(([a-z-]+), ")
            .matcher(out.replaceAll("\\s+", " "));
    assertTrue(entry.find(), out);
    assertTrue(out.contains("Readings: none yet"), out);
    words(run(entry.group(1) + entry.group(2)));
    assertFalse(words(Console.run("diagnose", job)).contains("Readings: none yet"));
  }

  @Test
  void modulesTellTheWordsForSymptomsAndMeanings() {
    String said = words(Console.run("modules"));
    assertTrue(
        said.contains("stays-cold stays cold. Does it stay cold when it should heat?"), said);
    assertTrue(said.contains("heat shows a fault of heating"), said);
    String json = Console.run("modules", "--format", "json").out();
    assertTrue(json.contains("\"question\" : \"Does it stay cold when it should heat?\""), json);
    assertTrue(json.contains("\"symptom\" : \"shows-heat\""), json);
  }

  @Test
  void aNewJobTellsHowEachSymptomWasUnderstood() {
    Console console =
        Console.run("new", "tumble-dryer", "-s", "takes two cycles", "-s", "leaks=no");

    assertEquals(0, console.code(), console.err());
    assertTrue(
        console
            .err()
            .contains(
                "Understood 'takes two cycles': does not dry in the usual time (does-not-dry), yes."),
        console.err());
    assertTrue(console.err().contains("Understood 'leaks': leaks (leaks), no."), console.err());
  }

  @Test
  void wordsThatMayMeanSeveralSymptomsAreNotChosenFrom() {
    Console console = Console.run("new", "tumble-dryer", "-s", "slow");

    assertEquals(1, console.code());
    assertEquals("", console.out());
    assertTrue(
        console.err().contains("say which: heats-slowly, does-not-dry, runs-without-end"),
        console.err());
  }
}
