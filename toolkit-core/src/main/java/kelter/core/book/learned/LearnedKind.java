package kelter.core.book.learned;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindCause;
import kelter.core.source.Source;

/**
 * What the book tells of a kind of machine.
 *
 * @param jobs how many jobs were counted
 * @param weight how much they count against the table of the kind, 0 to below 1
 * @param shares by the key of a cause, or {@code nothing-wrong} and {@code something-else}, its
 *     share
 * @param chances by the key of a cause and by symptom the chance that it makes it
 * @param models by maker and model in one spelling how its shares differ
 * @param ages by the age in years from which on they hold how the shares differ
 * @param unnamed by the key of a cause that the kind does not name how many jobs had it
 */
public record LearnedKind(
    int jobs,
    double weight,
    Map<String, LearnedShare> shares,
    Map<String, Map<String, LearnedChance>> chances,
    Map<String, LearnedGroup> models,
    Map<Integer, LearnedGroup> ages,
    Map<String, Integer> unnamed) {

  /** From which age on, in years, machines are told apart; own choice. */
  private static final List<Integer> BANDS = List.of(0, 4, 8, 12);

  private static final double LEAST = 1e-6;

  /** Copies the maps. */
  public LearnedKind {
    shares = Map.copyOf(shares);
    chances = Map.copyOf(chances);
    models = Map.copyOf(models);
    ages = Map.copyOf(ages);
    unnamed = Map.copyOf(unnamed);
  }

  /**
   * The ages that are counted together.
   *
   * @param age an age, years
   * @return from which age on they hold, years
   */
  public static int band(double age) {
    int band = 0;
    for (int from : BANDS) {
      band = age >= from ? from : band;
    }
    return band;
  }

  /**
   * The groups that a machine belongs to.
   *
   * @param model maker and model in one spelling; empty if not known
   * @param age the age in years
   * @return those of which enough was learned
   */
  public List<LearnedGroup> groups(String model, OptionalDouble age) {
    List<LearnedGroup> groups = new ArrayList<>();
    if (models.containsKey(model)) {
      groups.add(models.get(model));
    }
    if (age.isPresent() && ages.containsKey(band(age.getAsDouble()))) {
      groups.add(ages.get(band(age.getAsDouble())));
    }
    return groups;
  }

  /**
   * A kind with what was learned in place of its table. What the book does not know stays as the
   * table tells it.
   *
   * @param table the kind as its file tells it
   * @param model maker and model of the machine in one spelling; empty if not known
   * @param age its age in years
   * @return the kind
   */
  public Kind in(Kind table, String model, OptionalDouble age) {
    List<LearnedGroup> groups = groups(model, age);
    Map<String, Double> share = new HashMap<>();
    double sum = 0;
    KindTable known = new KindTable(table);
    for (int i = 0; i < known.keys().size(); i++) {
      String key = known.keys().get(i);
      LearnedShare own = shares.get(key);
      double each = own == null ? known.shares()[i] : own.share();
      for (LearnedGroup group : groups) {
        each *= group.factors().getOrDefault(key, 1.0);
      }
      share.put(key, Math.max(LEAST, each));
      sum += Math.max(LEAST, each);
    }
    List<KindCause> causes = new ArrayList<>();
    for (KindCause cause : table.causes()) {
      causes.add(cause.with(share.get(cause.key()) / sum, chances(cause)));
    }
    return table.with(
        new Kind.NothingWrong(
            share.get(KindTable.NOTHING_WRONG) / sum, table.nothingWrong().symptoms()),
        share.get(KindTable.SOMETHING_ELSE) / sum,
        causes,
        source(table.source()));
  }

  private Map<String, Double> chances(KindCause cause) {
    Map<String, LearnedChance> own = chances.getOrDefault(cause.key(), Map.of());
    Map<String, Double> all = new HashMap<>(cause.symptoms());
    all.replaceAll(
        (symptom, chance) -> own.containsKey(symptom) ? own.get(symptom).chance() : chance);
    return all;
  }

  private Source source(Source table) {
    return new Source(
        "%s; and %s jobs of the shop's book, weight %s %%"
            .formatted(table.document(), jobs, Math.round(100 * weight)),
        table.standing());
  }
}
