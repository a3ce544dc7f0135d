package kelter.cli.safety;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kelter.cli.wiring.Found;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.file.json.JsonText;
import kelter.core.safety.Hazard;
import kelter.core.workshop.Case;
import kelter.core.workshop.Workshop;

/** Jobs as a technician would write them, for tests of what may be proposed. */
public record Call(
    String kind,
    String market,
    String said,
    Map<String, String> symptoms,
    List<String> more,
    List<String> tests) {

  public static final Workshop WORKSHOP = Workshop.of(Found.usual().modules());

  public static Call of(String kind) {
    return new Call(kind, "EU", "", Map.of(), List.of(), List.of());
  }

  public Call in(String other) {
    return new Call(kind, other, said, symptoms, more, tests);
  }

  public Call said(String words) {
    return new Call(kind, market, words, symptoms, more, tests);
  }

  public Call answered(String symptom, String answer) {
    Map<String, String> all = new java.util.TreeMap<>(symptoms);
    all.put(symptom, answer);
    return new Call(kind, market, said, all, more, tests);
  }

  public Call read(String of, String observable, String reading) {
    return read(of, observable, reading, "", "as-found");
  }

  /** Tests on the way back to power that were met, {@code step} or {@code step: note} each. */
  public Call met(String... steps) {
    return new Call(kind, market, said, symptoms, more, List.of(steps));
  }

  Call left(String of, String observable, String reading, String at) {
    return read(of, observable, reading, at, "as-left");
  }

  Call read(String of, String observable, String reading, String at, String stage) {
    List<String> all = new ArrayList<>(more);
    all.add(
        "{\"of\":\"%s\",\"observable\":\"%s\",\"reading\":\"%s\",\"at\":{%s},\"stage\":\"%s\"}"
            .formatted(of, observable, reading, at, stage));
    return new Call(kind, market, said, symptoms, all, tests);
  }

  Case open() {
    return open("", "", "");
  }

  public Case open(String nameplate, String components, String records) {
    return WORKSHOP.open(
        WORKSHOP.read(JsonText.read(json(nameplate, components, records), "call", "")).job());
  }

  public byte[] json(String nameplate, String components, String records) {
    String reports =
        symptoms.entrySet().stream()
            .map(each -> "\"%s\":\"%s\"".formatted(each.getKey(), each.getValue()))
            .collect(Collectors.joining(","));
    String text =
        """
        {"format":"kelter-job/2","id":"call","market":"%s",
         "appliance":{"kind":"%s","nameplate":{%s},"components":[%s]},
         "complaint":{"said":"%s","displayed":""},
         "symptoms":{%s},"measurements":[%s],"records":{%s},"tests":{%s}}
        """
            .formatted(
                market,
                kind,
                nameplate.isEmpty()
                    ? (market.equals("NA") ? "\"voltage\":\"120 V\"" : "\"voltage\":\"230 V\"")
                    : nameplate,
                components,
                said,
                reports,
                String.join(",", more),
                records,
                tests.stream().map(Call::test).collect(Collectors.joining(",")));
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String test(String told) {
    String[] words = told.split(": ", 2);
    return words.length == 1
        ? "\"%s\":\"met\"".formatted(words[0])
        : "\"%s\":{\"result\":\"met\",\"note\":\"%s\"}".formatted(words[0], words[1]);
  }

  /** The most dangerous way in which something is proposed. */
  static Hazard most(Case machine) {
    Hazard most = Hazard.NONE;
    for (Diagnosis.NextMeasurement next : machine.diagnosis().next()) {
      Hazard hazard = next.question().observable().procedure().hazard();
      most = hazard.compareTo(most) > 0 ? hazard : most;
    }
    return most;
  }

  public static List<String> next(Case machine) {
    return machine.diagnosis().next().stream().map(each -> each.question().key()).toList();
  }
}
