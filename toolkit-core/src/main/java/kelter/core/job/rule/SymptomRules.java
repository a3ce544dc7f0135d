package kelter.core.job.rule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.job.Job;
import kelter.core.job.SymptomReport;
import kelter.core.problem.Place;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptoms;
import kelter.core.vocabulary.Vocabulary;

/** The rules for what was said of symptoms: each is known, and reported once. */
public final class SymptomRules {

  /** So many reports are weighed together; own choice. */
  private static final int MOST = 40;

  /** A word that more symptoms share tells none of them apart. */
  private static final int COMMON = 6;

  /** So many symptoms are suggested at most. */
  private static final int SUGGESTED = 3;

  /** Nobody writes a longer word for a symptom. */
  private static final int LONGEST = 60;

  /** A shorter word does not lose an s at its end. */
  private static final int LONG_ENOUGH = 4;

  private SymptomRules() {}

  /**
   * A symptom.
   *
   * @param word the word for it
   * @param vocabulary the words that are known
   * @param at where it stands
   * @return the symptom; empty if there is none of that name, which is noted with the nearest ones
   */
  public static Optional<Symptom> symptom(String word, Vocabulary vocabulary, Place at) {
    Optional<Symptom> symptom = vocabulary.symptom(word);
    if (symptom.isEmpty()) {
      unknown(word, vocabulary, at);
    }
    return symptom;
  }

  private static void unknown(String word, Vocabulary vocabulary, Place at) {
    List<Symptom> weighed = vocabulary.weighed();
    List<String> known = weighed.stream().map(Symptom::id).toList();
    List<String> meant =
        Nearest.of(word, known).map(List::of).orElseGet(() -> sharing(word, weighed));
    if (meant.isEmpty()) {
      List<String> signs = Symptoms.SIGNS.stream().map(Symptom::id).toList();
      meant = Nearest.of(word, signs).map(List::of).orElse(List.of());
    }
    at.problem(
        "'" + word + "' is not a known symptom",
        meant.isEmpty()
            ? "known: " + String.join(", ", known)
            : "did you mean '" + String.join("' or '", meant) + "'?");
  }

  /** The symptoms that have most of the words in their title or question; none if many have. */
  private static List<String> sharing(String word, List<Symptom> symptoms) {
    if (word.length() > LONGEST) {
      return List.of();
    }
    Map<String, Integer> shared = new HashMap<>();
    for (String each : words(word)) {
      List<String> having = new ArrayList<>();
      for (Symptom symptom : symptoms) {
        if (words(symptom.title() + " " + symptom.question()).contains(each)) {
          having.add(symptom.id());
        }
      }
      if (having.size() <= COMMON) {
        having.forEach(id -> shared.merge(id, 1, Integer::sum));
      }
    }
    int most = shared.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    List<String> best =
        shared.keySet().stream().filter(id -> shared.get(id) == most).sorted().toList();
    return best.size() <= SUGGESTED ? best : List.of();
  }

  private static Set<String> words(String text) {
    Set<String> words = new LinkedHashSet<>();
    for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")) {
      boolean plural = word.length() > LONG_ENOUGH && word.endsWith("s");
      words.add(plural ? word.substring(0, word.length() - 1) : word);
    }
    words.remove("");
    return words;
  }

  static void hold(Job job, Vocabulary vocabulary, List<Problem> problems) {
    Spot at = Spot.of("symptoms", problems);
    Set<String> seen = new HashSet<>();
    for (SymptomReport report : job.complaint().symptoms()) {
      symptom(report.symptom(), vocabulary, new Spot(null, "symptom", report.symptom(), problems));
      if (!seen.add(report.symptom())) {
        at.problem(
            "symptom '" + report.symptom() + "' is reported twice", "keep one report of each");
      }
    }
    int count = job.complaint().symptoms().size();
    if (count > MOST) {
      at.problem(
          count + " reports of symptoms; up to " + MOST + " are weighed together",
          "leave out those that tell least");
    }
  }
}
