package kelter.cli.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import kelter.cli.proof.ProofText;
import kelter.cli.text.Figures;
import kelter.cli.text.StepText;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Component;
import kelter.core.job.Instrument;
import kelter.core.job.work.WorkDone;
import kelter.core.proof.Proof;
import kelter.core.proof.ReadTwice;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.shop.Shop;
import kelter.core.shop.ShopInstrument;
import kelter.core.workshop.AsLeft;
import kelter.core.workshop.Case;

/** The tables of a report, and the drawings beside them. */
final class ReportRows {

  private static final double WORTH_TELLING = 0.02;
  private static final int MOST_FAULTS = 6;
  private static final String NOT_READ = "not read";

  private final Case machine;
  private final Proof proof;
  private final UnaryOperator<String> words;
  private final boolean anonymous;

  ReportRows(Case machine, Proof proof, UnaryOperator<String> words, boolean anonymous) {
    this.machine = machine;
    this.proof = proof;
    this.words = words;
    this.anonymous = anonymous;
  }

  List<Map<String, Object>> work() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (WorkDone work : machine.job().progress().work()) {
      String by = anonymous || work.by().isBlank() ? "" : ", " + work.by();
      rows.add(
          Map.of(
              "what", words.apply(ProofText.title(work)),
              "time", work.time().map(each -> words.apply(each.display())).orElse("not told"),
              "parts", words.apply(parts(work)),
              "found", words.apply(found(work)),
              "by", words.apply((work.date() + by).strip())));
    }
    return rows;
  }

  private static String parts(WorkDone work) {
    String parts =
        work.parts().stream()
            .map(part -> part.words() + part.price().map(each -> ", " + each.format()).orElse(""))
            .collect(Collectors.joining("; "));
    return parts.isEmpty() ? "none" : parts;
  }

  private String found(WorkDone work) {
    String found =
        work.found().stream()
            .map(
                key ->
                    machine.faults().stream()
                        .filter(fault -> fault.key().equals(key))
                        .map(fault -> fault.title())
                        .findFirst()
                        .orElse(key))
            .collect(Collectors.joining("; "));
    return found.isEmpty() ? "not told" : found;
  }

  List<Map<String, Object>> tests() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (ReleaseTest test : proof.tests()) {
      String note = note(test);
      boolean made = test.isRead() || test.result() != ReleaseTest.Result.NOT_MEASURED;
      String read =
          test.isRead()
              ? test.against().map(Figures::measured).orElse(NOT_READ)
              : note.isBlank() ? "looked at" : note;
      String limit = test.against().map(ReportRows::limit).orElse(test.isRead() ? "" : "no figure");
      String why = test.isRead() && !note.isBlank() ? ": " + note : "";
      rows.add(
          Map.of(
              "text", words.apply(text(test)),
              "read", words.apply(made ? read : NOT_READ),
              "limit", words.apply(limit),
              "result", words.apply(test.result().words() + why)));
    }
    return rows;
  }

  /** What somebody wrote of a look may tell persons; of a reading only Kelter makes notes. */
  private String note(ReleaseTest test) {
    return anonymous && !test.isRead() ? "" : test.note();
  }

  private static String limit(Finding finding) {
    boolean known = finding.verdict() != Verdict.NOT_MEASURED;
    return (known ? Figures.limits(finding) : "none known") + "; " + finding.source().display();
  }

  private String text(ReleaseTest test) {
    return test.isRead()
        ? machine
            .job()
            .appliance()
            .component(test.component())
            .flatMap(part -> machine.vocabulary().observable(part.kind(), test.observable()))
            .map(observable -> StepText.sentence(observable.title()))
            .orElse(test.text())
        : test.text();
  }

  List<Map<String, Object>> readings() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (ReadTwice each : proof.readings()) {
      Map<String, Object> row = new HashMap<>();
      Optional<Finding> limits = each.leftAgainst().or(each::foundAgainst);
      row.put(
          "title",
          words.apply(
              StepText.sentence(Component.words(each.component()))
                  + ": "
                  + each.observable().title()));
      row.put("found", words.apply(told(each.foundAgainst(), each.foundShown())));
      row.put(
          "left",
          words.apply(
              each.left().map(left -> told(each.leftAgainst(), left.shown())).orElse(NOT_READ)));
      row.put("allowed", words.apply(limits.map(Figures::limits).orElse("no limit")));
      row.put("change", words.apply(each.change().words()));
      row.put("drawing", ReadingDrawing.of("reading-" + rows.size(), each).stream().toList());
      rows.add(row);
    }
    return rows;
  }

  private static String told(Optional<Finding> against, String shown) {
    return against
        .map(each -> Figures.measured(each) + ", " + each.verdict().words())
        .orElse(shown);
  }

  /** The likeliest faults, as found or as left, with both chances. */
  Optional<Map<String, Object>> odds() {
    Map<String, Double> found = chances(machine.diagnosis());
    Optional<AsLeft> after = machine.asLeft();
    Map<String, Double> left = after.map(each -> chances(each.diagnosis())).orElse(Map.of());
    Map<String, String> titles = new LinkedHashMap<>();
    machine.diagnosis().faults().forEach(each -> put(titles, each));
    after.ifPresent(each -> each.diagnosis().faults().forEach(fault -> put(titles, fault)));
    List<OddsDrawing.Row> rows = new ArrayList<>();
    titles.keySet().stream()
        .sorted((one, other) -> Double.compare(most(other, found, left), most(one, found, left)))
        .limit(MOST_FAULTS)
        .forEach(
            key ->
                rows.add(row(titles.get(key), found.getOrDefault(key, 0.0), left.get(key), after)));
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    List<Map<String, Object>> told = new ArrayList<>();
    for (OddsDrawing.Row row : rows) {
      told.add(Map.of("title", row.title(), "found", row.found(), "left", row.left()));
    }
    return Optional.of(Map.of("drawing", OddsDrawing.of(rows), "rows", told));
  }

  private OddsDrawing.Row row(String title, double found, Double left, Optional<AsLeft> after) {
    double now = left == null ? 0 : left;
    return new OddsDrawing.Row(
        words.apply(StepText.sentence(title)),
        plain(found),
        found,
        after.isPresent() ? plain(now) : "nothing done yet",
        after.isPresent() ? now : 0);
  }

  private static String plain(double chance) {
    return Figures.percent(chance).replace('\u00a0', ' ');
  }

  private static void put(Map<String, String> titles, Diagnosis.FaultProbability each) {
    if (each.probability() >= WORTH_TELLING) {
      titles.putIfAbsent(each.fault().key(), each.fault().title());
    }
  }

  private static double most(String key, Map<String, Double> found, Map<String, Double> left) {
    return Math.max(found.getOrDefault(key, 0.0), left.getOrDefault(key, 0.0));
  }

  private static Map<String, Double> chances(Diagnosis diagnosis) {
    Map<String, Double> chances = new HashMap<>();
    diagnosis.faults().forEach(each -> chances.put(each.fault().key(), each.probability()));
    return chances;
  }

  List<Map<String, Object>> instruments(Shop shop) {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (Instrument each : machine.job().instruments()) {
      Optional<ShopInstrument> known = shop.instrument(each.id());
      rows.add(
          Map.of(
              "title", words.apply(each.title().isBlank() ? each.id() : each.title()),
              "calibrated",
                  known
                      .flatMap(ShopInstrument::calibrated)
                      .map(Object::toString)
                      .orElse("not told"),
              "due", known.flatMap(ShopInstrument::due).map(Object::toString).orElse("not told")));
    }
    return rows;
  }
}
