package kelter.core.file.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.catalogue.Completed;
import kelter.core.catalogue.MachineModel;
import kelter.core.file.field.CodeText;
import kelter.core.file.json.JsonNode;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.job.SymptomReport.Circumstance;
import kelter.core.job.rule.SymptomRules;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Vocabulary;

/** Reads what was said of symptoms, and what the machine shows of itself. */
final class SymptomsReader {

  static final Set<String> REPORT = JsonNode.names("report", "when", "step", "since");

  private static final String SYMPTOMS = "symptoms";
  private static final String LEFT = "symptoms-left";
  private static final String DISPLAYED = "displayed";
  private static final String OWN = "x-";
  private static final String NOT_ASKED = "not asked";

  /** Stands for the symptom of a report that is read for its mistakes only. */
  private static final String NOBODY = "unknown";

  private static final Map<String, Answer> ANSWERS = new LinkedHashMap<>();
  private static final Map<String, Circumstance> CIRCUMSTANCES = new LinkedHashMap<>();
  private static final Map<String, Meaning> MEANINGS = new LinkedHashMap<>();

  /** The words for a report, with the one for none. */
  static final Set<String> REPORTS;

  static {
    for (Answer answer : Answer.values()) {
      ANSWERS.put(answer.id(), answer);
    }
    for (Circumstance circumstance : Circumstance.values()) {
      CIRCUMSTANCES.put(circumstance.id(), circumstance);
    }
    for (Meaning meaning : Meaning.values()) {
      MEANINGS.put(meaning.id(), meaning);
    }
    REPORTS = new LinkedHashSet<>(ANSWERS.keySet());
    REPORTS.add(NOT_ASKED);
  }

  /** A code on the display, whose meaning the model of the machine tells. */
  static final Set<String> CODE = JsonNode.names("code");

  private final Vocabulary vocabulary;
  private final Optional<Completed> machine;
  private final List<String> notes;

  /** What is displayed, so far. */
  private final Set<String> shown = new LinkedHashSet<>();

  /** By symptom, in the order of the file. */
  private final Map<String, SymptomReport> reports = new LinkedHashMap<>();

  private SymptomsReader(Vocabulary vocabulary, Optional<Completed> machine, List<String> notes) {
    this.vocabulary = vocabulary;
    this.machine = machine;
    this.notes = notes;
  }

  /**
   * The reports, of each symptom one; mistakes are noted.
   *
   * @param machine the machine, which may tell what its codes mean; empty if it cannot be read
   * @param notes where it is told how codes were taken
   */
  static List<SymptomReport> reports(
      JsonNode root, Vocabulary vocabulary, Optional<Completed> machine, List<String> notes) {
    SymptomsReader reader = new SymptomsReader(vocabulary, machine, notes);
    Optional<JsonNode> symptoms = root.optional(SYMPTOMS);
    if (symptoms.isPresent()) {
      symptoms.get().members().forEach(reader::symptom);
    }
    for (JsonNode item : root.items(DISPLAYED)) {
      if (item.isObject()) {
        reader.code(item);
      } else {
        reader.meaning(item);
      }
    }
    return new ArrayList<>(reader.reports.values());
  }

  /**
   * What the machine does after the work; mistakes are noted.
   *
   * @return the reports, of each symptom one
   */
  static List<SymptomReport> left(JsonNode root, Vocabulary vocabulary) {
    SymptomsReader reader = new SymptomsReader(vocabulary, Optional.empty(), new ArrayList<>());
    root.optional(LEFT).ifPresent(symptoms -> symptoms.members().forEach(reader::symptom));
    return new ArrayList<>(reader.reports.values());
  }

  private void symptom(String word, JsonNode node) {
    if (word.startsWith(OWN)) {
      return;
    }
    Optional<Symptom> symptom = SymptomRules.symptom(word, vocabulary, node);
    String id = symptom.map(Symptom::id).orElse(NOBODY);
    Optional<SymptomReport> report = node.isObject() ? detailed(id, node) : plain(id, node);
    if (symptom.isPresent() && report.isPresent()) {
      reports.put(id, report.get());
    }
  }

  private static Optional<SymptomReport> plain(String symptom, JsonNode node) {
    Optional<String> word = node.word(REPORTS, "report of a symptom");
    return word.map(ANSWERS::get).map(answer -> new SymptomReport(symptom, answer));
  }

  private static Optional<SymptomReport> detailed(String symptom, JsonNode node) {
    node.object(REPORT);
    Optional<JsonNode> report = node.required("report");
    Optional<SymptomReport> plain =
        report.isPresent() ? plain(symptom, report.get()) : Optional.empty();
    Optional<JsonNode> when = node.optional("when");
    Optional<Circumstance> circumstance =
        when.isPresent()
            ? when.get().word(CIRCUMSTANCES.keySet(), "circumstance").map(CIRCUMSTANCES::get)
            : Optional.empty();
    String step = node.text("step").orElse("");
    String since = node.text("since").orElse("");
    return plain.map(said -> new SymptomReport(symptom, said.answer(), circumstance, step, since));
  }

  private void meaning(JsonNode item) {
    Optional<String> word = item.word(MEANINGS.keySet(), "meaning of a display");
    if (word.isPresent()) {
      once("'" + word.get() + "'", word.get(), item);
      displayed(word.get(), item);
    }
  }

  /** A code counts as what the model of the machine says that it means; else for nothing. */
  private void code(JsonNode item) {
    item.object(CODE);
    Optional<String> code = item.required("code").flatMap(CodeText::of);
    if (code.isEmpty()) {
      return;
    }
    once("the code '" + code.get() + "'", "code " + MachineModel.plain(code.get()), item);
    Optional<Meaning> meaning = machine.flatMap(known -> known.meaning(code.get()));
    if (meaning.isPresent()) {
      notes.add(
          "The code '%s' is taken as '%s', as the model file of %s says."
              .formatted(
                  code.get(),
                  meaning.get().id(),
                  machine.get().model().map(MachineModel::name).orElse("the machine")));
      displayed(meaning.get().id(), item);
    } else {
      notes.add(
          "The code '%s' counts for nothing: no model file of the machine says what it means."
              .formatted(code.get()));
    }
  }

  private void once(String told, String word, JsonNode item) {
    if (!shown.add(word)) {
      item.problem(told + " stands here twice", "keep one of them");
    }
  }

  private void displayed(String meaning, JsonNode item) {
    String symptom = MEANINGS.get(meaning).symptom().id();
    SymptomReport said = reports.computeIfAbsent(symptom, id -> new SymptomReport(id, Answer.YES));
    if (said.answer() == Answer.NO) {
      item.problem(
          "'%s' is displayed, but '%s' is reported as no".formatted(meaning, symptom),
          "keep the one that is so: leave it out here or under 'symptoms'");
    }
  }
}
