package kelter.core.diagnosis.simulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.vocabulary.Symptom;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Asks for the same symptoms of every machine, whatever it has. To tell only those that are there
 * would be a choice by what is to be found out, of which the diagnosis knows nothing.
 */
final class SymptomInterview {

  private final List<Symptom> asked;

  /** The asked ones, and those that hide some of them. */
  private final List<Symptom> drawn;

  private final MachineSymptoms chances;

  private SymptomInterview(List<Symptom> asked, List<Symptom> drawn, MachineSymptoms chances) {
    this.asked = asked;
    this.drawn = drawn;
    this.chances = chances;
  }

  /**
   * Chooses what is asked: of the symptoms that some fault makes those that machines have most
   * often, by id where they have two equally often.
   *
   * @param known all symptoms of machines, with those that hide them
   * @param told the chances by which they are chosen
   * @param truth the chances by which machines have them
   * @param count how many to ask for; fewer where fewer are made
   */
  static SymptomInterview of(
      List<Symptom> known, MachineSymptoms told, MachineSymptoms truth, int count) {
    Map<String, Symptom> byId = new HashMap<>();
    Map<Symptom, Double> prior = new HashMap<>();
    for (Symptom symptom : known) {
      byId.put(symptom.id(), symptom);
      if (told.isMade(symptom.id())) {
        prior.put(symptom, told.prior(symptom));
      }
    }
    List<Symptom> asked =
        prior.keySet().stream()
            .sorted(
                Comparator.comparingDouble((Symptom symptom) -> -prior.get(symptom))
                    .thenComparing(Symptom::id))
            .limit(count)
            .toList();
    Map<String, Symptom> drawn = new LinkedHashMap<>();
    asked.forEach(symptom -> drawn.put(symptom.id(), symptom));
    for (Symptom symptom : asked) {
      symptom.maskedBy().forEach(masker -> drawn.putIfAbsent(masker, byId.get(masker)));
    }
    return new SymptomInterview(asked, List.copyOf(drawn.values()), truth);
  }

  /** The ids of what is asked for, the commonest first. */
  List<String> asked() {
    return asked.stream().map(Symptom::id).toList();
  }

  /** What the owner of a machine answers, in the order of the questions. */
  List<SymptomReport> draw(Machine machine, UniformRandomProvider random) {
    Map<String, Boolean> there = new HashMap<>();
    for (Symptom symptom : drawn) {
      there.put(symptom.id(), random.nextDouble() < chances.chance(machine, symptom));
    }
    List<SymptomReport> reports = new ArrayList<>();
    for (Symptom symptom : asked) {
      boolean yes = random.nextDouble() < chanceOfYes(symptom, there);
      reports.add(new SymptomReport(symptom.id(), yes ? Answer.YES : Answer.NO));
    }
    return reports;
  }

  private static double chanceOfYes(Symptom symptom, Map<String, Boolean> there) {
    Symptom.Misreports wrong = symptom.misreports();
    if (symptom.maskedBy().stream().anyMatch(there::get)) {
      return wrong.yesWhenMasked();
    }
    return there.get(symptom.id()) ? 1 - wrong.falseNo() : wrong.falseYes();
  }
}
