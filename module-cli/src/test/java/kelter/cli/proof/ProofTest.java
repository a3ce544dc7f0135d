package kelter.cli.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import kelter.cli.safety.Call;
import kelter.core.file.job.JobFile;
import kelter.core.file.job.ProgressEdit;
import kelter.core.file.json.Json;
import kelter.core.job.Measurement;
import kelter.core.job.work.TestDone;
import kelter.core.job.work.WorkDone;
import kelter.core.proof.Change;
import kelter.core.proof.Proof;
import kelter.core.proof.ReadTwice;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.workshop.Case;
import org.junit.jupiter.api.Test;

/** Readings as left judge the cure and leave the diagnosis as found alone. */
class ProofTest {

  private static final Path WASHER = Path.of("..", "demo", "jobs", "washer-extractor.json");

  private static Json.Obj washer() {
    return (Json.Obj) JobFile.content(WASHER);
  }

  private static Case open(Json.Obj content) {
    return Call.WORKSHOP.open(Call.WORKSHOP.read(content).job());
  }

  private static UnaryOperator<Json.Obj> done(String remedy) {
    WorkDone work =
        new WorkDone(Optional.of(remedy), "", Optional.empty(), List.of(), List.of(), "", "", "");
    return content -> ProgressEdit.with(content, work);
  }

  private static UnaryOperator<Json.Obj> left(
      String component, String observable, String reading, String meter) {
    ProgressEdit.Written written =
        new ProgressEdit.Written(
            component,
            observable,
            reading,
            Map.of(),
            Optional.of(meter).filter(each -> !each.isEmpty()),
            Measurement.Stage.AS_LEFT);
    return content -> ProgressEdit.with(content, written);
  }

  @SafeVarargs
  private static Json.Obj with(UnaryOperator<Json.Obj>... edits) {
    Json.Obj content = washer();
    for (UnaryOperator<Json.Obj> edit : edits) {
      content = edit.apply(content);
    }
    return content;
  }

  private static ReadTwice reading(Proof proof, String observable) {
    return proof.readings().stream()
        .filter(each -> each.observable().id().equals(observable))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatIsReadAfterTheWorkDoesNotChangeWhatWasFound() {
    Case before = open(washer());
    Case after =
        open(
            with(
                done("drain-pump.clean-pump"),
                done("heater.renew-heater"),
                left("drain-pump", "flow", "16 L/min", "bucket-and-watch"),
                content -> ProgressEdit.withSymptom(content, "drains-slowly", "no")));

    assertEquals(probabilities(before), probabilities(after));
    assertEquals(Optional.empty(), before.asLeft());
  }

  private static List<Double> probabilities(Case machine) {
    return machine.diagnosis().faults().stream().map(each -> each.probability()).toList();
  }

  @Test
  void aMachineInOrderAfterTheWorkIsMended() {
    Proof proof =
        Proof.of(
            open(
                with(
                    done("drain-pump.clean-pump"),
                    done("heater.renew-heater"),
                    left("drain-pump", "flow", "18.5 L/min", "bucket-and-watch"),
                    left("drain-pump", "head", "2.08 m", "standpipe"),
                    left("heater", "resistance", "13.2 ohm", "meter"),
                    content -> ProgressEdit.withSymptom(content, "drains-slowly", "no"),
                    content -> ProgressEdit.withSymptom(content, "heats-slowly", "no"),
                    content -> ProgressEdit.with(content, new TestDone("cycle", true, "")))));

    assertTrue(proof.cure().orElseThrow().chance() > 0.9, proof.cure().toString());
    assertEquals(Change.MENDED, reading(proof, "resistance").change());
    assertFalse(proof.isRefuted());
  }

  @Test
  void halfCuredReadsAsHalfCured() {
    Proof proof =
        Proof.of(
            open(
                with(
                    done("drain-pump.clean-pump"),
                    done("heater.renew-heater"),
                    left("heater", "resistance", "13.2 ohm", "meter"),
                    left("drain-pump", "flow", "9.5 L/min", "bucket-and-watch"))));

    assertEquals(Change.BETTER, reading(proof, "flow").change());
    assertTrue(proof.isRefuted());
    assertTrue(proof.cure().orElseThrow().chance() < 0.5, proof.cure().toString());
    assertEquals("Better than before, and not mended", proof.cure().orElseThrow().words());
  }

  @Test
  void workThatMendsNothingElseLeavesTheCauseWhereItWas() {
    Proof proof = Proof.of(open(with(done("supply-cord.renew-cord"))));

    assertTrue(proof.cure().orElseThrow().chance() < 0.1, proof.cure().toString());
    assertFalse(proof.cure().orElseThrow().read());
  }

  @Test
  void nothingReadAfterTheWorkProvesNothing() {
    Proof proof = Proof.of(open(with(done("drain-pump.clean-pump"), done("heater.renew-heater"))));

    assertEquals(
        "Nothing was read or seen after the work: whether it worked is open",
        proof.cure().orElseThrow().words());
    List<String> repeat =
        proof.toRepeat().stream()
            .map(each -> each.component() + "." + each.observable().id())
            .toList();
    assertTrue(
        repeat.containsAll(List.of("drain-pump.flow", "heater.resistance")), repeat.toString());
    assertFalse(repeat.contains("heater.insulation-resistance"), repeat.toString());
  }

  @Test
  void workInOwnWordsIsToldNotToCount() {
    WorkDone own =
        new WorkDone(
            Optional.empty(), "Clip put right", Optional.empty(), List.of(), List.of(), "", "", "");
    Proof proof = Proof.of(open(with(content -> ProgressEdit.with(content, own))));

    assertEquals(List.of("Clip put right"), proof.unknown());
  }

  @Test
  void testsComeInTheOrderOfReenergisingAndSayNoMoreThanWasEntered() {
    Proof proof =
        Proof.of(
            open(
                with(
                    left("supply-cord", "insulation-resistance", "0.12 Mohm", ""),
                    content -> ProgressEdit.with(content, new TestDone("look", true, "")))));
    List<String> steps = proof.tests().stream().map(ReleaseTest::step).distinct().toList();

    assertEquals("look", steps.get(0));
    assertTrue(steps.indexOf("earth") < steps.indexOf("insulation"));
    assertTrue(steps.indexOf("insulation") < steps.indexOf("one-minute"));
    assertTrue(steps.indexOf("one-minute") < steps.indexOf("leakage"));
    for (ReleaseTest test : proof.tests()) {
      ReleaseTest.Result expected =
          test.step().equals("look")
              ? ReleaseTest.Result.MET
              : test.step().equals("insulation")
                  ? ReleaseTest.Result.NOT_MET
                  : ReleaseTest.Result.NOT_MEASURED;
      assertEquals(expected, test.result(), test.step());
    }
  }

  @Test
  void aReadingAsFoundIsNoTestAfterTheWork() {
    Proof proof = Proof.of(open(washer()));

    assertTrue(proof.tests().stream().allMatch(ReleaseTest::isOpen));
  }

  @Test
  void aMachineWithoutAProtectiveConductorHasNoneToTest() {
    Case machine =
        Call.WORKSHOP.open(
            Call.WORKSHOP
                .read(
                    kelter.core.file.json.JsonText.read(
                        Call.of("hair-dryer")
                            .json("\"voltage\":\"230 V\",\"protection-class\":\"II\"", "", ""),
                        "call",
                        ""))
                .job());

    for (ReleaseTest test : Proof.of(machine).tests()) {
      boolean conductor = test.observable().startsWith("protective-conductor");
      assertEquals(conductor, test.result() == ReleaseTest.Result.NOT_APPLICABLE, test.toString());
    }
  }

  @Test
  void aReadingWithoutALimitIsAsBeforeOrNot() {
    UnaryOperator<Json.Obj> louder = left("drain-pump", "noise", "louder", "");
    UnaryOperator<Json.Obj> usual = left("drain-pump", "noise", "usual", "");

    assertEquals(Change.WITHOUT_LIMIT, reading(Proof.of(open(with(louder))), "noise").change());
    assertEquals(Change.CHANGED, reading(Proof.of(open(with(usual))), "noise").change());
  }

  @Test
  void whatIsReadOnlyAfterTheWorkIsToldToo() {
    Proof proof = Proof.of(open(with(left("supply-cord", "plug-hot", "yes", ""))));
    ReadTwice hot = reading(proof, "plug-hot");

    assertEquals(Optional.empty(), hot.found());
    assertEquals(Change.BAD, hot.change());
    assertTrue(proof.isRefuted());
  }

  @Test
  void aReadingUnderOtherConditionsIsNotTheSameReading() {
    ProgressEdit.Written open =
        new ProgressEdit.Written(
            "drain-pump",
            "head",
            "1.2 m",
            Map.of("flow", "20 L/min"),
            Optional.empty(),
            Measurement.Stage.AS_LEFT);
    Proof proof = Proof.of(open(with(content -> ProgressEdit.with(content, open))));

    assertEquals(Change.OPEN, reading(proof, "head").change());
  }

  @Test
  void dangerThatIsSeenAfterTheWorkLocksTheMachine() {
    Case machine = open(with(content -> ProgressEdit.withSymptom(content, "shock-felt", "yes")));

    assertTrue(machine.lockOut().row("shock").isPresent());
    assertTrue(machine.lockOut().staysUnplugged());
  }

  @Test
  void workAloneEndsNoSuspicion() {
    Path boiler = Path.of("..", "demo", "jobs", "water-boiler.json");
    Json.Obj found = (Json.Obj) JobFile.content(boiler);
    Case worked = open(done("heater.renew-heater").apply(found));

    assertEquals(open(found).lockOut().suspicions().size(), worked.lockOut().suspicions().size());
    assertFalse(worked.lockOut().suspicions().isEmpty());
  }

  @Test
  void aTestThatIsWrittenAsNotMetIsNotMet() {
    Proof proof =
        Proof.of(
            open(
                with(
                    content ->
                        ProgressEdit.with(content, new TestDone("earth", false, "cord broken")))));

    assertEquals(
        ReleaseTest.Result.NOT_MET,
        proof.tests().stream()
            .filter(each -> each.step().equals("earth"))
            .findFirst()
            .orElseThrow()
            .result());
  }

  private static Case washingMachine(WorkDone work, boolean drained) {
    Json.Obj content =
        (Json.Obj)
            kelter.core.file.json.JsonText.read(
                Call.of("washing-machine").answered("water-left", "yes").json("", "", ""),
                "call",
                "");
    content = ProgressEdit.with(content, work);
    return open(drained ? ProgressEdit.withSymptom(content, "water-left", "no") : content);
  }

  private static WorkDone cleared(String... found) {
    return new WorkDone(
        Optional.of("drain-pump.clean-pump"),
        "",
        Optional.empty(),
        List.of(),
        List.of(found),
        "",
        "",
        "");
  }

  /**
   * What was found and removed counts with the chance that its remedy cures, 0.9, and more once the
   * complaint is gone; without a find no more than the pump was suspected before.
   */
  @Test
  void whatWasFoundAndRemovedIsMended() {
    double clearedOnly = washingMachine(cleared("drain-pump.jammed"), false).asLeft().get().cured();
    assertEquals(0.89, clearedOnly, 0.03);
    Proof proof = Proof.of(washingMachine(cleared("drain-pump.jammed"), true));
    assertTrue(proof.cure().orElseThrow().chance() > 0.95, proof.cure().toString());
    double nothingFound = washingMachine(cleared(), true).asLeft().orElseThrow().cured();
    assertTrue(nothingFound > 0.05 && nothingFound < 0.5, nothingFound + "");
  }

  @Test
  void aFindOfWhatWasNotWorkedOnIsStillThere() {
    double cured = washingMachine(cleared("strainer.clogged"), false).asLeft().get().cured();
    assertTrue(cured < 0.05, cured + "");
  }

  @Test
  void aFindLeavesTheDiagnosisAsFoundAlone() {
    assertEquals(
        probabilities(washingMachine(cleared(), false)),
        probabilities(washingMachine(cleared("drain-pump.jammed"), false)));
  }
}
