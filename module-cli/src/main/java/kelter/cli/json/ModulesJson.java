package kelter.cli.json;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kelter.cli.json.output.JsonOutput;
import kelter.cli.json.output.JsonResult;
import kelter.core.catalogue.Kind;
import kelter.core.module.CalculationModule;
import kelter.core.problem.Problem;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Unit;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Vocabulary;
import kelter.core.workshop.Coverage;
import kelter.core.workshop.PartFaults;
import kelter.core.workshop.Workshop;

/** What is loaded, and all words in which jobs are told, as a result. */
public final class ModulesJson {

  private ModulesJson() {}

  /**
   * What is loaded.
   *
   * @param workshop the workshop of the modules
   * @param refused plugins that were left out, each with the reason
   * @return the result
   */
  public static JsonResult of(Workshop workshop, List<Problem> refused) {
    Vocabulary vocabulary = workshop.vocabulary();
    List<Kind> kinds =
        workshop.kinds().ids().stream().flatMap(id -> workshop.kinds().kind(id).stream()).toList();
    return new JsonResult(
        ResultFormat.MODULES.id(),
        out -> {
          out.objects("modules", workshop.modules(), module -> write(out, module));
          ErrorsJson.write("refused", out, refused);
          out.objects("kinds", kinds, kind -> write(out, kind));
          Map<String, PartFaults> faults = new TreeMap<>();
          workshop.faults().forEach(each -> faults.put(each.component(), each));
          out.objects(
              "components",
              vocabulary.kinds(),
              kind -> write(out, kind, Optional.ofNullable(faults.get(kind.id()))));
          out.objects("symptoms", vocabulary.symptoms(), symptom -> write(out, symptom));
          out.objects(
              "meanings",
              List.of(Meaning.values()),
              meaning -> {
                out.text("id", meaning.id());
                out.text("title", meaning.symptom().title());
                out.text("symptom", meaning.symptom().id());
              });
          out.texts("units", Unit.symbols());
          out.cautions(workshop.cautions());
          out.objects(
              "words",
              ResultWords.of(workshop),
              words -> {
                out.text("member", words.member());
                out.statements("values", words.values());
              });
        });
  }

  private static void write(JsonOutput out, CalculationModule module) throws IOException {
    out.text("id", module.about().id());
    out.text("title", module.about().title());
    out.text("version", module.about().version());
    out.objects(
        "calculations",
        module.calculations(),
        calculation -> {
          out.text("id", calculation.id());
          out.text("title", calculation.title());
          out.source(calculation.source());
        });
    Map<String, String> checks = new LinkedHashMap<>();
    module.parts().checks().forEach(check -> checks.putIfAbsent(check.id(), check.title()));
    out.objects(
        "checks",
        List.copyOf(checks.entrySet()),
        check -> {
          out.text("id", check.getKey());
          out.text("title", check.getValue());
        });
    out.texts("components", module.parts().kinds().stream().map(ComponentKind::id).toList());
  }

  private static void write(JsonOutput out, Kind kind) throws IOException {
    out.text("id", kind.id());
    out.text("title", kind.title());
    out.texts("words", kind.words());
    out.objects(
        "parts",
        kind.parts(),
        part -> {
          out.text("id", part.id());
          out.text("kind", part.kind());
          out.text("title", part.title());
        });
    out.texts("asked", kind.asked());
    out.objects(
        "causes",
        kind.causes(),
        cause -> {
          out.text("id", cause.fault());
          out.text("component", cause.part());
          out.text("title", cause.title());
        });
  }

  private static void write(JsonOutput out, ComponentKind kind, Optional<PartFaults> faults)
      throws IOException {
    out.text("id", kind.id());
    out.text("title", kind.title());
    out.objects("observables", kind.observables(), observable -> write(out, observable));
    out.objects("figures", kind.figures(), figure -> write(out, figure));
    out.objects("curves", kind.curves(), curve -> write(out, curve));
    out.objects(
        "faults",
        faults.map(PartFaults::faults).orElse(List.of()),
        fault -> {
          out.text("id", fault.id());
          out.text("title", fault.title());
        });
    out.objects(
        "remedies",
        faults.map(PartFaults::remedies).orElse(List.of()),
        remedy -> {
          out.text("id", remedy.id());
          out.text("title", remedy.title());
          out.bool("needs-part", remedy.needsPart());
        });
  }

  private static void write(JsonOutput out, Observable observable) throws IOException {
    out.text("id", observable.id());
    out.text("title", observable.title());
    out.text(
        "type",
        switch (observable.type()) {
          case QUANTITY -> "quantity";
          case YES_NO -> "yes-no";
          case GRADE -> "grade";
        });
    if (observable.type() == Observable.Type.QUANTITY) {
      writeKind(out, observable.kind());
      out.value("low", observable.span().low(), observable.kind(), observable.kind().unit());
      out.value("high", observable.span().high(), observable.kind(), observable.kind().unit());
    }
    out.texts("grades", observable.grades());
    out.objects("conditions", observable.conditions(), condition -> write(out, condition));
  }

  private static void write(JsonOutput out, Characteristic figure) throws IOException {
    out.text("id", figure.id());
    out.text("title", figure.title());
    writeKind(out, figure.kind());
  }

  private static void writeKind(JsonOutput out, QuantityKind kind) throws IOException {
    out.text("quantity", kind.name());
    out.text("unit", kind.isMoney() ? "" : kind.unit().code());
  }

  private static void write(JsonOutput out, CurveKind curve) throws IOException {
    out.text("id", curve.id());
    out.text("title", curve.title());
    out.object("x", () -> writeKind(out, curve.x()));
    out.object("y", () -> writeKind(out, curve.y()));
  }

  private static void write(JsonOutput out, Symptom symptom) throws IOException {
    out.text("id", symptom.id());
    out.text("title", symptom.title());
    out.text("question", symptom.question());
  }

  /**
   * The coverage of all kinds.
   *
   * @param coverage the coverage of each kind
   * @return the result
   */
  public static JsonResult coverage(List<Coverage> coverage) {
    return new JsonResult(
        ResultFormat.COVERAGE.id(),
        out ->
            out.objects(
                "kinds",
                coverage,
                each -> {
                  out.text("kind", each.kind().id());
                  out.number("share", each.share());
                  out.objects(
                      "without",
                      each.without(),
                      cause -> {
                        out.text("cause", cause.key());
                        out.text("title", cause.title());
                        out.number("share", cause.share());
                      });
                }));
  }
}
