package kelter.core.book.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import kelter.core.book.BookEntry;
import kelter.core.book.Outcome;
import kelter.core.book.learning.LearningRule;

/** Which jobs cured, and which complaints came back. */
final class CureTally {

  private final Question question;
  private final Purse purse;
  private final Map<String, Ended> ended = new LinkedHashMap<>();
  private final Set<String> cameBack = new HashSet<>();
  private final Map<String, Figures> minutes = new TreeMap<>();
  private final Map<String, Figures> costs = new TreeMap<>();

  private record Ended(String kind, boolean cured, boolean first) {}

  CureTally(Question question, Purse purse) {
    this.question = question;
    this.purse = purse;
  }

  void add(BookEntry entry) {
    entry.callBackOf().ifPresent(cameBack::add);
    boolean tried = entry.outcome() == Outcome.CURED || entry.outcome() == Outcome.NOT_CURED;
    boolean hadItsTime =
        !entry.closed().plusDays(LearningRule.DAYS_TO_COME_BACK).isAfter(question.asOf());
    if (tried && hadItsTime) {
      ended.put(
          entry.job(),
          new Ended(
              entry.machine().kind(),
              entry.outcome() == Outcome.CURED,
              entry.callBackOf().isEmpty()));
    }
    if (entry.callBackOf().isPresent()) {
      took(entry);
    }
  }

  private void took(BookEntry entry) {
    OptionalDouble took = Minutes.of(entry);
    if (took.isEmpty()) {
      return;
    }
    add(minutes, entry, took.getAsDouble());
    OptionalDouble parts = purse.parts(entry);
    OptionalDouble work = purse.work(took.getAsDouble());
    if (parts.isPresent() && work.isPresent()) {
      add(costs, entry, parts.getAsDouble() + work.getAsDouble());
    }
  }

  private static void add(Map<String, Figures> to, BookEntry entry, double figure) {
    to.computeIfAbsent("", any -> new Figures()).add(figure);
    to.computeIfAbsent(entry.machine().kind(), any -> new Figures()).add(figure);
  }

  List<CallBacks> callBacks() {
    Map<String, int[]> counts = new TreeMap<>();
    ended.forEach(
        (job, each) -> {
          if (each.cured()) {
            count(counts, each.kind(), cameBack.contains(job));
          }
        });
    List<CallBacks> all = new ArrayList<>();
    counts.forEach(
        (kind, count) ->
            all.add(
                new CallBacks(
                    kind,
                    new Share(count[0], count[1]),
                    Mean.of(minutes.getOrDefault(kind, new Figures()).all()),
                    Mean.of(costs.getOrDefault(kind, new Figures()).all()))));
    all.sort(
        Comparator.comparingInt((CallBacks each) -> -each.share().of())
            .thenComparing(CallBacks::kind));
    return all;
  }

  List<FirstCures> firstCures() {
    Map<String, int[]> counts = new TreeMap<>();
    ended.forEach(
        (job, each) -> {
          if (each.first()) {
            count(counts, each.kind(), each.cured() && !cameBack.contains(job));
          }
        });
    List<FirstCures> all = new ArrayList<>();
    counts.forEach((kind, count) -> all.add(new FirstCures(kind, new Share(count[0], count[1]))));
    all.sort(
        Comparator.comparingInt((FirstCures each) -> -each.share().of())
            .thenComparing(FirstCures::kind));
    return all;
  }

  private static void count(Map<String, int[]> counts, String kind, boolean so) {
    for (String each : List.of("", kind)) {
      int[] count = counts.computeIfAbsent(each, any -> new int[2]);
      count[0] += so ? 1 : 0;
      count[1]++;
    }
  }
}
