package kelter.core.book.learning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.Outcome;
import kelter.core.book.learned.KindTable;
import kelter.core.book.learned.LearnedChance;
import kelter.core.book.learned.LearnedGroup;
import kelter.core.book.learned.LearnedKind;
import kelter.core.book.learned.LearnedShare;
import kelter.core.diagnosis.learning.DirichletPrior;
import kelter.core.diagnosis.learning.Strength;
import kelter.core.job.SymptomReport.Answer;

/** What the entries of one kind of machine tell of causes and symptoms. */
final class KindTally {

  private final KindTable table;
  private final KindCounts counts;
  private final Map<String, NotFound> notFound = new HashMap<>();

  /** A job that was closed without a cause, of which a call-back may tell one. */
  private record NotFound(BookedMachine machine, double weight) {}

  KindTally(KindTable table) {
    this(table, KindCounts.none());
  }

  /** What was counted already, against a table. */
  KindTally(KindTable table, KindCounts counts) {
    this.table = table;
    this.counts = counts;
  }

  KindCounts counts() {
    return counts;
  }

  KindTable table() {
    return table;
  }

  /**
   * Counts an entry.
   *
   * @param entry the entry
   * @param first the job that its complaint came up with first
   * @param taught the causes that were confirmed on that job and its call-backs before
   * @param weight what the entry counts
   */
  void add(BookEntry entry, String first, Set<String> taught, double weight) {
    List<ConfirmedCause> fresh = fresh(entry.causes(), taught);
    if (!fresh.isEmpty()) {
      confirmed(entry, fresh, first, weight);
    } else if (entry.causes().isEmpty() && taught.isEmpty() && !notFound.containsKey(first)) {
      withoutCause(entry, first, weight);
    }
  }

  private static List<ConfirmedCause> fresh(List<ConfirmedCause> causes, Set<String> taught) {
    if (taught.isEmpty()) {
      return causes;
    }
    List<ConfirmedCause> fresh = new ArrayList<>(causes);
    fresh.removeIf(cause -> taught.contains(cause.key()));
    return fresh;
  }

  private void confirmed(BookEntry entry, List<ConfirmedCause> fresh, String first, double weight) {
    int[] classes = new int[fresh.size()];
    for (int i = 0; i < classes.length; i++) {
      classes[i] = table.of(fresh.get(i));
      if (classes[i] == table.other()) {
        counts.unnamed().merge(fresh.get(i).key(), 1, Integer::sum);
      }
    }
    NotFound before = notFound.remove(first);
    if (before == null) {
      for (ShareTally each : tallies(entry.machine())) {
        each.add(classes, weight, entry.machine().age());
      }
    } else {
      for (ShareTally each : tallies(before.machine())) {
        each.move(table.other(), classes, before.weight());
      }
    }
    if (classes.length == 1 && entry.causes().size() == 1) {
      for (Map.Entry<String, Answer> each : entry.symptoms().entrySet()) {
        counts.symptoms().add(classes[0], each.getKey(), each.getValue() != Answer.NO, weight);
      }
    }
  }

  /** A job that was broken off before anything was found tells nothing of causes. */
  private void withoutCause(BookEntry entry, String first, double weight) {
    if (entry.outcome() == Outcome.NOTHING_WRONG) {
      for (ShareTally each : tallies(entry.machine())) {
        each.add(new int[] {table.nothing()}, weight, entry.machine().age());
      }
    } else if (entry.outcome() == Outcome.CURED || entry.outcome() == Outcome.NOT_CURED) {
      for (ShareTally each : tallies(entry.machine())) {
        each.add(new int[] {table.other()}, weight, entry.machine().age());
      }
      notFound.put(first, new NotFound(entry.machine(), weight));
    }
  }

  private List<ShareTally> tallies(BookedMachine machine) {
    List<ShareTally> tallies = new ArrayList<>(List.of(counts.all()));
    String model = machine.sameModel();
    if (!model.isEmpty()) {
      tallies.add(counts.models().computeIfAbsent(model, any -> new ShareTally()));
    }
    if (machine.age().isPresent()) {
      int band = LearnedKind.band(machine.age().getAsDouble());
      tallies.add(counts.ages().computeIfAbsent(band, any -> new ShareTally()));
    }
    return tallies;
  }

  Strength.Sample sample() {
    return counts.all().sample(table, table.shares());
  }

  List<SymptomTally.Cell> cells() {
    return counts.symptoms().cells(table);
  }

  /**
   * The shares at the typical age, by table and book.
   *
   * @param weight how much the counts weigh against the table, 0 to below 1
   */
  double[] shares(double weight) {
    double[] expected = counts.all().expected(table, table.shares());
    double[] found = KindTable.normalised(counts.all().counts(table));
    double[] mean = new double[expected.length];
    for (int i = 0; i < mean.length; i++) {
      mean[i] = expected[i] + weight * (found[i] - expected[i]);
    }
    double[] shares = table.shares();
    for (int i = 0; i < shares.length; i++) {
      shares[i] *= mean[i] / expected[i];
    }
    return KindTable.normalised(shares);
  }

  /** Those models and ages of which there are enough jobs, against the shares of all. */
  List<Strength.Sample> groupSamples(double[] shares) {
    List<Strength.Sample> samples = new ArrayList<>();
    enough(counts.models()).values().forEach(each -> samples.add(each.sample(table, shares)));
    enough(counts.ages()).values().forEach(each -> samples.add(each.sample(table, shares)));
    return samples;
  }

  private static <K> Map<K, ShareTally> enough(Map<K, ShareTally> groups) {
    Map<K, ShareTally> enough = new LinkedHashMap<>(groups);
    enough.values().removeIf(each -> each.weight() < LearningRule.LEAST_OF_GROUP);
    return enough;
  }

  LearnedKind learned(double weight, double chanceStrength, double groupStrength) {
    double[] shares = shares(weight);
    double[] found = counts.all().counts(table);
    Map<String, LearnedShare> learned = new LinkedHashMap<>();
    for (int i = 0; i < shares.length; i++) {
      learned.put(table.keys().get(i), new LearnedShare(shares[i], table.shares()[i], found[i]));
    }
    Map<String, LearnedGroup> ofModels = new LinkedHashMap<>();
    enough(counts.models())
        .forEach((model, each) -> ofModels.put(model, group(each, shares, groupStrength)));
    Map<Integer, LearnedGroup> ofAges = new LinkedHashMap<>();
    enough(counts.ages())
        .forEach((age, each) -> ofAges.put(age, group(each, shares, groupStrength)));
    return new LearnedKind(
        counts.all().jobs(),
        weight,
        learned,
        chances(chanceStrength),
        ofModels,
        ofAges,
        counts.unnamed());
  }

  private Map<String, Map<String, LearnedChance>> chances(double strength) {
    Map<String, Map<String, LearnedChance>> chances = new TreeMap<>();
    for (SymptomTally.Cell cell : cells()) {
      chances
          .computeIfAbsent(table.keys().get(cell.cause()), any -> new TreeMap<>())
          .put(cell.symptom(), cell.learned(strength));
    }
    return chances;
  }

  private LearnedGroup group(ShareTally group, double[] shares, double strength) {
    double[] expected = group.expected(table, shares);
    double[] mean = DirichletPrior.of(expected, strength).predictive(group.counts(table));
    Map<String, Double> factors = new TreeMap<>();
    for (int i = 0; i < mean.length; i++) {
      factors.put(table.keys().get(i), mean[i] / expected[i]);
    }
    return new LearnedGroup(group.jobs(), group.weight() / (group.weight() + strength), factors);
  }
}
