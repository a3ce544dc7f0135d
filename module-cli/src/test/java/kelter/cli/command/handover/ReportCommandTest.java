package kelter.cli.command.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kelter.cli.program.Console;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a report tells an owner of jobs that commands carried to their end. */
class ReportCommandTest {

  private static final Path DEMO = Path.of("..", "demo", "jobs");

  @TempDir private Path folder;

  private static Console run(int code, String... words) {
    Console console = Console.run(words);
    assertEquals(code, console.code(), console.err() + console.out());
    return console;
  }

  private String copied(String name) throws IOException {
    return Files.copy(DEMO.resolve(name), folder.resolve(name)).toString();
  }

  private String called(String kind, String symptom) {
    String job = folder.resolve(kind + ".json").toString();
    run(0, "new", kind, "-s", symptom, "-o", job);
    return job;
  }

  private static String points(String job) {
    return run(0, "report", job).out().replaceAll("\\s+", " ");
  }

  private String page(String job, String... options) throws IOException {
    String file = folder.resolve("report.html").toString();
    run(0, "report", job, "-o", file);
    if (options.length > 0) {
      run(0, "report", job, "-o", file, options[0]);
    }
    return Files.readString(Path.of(file));
  }

  @Test
  void anAnonymousPageTellsNobodyWhoWorkedClosedOrWroteNotes() throws IOException {
    String job = copied("washer-extractor.json");
    run(0, "done", job, "heater.renew-heater", "--by", "M. Oram", "--note", "Mrs Sample was in");
    run(0, "prove", job, "--test", "look=met: seen by M. Oram", "--test", "polarity=met");
    run(
        0,
        "close",
        job,
        "--outcome",
        "cured",
        "--unproven",
        "--by",
        "M. Oram",
        "--note",
        "Mrs Sample pays later",
        "--old-parts",
        "left with Mrs Sample");

    String named = page(job);
    String anonymous = page(job, "--anonymous");
    assertTrue(named.contains("M. Oram") && named.contains("Mrs Sample"));
    assertFalse(anonymous.contains("Oram"));
    assertFalse(anonymous.contains("Sample"));
    assertTrue(anonymous.contains("That is for the person who did the work to say"));
  }

  /** Marks on the axis of a pump curve are its flow rate; none is there before it was read. */
  @Test
  void aMarkOnAnAxisIsNamedAfterWhatWasRead() throws IOException {
    String page = page(copied("washer-extractor.json"));

    assertTrue(page.contains(">flow rate as found<"), page);
    assertTrue(page.contains("<title>flow rate at the end of the drain hose as found<"), page);
    assertFalse(page.contains(">flow as found<"));
  }

  @Test
  void aGuaranteeIsToldInWords() throws IOException {
    String washer = copied("washer-extractor.json");
    run(0, "done", washer, "heater.renew-heater");
    run(0, "close", washer, "--outcome", "cured", "--unproven", "--guarantee", "12 mo");

    assertTrue(points(washer).contains("we give 12 months from"), points(washer));
  }

  @Test
  void whatHoldsForEveryMachineOfAKindDoesNotKeepACuredOneOutOfUse() throws IOException {
    String oven = called("oven", "stays-cold");
    run(0, "done", oven, "ring-element.renew-heater");
    run(0, "prove", oven, "--read", "ring-element.resistance=24.5 ohm", "--saw", "stays-cold=no");
    run(0, "close", oven, "--outcome", "cured", "--unproven");

    String points = points(oven);
    assertFalse(points.contains("No, not as it is"), points);
    assertFalse(points.contains("isolated and locked"), points);
    assertFalse(page(oven).contains("<strong>DANGER"));
  }

  @Test
  void aMachineThatWasFoundDangerousStaysOutOfUseHoweverTheJobEnds() throws IOException {
    String boiler = copied("water-boiler.json");
    assertTrue(points(boiler).contains("No, not as it is."), points(boiler));
    run(0, "close", boiler, "--outcome", "stopped");

    String points = points(boiler);
    assertTrue(
        points.contains("No, not as it is: the job ended as stopped and passed on."), points);
    assertTrue(page(boiler).contains("<strong>DANGER"));
  }

  @Test
  void aJobThatEndedWithTheFaultThereSaysSoBeforeAnybodySigns() {
    String microwave = called("microwave-oven", "stays-cold");
    run(0, "close", microwave, "--outcome", "stopped");

    String points = points(microwave);
    assertTrue(
        points.contains(
            "No, not as it is: the job ended as stopped and passed on. Do not use it; leave it"
                + " unplugged"),
        points);
    assertTrue(points.contains("Holds for every such machine: Microwave oven: do not"), points);
    assertFalse(points.contains("take its power off and call"), points);
  }

  /** Copper pans on an induction hob: the machine is in order, and its owner hears that. */
  @Test
  void aMachineInWhichNothingIsWrongIsSaidToBeInOrder() throws IOException {
    String hob = called("induction-hob", "stops-in-cycle");
    String note = "The new pans are of copper; a magnet shows which ones work.";
    run(0, "close", hob, "--outcome", "nothing-wrong", "--note", note);

    String points = points(hob);
    assertTrue(points.contains("Nothing wrong was found with your machine."), points);
    assertTrue(points.contains("Nothing had to be mended. " + note), points);
    assertFalse(points.contains("Most likely"), points);
    assertFalse(points.contains("wrong still"), points);
    assertFalse(points.contains("60 V"), points);
  }

  @Test
  void whatIsMendedByWordAloneIsNeitherDeniedNorShown() throws IOException {
    String washer = copied("washer-extractor.json");
    Path file = Path.of(washer);
    String closed = "{ \"closed\": { \"date\": \"2026-11-01\", \"outcome\": \"cured\" },";
    Files.writeString(file, Files.readString(file).replaceFirst("\\{", closed));

    String points = points(washer);
    assertTrue(points.contains("What was done was not written down."), points);
    assertTrue(
        points.contains(
            "Nobody has measured or looked after the work: that it is mended is the word of"
                + " whoever closed the job."),
        points);
    assertFalse(points.contains("wrong still"), points);
    assertFalse(points.contains("Nothing was mended"), points);
  }

  @Test
  void workThatNobodyLookedAtIsWordAndWhatSuchWorkMends() throws IOException {
    String washer = copied("washer-extractor.json");
    run(0, "done", washer, "heater.renew-heater");
    run(0, "done", washer, "drain-pump.clean-pump");
    assertTrue(points(washer).contains("Nothing was read or seen after the work: whether it"));
    run(0, "close", washer, "--outcome", "cured", "--unproven");

    String points = points(washer);
    assertTrue(points.contains("Nobody has measured or looked after the work: that"), points);
    assertTrue(points.contains("Such work mends it in about"), points);
  }

  @Test
  void aLookThatIsWrittenDownIsNotDenied() throws IOException {
    String washer = copied("washer-extractor.json");
    run(0, "done", washer, "heater.renew-heater");
    run(0, "prove", washer, "--test", "look=met");
    run(0, "close", washer, "--outcome", "cured", "--unproven");

    String points = points(washer);
    assertFalse(points.contains("Nobody has measured or looked"), points);
    assertTrue(points.contains("Nobody has read or seen after the work that"), points);
  }

  @Test
  void whatLeftABeginningOpenIsWrongStill() throws IOException {
    String washer = copied("washer-extractor.json");
    run(0, "close", washer, "--outcome", "left");

    assertTrue(points(washer).contains("Nothing was mended, so what was wrong is wrong still."));
  }

  /** 1.8 m of 2.5 mm2: 0.1 ohm for contacts and 7.98 ohm/km (IEC 60228, class 5), 0.114 ohm. */
  @Test
  void whatMeetsAnyLimitOfAThickerCordIsMet() throws IOException {
    String washer = copied("washer-extractor.json");
    run(0, "done", washer, "heater.renew-heater");
    run(0, "prove", washer, "--read", "supply-cord.protective-conductor-resistance=0.09 ohm");

    String points = points(washer);
    assertTrue(points.contains("Earth connection: as it must be, by what was entered."), points);
    assertTrue(run(0, "prove", washer).out().contains("allowed at most 0.11"), points);
  }

  @Test
  void twoReadingsOfOneStepAreOneLine() throws IOException {
    String washer = copied("washer-extractor.json");
    run(0, "done", washer, "heater.renew-heater");
    run(0, "prove", washer, "--read", "supply-cord.touch-current=0.1 mA");

    String points = points(washer);
    assertTrue(points.contains("Leakage current: in part not measured."), points);
    assertEquals(
        points.indexOf("Leakage current:"), points.lastIndexOf("Leakage current:"), points);
  }
}
