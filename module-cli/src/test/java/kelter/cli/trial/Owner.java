package kelter.cli.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.random.RandomGenerator;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptom.Misreports;

/** What the owner of a machine says, first unasked and then asked. */
final class Owner {

  private static final int VOLUNTEERED = 2;

  /** So often a machine that shows nothing is drawn anew: nobody would call for it. */
  private static final int TRIES = 20;

  private final TrueKind kind;
  private final RandomGenerator random;
  private final Set<String> there;

  private Owner(TrueKind kind, RandomGenerator random, Set<String> there) {
    this.kind = kind;
    this.random = random;
    this.there = there;
  }

  /** The owner of a machine, of which the symptoms are drawn. */
  static Owner of(TrueKind kind, TrueMachine machine, RandomGenerator random) {
    Set<String> there = new LinkedHashSet<>();
    for (int i = 0; i < TRIES && there.isEmpty(); i++) {
      for (Symptom symptom : kind.symptoms()) {
        if (random.nextDouble() < kind.chance(machine, symptom)) {
          there.add(symptom.id());
        }
      }
    }
    return new Owner(kind, random, there);
  }

  /** What is there and most plain: what the machine shows, then what nobody overlooks. */
  List<SymptomReport> volunteers() {
    List<SymptomReport> said = new ArrayList<>();
    kind.symptoms().stream()
        .filter(symptom -> there.contains(symptom.id()) && !isHidden(symptom))
        .sorted(Comparator.comparingInt(Owner::rank).thenComparingInt(this::asked))
        .limit(VOLUNTEERED)
        .forEach(symptom -> said.add(new SymptomReport(symptom.id(), Answer.YES)));
    return said;
  }

  private static int rank(Symptom symptom) {
    if (symptom.misreports().equals(Misreports.SHOWN)) {
      return 0;
    }
    return symptom.misreports().equals(Misreports.PLAIN) ? 1 : 2;
  }

  private int asked(Symptom symptom) {
    int place = kind.kind().asked().indexOf(symptom.id());
    return place < 0 ? Integer.MAX_VALUE : place;
  }

  /** What is answered to a question, with the chance of a wrong answer. */
  SymptomReport answer(Symptom symptom) {
    boolean yes = random.nextDouble() < chanceOfYes(symptom);
    return new SymptomReport(symptom.id(), yes ? Answer.YES : Answer.NO);
  }

  private double chanceOfYes(Symptom symptom) {
    Misreports wrong = symptom.misreports();
    if (isHidden(symptom)) {
      return wrong.yesWhenMasked();
    }
    return there.contains(symptom.id()) ? 1 - wrong.falseNo() : wrong.falseYes();
  }

  private boolean isHidden(Symptom symptom) {
    return symptom.maskedBy().stream().anyMatch(there::contains);
  }
}
