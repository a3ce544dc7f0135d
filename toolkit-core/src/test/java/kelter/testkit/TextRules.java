package kelter.testkit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kelter.core.check.Check;
import kelter.core.check.Finding;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Appliance;
import kelter.core.job.Instrument;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;
import kelter.testkit.trial.TrialFindings;

/** What a module says to people. */
public final class TextRules {

  /** Words that promise what no calculation can. */
  private static final Pattern PROMISE =
      Pattern.compile("\\b(safe|compliant|complies)\\b", Pattern.CASE_INSENSITIVE);

  /** A law of nature or a definition is the same in every edition. */
  private static final Pattern TIMELESS =
      Pattern.compile("\\b(laws?|definition|theorem)\\b", Pattern.CASE_INSENSITIVE);

  private TextRules() {}

  /**
   * A text must not be blank and must not say that a machine is safe or compliant.
   *
   * @param module the module
   * @param appliances the appliances to try
   * @return the breaches
   */
  public static List<String> texts(CalculationModule module, List<Appliance> appliances) {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("title of the module", module.about().title());
    texts.put("version of the module", module.about().version());
    module.calculations().forEach(calculation -> collect(calculation, texts));
    module.parts().kinds().forEach(kind -> collect(kind, texts));
    for (Check check : module.parts().checks()) {
      texts.put("title of check " + check.id(), check.title());
    }
    for (Symptom symptom : module.symptoms()) {
      texts.put("title of symptom " + symptom.id(), symptom.title());
      texts.put("question of symptom " + symptom.id(), symptom.question());
    }
    module.cautions().forEach(c -> texts.put("caution " + c.id(), c.text()));
    module.instruments().forEach(i -> texts.put("title of instrument " + i.id(), i.title()));
    for (Appliance appliance : appliances) {
      TrialFindings.of(module, appliance).forEach(finding -> collect(finding, texts));
      for (FaultModel model : module.parts().faultModels(appliance)) {
        model.faults().forEach(fault -> collect(fault, texts));
        model.questions().forEach(q -> collect(q.component(), q.observable(), texts));
      }
    }
    List<String> breaches = new ArrayList<>();
    texts.forEach((where, text) -> judge(where, text, breaches));
    return breaches;
  }

  private static void judge(String where, String text, List<String> breaches) {
    if (text.isBlank()) {
      breaches.add(where + " is blank");
    }
    Matcher promise = PROMISE.matcher(text);
    if (promise.find()) {
      breaches.add(
          "%s says '%s', which is not for a calculation to say: %s"
              .formatted(where, promise.group(), text));
    }
  }

  private static void collect(Calculation calculation, Map<String, String> texts) {
    String of = " of calculation " + calculation.id();
    texts.put("title" + of, calculation.title());
    texts.put("formula" + of, calculation.formula());
    texts.put("range" + of, calculation.range());
    calculation.parameters().forEach(p -> texts.put("parameter " + p.id() + of, p.title()));
    calculation.outputs().forEach(o -> texts.put("output " + o.id() + of, o.title()));
    collect(calculation.cautions(), of, texts);
  }

  private static void collect(ComponentKind kind, Map<String, String> texts) {
    String of = " of component kind " + kind.id();
    texts.put("title" + of, kind.title());
    kind.observables().forEach(observable -> collect(kind.id(), observable, texts));
    kind.figures().forEach(figure -> texts.put("figure " + figure.id() + of, figure.title()));
    kind.curves().forEach(curve -> texts.put("curve " + curve.id() + of, curve.title()));
  }

  private static void collect(String owner, Observable observable, Map<String, String> texts) {
    String of = " of observable " + owner + "." + observable.id();
    texts.put("title" + of, observable.title());
    texts.put("procedure" + of, observable.procedure().whole());
    observable.grades().forEach(grade -> texts.put("grade '" + grade + "'" + of, grade));
    observable.conditions().forEach(c -> texts.put("condition " + c.id() + of, c.title()));
    collect(observable.procedure().cautions(), of, texts);
  }

  private static void collect(Finding finding, Map<String, String> texts) {
    String of = " of finding " + finding.id();
    texts.put("title" + of, finding.title());
    if (!finding.remark().isEmpty()) {
      texts.put("remark" + of, finding.remark());
    }
  }

  private static void collect(Fault fault, Map<String, String> texts) {
    texts.put("title of fault " + fault.key(), fault.title());
    for (Remedy remedy : fault.remedies()) {
      String of = " of remedy " + remedy.component() + "." + remedy.id();
      texts.put("title" + of, remedy.title());
      collect(remedy.cautions(), of, texts);
    }
  }

  private static void collect(List<Caution> cautions, String of, Map<String, String> texts) {
    for (int i = 0; i < cautions.size(); i++) {
      texts.put("caution " + (i + 1) + of, cautions.get(i).text());
    }
  }

  /**
   * A source must name its document; a published one with a year, edition, clause or equation. Only
   * a demonstration may invent.
   *
   * @param module the module
   * @param appliances the appliances to try
   * @param demonstration whether figures may be invented
   * @return the breaches
   */
  public static List<String> sources(
      CalculationModule module, List<Appliance> appliances, boolean demonstration) {
    Map<String, Source> sources = new LinkedHashMap<>();
    module.calculations().forEach(c -> sources.put("calculation " + c.id(), c.source()));
    for (Appliance appliance : appliances) {
      for (FaultModel model : module.parts().faultModels(appliance)) {
        model.faults().forEach(f -> sources.put("prior of fault " + f.key(), f.source()));
      }
      for (Finding finding : TrialFindings.of(module, appliance)) {
        if (!isOfAComponent(finding.source(), appliance)) {
          sources.put("limits of finding " + finding.id(), finding.source());
        }
      }
    }
    List<String> breaches = new ArrayList<>();
    for (Instrument instrument : module.instruments()) {
      String where = "instrument " + instrument.id();
      instrument
          .typical()
          .ifPresentOrElse(
              source -> sources.put(where, source), () -> breaches.add(where + " has no source"));
    }
    sources.forEach((where, source) -> judge(where, source, demonstration, breaches));
    return breaches;
  }

  /** What the machine of a test states is the test's. */
  private static boolean isOfAComponent(Source source, Appliance appliance) {
    return appliance.components().stream().anyMatch(each -> each.source().equals(source));
  }

  private static void judge(
      String where, Source source, boolean demonstration, List<String> breaches) {
    boolean published =
        source.standing() == Standing.PUBLISHED || source.standing() == Standing.SECOND_HAND;
    boolean timeless = TIMELESS.matcher(source.document()).find();
    if (published && !timeless && source.document().chars().noneMatch(Character::isDigit)) {
      breaches.add(
          "%s: '%s' names no year, edition, clause or equation"
              .formatted(where, source.document()));
    }
    if (source.standing() == Standing.INVENTED && !demonstration) {
      breaches.add(where + " is invented, which only a demonstration may");
    }
  }
}
