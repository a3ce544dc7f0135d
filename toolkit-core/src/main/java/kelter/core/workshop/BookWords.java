package kelter.core.workshop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import kelter.core.book.BookedMachine;
import kelter.core.book.learned.Learned;
import kelter.core.book.learned.LearnedChance;
import kelter.core.book.learned.LearnedGroup;
import kelter.core.book.learned.LearnedKind;
import kelter.core.book.learned.LearnedRate;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindCause;
import kelter.core.job.Appliance;
import kelter.core.workshop.kind.LearnedWork;

/** What the shop's book counts for, in words for a person. */
final class BookWords {

  /** So many causes are told by name. */
  private static final int MOST = 5;

  /** A share that moved by less is not worth a line. */
  private static final double WORTH_TELLING = 0.1;

  private BookWords() {}

  static List<String> of(LearnedKind learned, Kind table, Appliance machine) {
    List<String> words = new ArrayList<>();
    String model = BookedMachine.sameModel(machine.maker(), machine.model());
    OptionalDouble age = Workshop.years(machine);
    words.add(
        "Shares of causes are from %s jobs of the shop's book and the table of the kind; the jobs count %s."
            .formatted(learned.jobs(), percent(learned.weight())));
    groups(learned, model, age, words);
    chances(learned, words);
    moved(learned.in(table, model, age), table, learned, words);
    return words;
  }

  /** Work and readings of which the book knows more, and how often cures do not last. */
  static List<String> ofWork(Learned learned, String kind, List<LearnedWork.Moved> moved) {
    List<String> words = new ArrayList<>();
    if (!moved.isEmpty()) {
      words.add(
          "Times and cures of %s remedies and readings are from the book and the modules."
              .formatted(moved.size()));
    }
    moved.stream()
        .filter(each -> each.size() >= WORTH_TELLING)
        .sorted(
            Comparator.comparingDouble((LearnedWork.Moved each) -> -each.size())
                .thenComparing(LearnedWork.Moved::what))
        .limit(MOST)
        .forEach(each -> words.add(work(each)));
    LearnedRate back = learned.callBacks().get(kind);
    if (back != null) {
      words.add(
          "Of cured complaints %s come back (95\u00a0%% between %s and %s), from the book, %.0f jobs; the cures of the book are taken that much lower."
              .formatted(
                  percent(back.rate()), percent(back.low()), percent(back.high()), back.cases()));
    }
    return words;
  }

  private static String work(LearnedWork.Moved each) {
    List<String> told = new ArrayList<>();
    if (each.times() > 0) {
      told.add(
          "%.0f min (module %.0f), from the book, %.0f jobs"
              .formatted(each.minutes(), each.minutesBefore(), each.times()));
    }
    if (each.cases() > 0) {
      told.add(
          "cures %s (module %s), from the book, %.0f jobs"
              .formatted(percent(each.cure()), percent(each.cureBefore()), each.cases()));
    }
    return each.what() + ": " + String.join("; ", told) + ".";
  }

  private static void groups(
      LearnedKind learned, String model, OptionalDouble age, List<String> words) {
    LearnedGroup ofModel = learned.models().get(model);
    if (ofModel != null) {
      words.add(
          "%s of them were on this model and count %s against the others."
              .formatted(ofModel.jobs(), percent(ofModel.weight())));
    }
    LearnedGroup ofAge =
        age.isPresent() ? learned.ages().get(LearnedKind.band(age.getAsDouble())) : null;
    if (ofAge != null) {
      words.add(
          "%s of them were on machines of about this age and count %s against the others."
              .formatted(ofAge.jobs(), percent(ofAge.weight())));
    }
  }

  private static void chances(LearnedKind learned, List<String> words) {
    int figures = 0;
    double answers = 0;
    for (Map<String, LearnedChance> each : learned.chances().values()) {
      for (LearnedChance chance : each.values()) {
        figures++;
        answers += chance.answers();
      }
    }
    if (figures > 0) {
      words.add(
          "%s chances of symptoms are from %.0f answers of the book and the table."
              .formatted(figures, answers));
    }
  }

  /** The causes whose share moved most, as the table has them and as they count now. */
  private static void moved(Kind now, Kind table, LearnedKind learned, List<String> words) {
    Map<String, Double> before = new HashMap<>();
    table.causes().forEach(cause -> before.put(cause.key(), cause.share()));
    now.causes().stream()
        .filter(cause -> change(cause, before) >= WORTH_TELLING)
        .sorted(
            Comparator.comparingDouble(
                    (KindCause cause) -> -Math.abs(cause.share() - before.get(cause.key())))
                .thenComparing(KindCause::key))
        .limit(MOST)
        .forEach(
            cause ->
                words.add(
                    "%s: share %s (table %s), confirmed in %.0f jobs."
                        .formatted(
                            cause.title(),
                            percent(cause.share()),
                            percent(before.get(cause.key())),
                            jobs(learned, cause))));
  }

  private static double change(KindCause cause, Map<String, Double> before) {
    return Math.abs(Math.log(cause.share() / before.get(cause.key())));
  }

  private static double jobs(LearnedKind learned, KindCause cause) {
    return learned.shares().containsKey(cause.key()) ? learned.shares().get(cause.key()).jobs() : 0;
  }

  private static String percent(double ratio) {
    double percent = 100 * ratio;
    return percent < 10
        ? String.format(Locale.ROOT, "%.1f\u00a0%%", percent)
        : Math.round(percent) + "\u00a0%";
  }
}
