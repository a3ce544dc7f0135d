package kelter.cli.diagnosis;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import kelter.cli.json.DiagnosisJson;
import kelter.cli.json.output.MadeBy;
import kelter.cli.terminal.Terminal;
import kelter.cli.wiring.Found;
import kelter.core.diagnosis.CauseShare;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.workshop.Case;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;

/** A cause of which no model speaks beside a heater in a machine that stays cold. */
class CausesWithoutModelToldTest {

  private static final Terminal TERMINAL =
      new Terminal(System.out, System.err, StandardCharsets.UTF_8, false, false, 80);
  private static final String MARK = "timer stands still (no measurement of it is known here)";

  private static Case machine() {
    Workshop workshop = Workshop.of(Found.usual().modules());
    CauseShare timer =
        new CauseShare(
            "timer",
            "stands-still",
            "timer stands still",
            0.3,
            Map.of("stays-cold", 0.9),
            new Source("made up", Standing.INVENTED));
    return workshop.open(
        workshop.read(Path.of("..", "demo", "jobs", "heater-fine.json")),
        List.of(timer),
        List.of());
  }

  private static String words(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void itIsMarkedInTheRankingAndHasNoSeverity() {
    String said = words(DiagnosisText.of(machine(), List.of(), TERMINAL));
    assertTrue(said.contains(MARK), said);
    assertFalse(said.contains(MARK + ", severity"), said);
    assertFalse(said.contains("element open (no measurement"), said);
  }

  @Test
  void itIsMarkedBesideAnotherRanking() {
    Case machine = machine();
    String said =
        words(
            WhatIfText.of(
                List.of("stays-cold=yes"), machine.diagnosis(), machine.diagnosis(), TERMINAL));
    assertTrue(said.contains(MARK), said);
  }

  @Test
  void itIsSaidWhyNothingIsMeasured() {
    String said =
        words(WhyText.of(machine().explain("stands-still"), machine().remedies(), TERMINAL));
    assertTrue(said.contains("No measurement of it is known here"), said);
    assertFalse(said.contains("its severity is"), said);
    String heater =
        words(WhyText.of(machine().explain("heater.leaking"), machine().remedies(), TERMINAL));
    assertFalse(heater.contains("No measurement of it is known here"), heater);
  }

  @Test
  void otherProgramsAreToldToo() {
    String json =
        DiagnosisJson.diagnosis(machine(), List.of())
            .text(new MadeBy("1", List.of()))
            .replaceAll("\\s+", " ");
    assertTrue(json.contains("\"title\" : \"timer stands still\", \"modelled\" : false"), json);
    assertTrue(json.contains("\"modelled\" : true"), json);
  }
}
