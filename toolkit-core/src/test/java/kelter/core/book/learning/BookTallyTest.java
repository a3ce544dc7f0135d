package kelter.core.book.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.Outcome;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;
import kelter.core.book.learned.Learned;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindCause;
import kelter.core.catalogue.KindPart;
import kelter.core.catalogue.MainsConnection;
import kelter.core.file.book.LearnedFile;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.source.Source;
import org.junit.jupiter.api.Test;

/** Parts of a book teach together what the whole book teaches. */
class BookTallyTest {

  private static final Source INVENTED = Source.fromMemory("an invented kind");
  private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);
  private static final LearningRule RULE = new LearningRule(TODAY, 0.9);
  private static final int JOBS = 3_000;
  private static final String[] PARTS = {"pump", "heater", "belt", "lid"};

  private final List<BookEntry> entries = entries();

  private static Optional<Kind> kind(String id) {
    return Set.of("spinner", "wringer").contains(id) ? Optional.of(spinner(id)) : Optional.empty();
  }

  /** An invented kind, which does not know the lid. */
  private static Kind spinner(String id) {
    List<KindPart> parts = new ArrayList<>();
    List<KindCause> causes = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      parts.add(
          new KindPart(
              PARTS[i],
              PARTS[i],
              PARTS[i],
              Set.of(),
              Map.of(),
              Optional.empty(),
              Optional.empty()));
      causes.add(
          new KindCause(
              PARTS[i],
              "broken",
              PARTS[i],
              0.2 + 0.1 * i,
              false,
              KindCause.Mend.RENEW,
              Optional.empty(),
              OptionalDouble.empty(),
              Map.of("loud", 0.2 + 0.2 * i)));
    }
    return new Kind(
        id,
        id,
        List.of(),
        List.of(),
        "",
        8,
        MainsConnection.PLUG,
        parts,
        List.of(),
        new Kind.NothingWrong(0.05, Map.of()),
        0.05,
        causes,
        List.of(),
        List.of("loud"),
        List.of(),
        List.of(),
        INVENTED,
        INVENTED);
  }

  /**
   * Machines are met again, complaints come up again, on the same day too, and some are no kind.
   */
  private static List<BookEntry> entries() {
    SplittableRandom random = new SplittableRandom(22);
    List<BookEntry> entries = new ArrayList<>();
    for (int i = 0; i < JOBS; i++) {
      boolean again = i > 0 && random.nextInt(8) == 0;
      entries.add(entry(i, again ? random.nextInt(Math.max(0, i - 40), i) : -1, random));
    }
    return entries;
  }

  private static BookEntry entry(int number, int before, SplittableRandom random) {
    String part = PARTS[random.nextInt(PARTS.length)];
    List<ConfirmedCause> causes = new ArrayList<>();
    Outcome outcome = Outcome.values()[random.nextInt(Outcome.values().length)];
    if (outcome != Outcome.NOTHING_WRONG && random.nextInt(4) > 0) {
      causes.add(new ConfirmedCause(part, part, "broken"));
      if (random.nextInt(10) == 0) {
        causes.add(new ConfirmedCause("hose", "hose", "torn"));
      }
    }
    double told = random.nextDouble();
    return new BookEntry(
        "job-%05d".formatted(number),
        Optional.empty(),
        TODAY.minusDays((JOBS - number) / 3),
        new BookedMachine(
            List.of("spinner", "wringer", "nobody-knows").get(random.nextInt(3)),
            "Ostvik",
            "M" + random.nextInt(8),
            random.nextInt(3) == 0 ? "" : "S" + random.nextInt(400),
            random.nextInt(9) == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(1 + random.nextInt(15)),
            OptionalDouble.empty(),
            OptionalDouble.empty()),
        Optional.empty(),
        "",
        "",
        random.nextBoolean() ? Map.of("loud", Answer.values()[random.nextInt(3)]) : Map.of(),
        List.of(),
        outcome,
        causes,
        List.of(
            new WorkDone(
                part,
                "renew",
                OptionalDouble.of(10 + random.nextInt(50)),
                Optional.empty(),
                Optional.of(random.nextInt(6) > 0))),
        List.of(
            new ReadingTaken(
                part, "look", "mirror", OptionalDouble.of(2), random.nextInt(30) == 0)),
        random.nextInt(3) == 0 ? Map.of() : Map.of(part + ".broken", told),
        Optional.empty(),
        before < 0 ? Optional.empty() : Optional.of("job-%05d".formatted(before)));
  }

  private static BookTally tally(List<BookEntry> some) {
    BookLearning learning = BookLearning.begin(BookTallyTest::kind, RULE);
    some.forEach(learning::read);
    return learning.tally();
  }

  private static String text(BookTally tally) {
    return LearnedFile.text(tally.learned(BookTallyTest::kind));
  }

  /** What is tied together lies in one part; else entries fall into parts by chance. */
  private List<List<BookEntry>> parts(int number, long seed) {
    Map<String, String> above = new HashMap<>();
    for (BookEntry each : entries) {
      String first = "";
      for (String tie : BookLearning.ties(each)) {
        String top = top(above, tie);
        first = first.isEmpty() ? top : first;
        above.put(top, first);
      }
    }
    SplittableRandom random = new SplittableRandom(seed);
    Map<String, Integer> partOf = new HashMap<>();
    List<List<BookEntry>> parts = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      parts.add(new ArrayList<>());
    }
    for (BookEntry each : entries) {
      String top = top(above, "job " + each.job());
      parts.get(partOf.computeIfAbsent(top, any -> random.nextInt(number))).add(each);
    }
    return parts;
  }

  private static String top(Map<String, String> above, String tie) {
    String top = tie;
    while (!above.getOrDefault(top, top).equals(top)) {
      top = above.get(top);
    }
    return top;
  }

  @Test
  void partsInAnyNumberAndOrderTeachWhatTheWholeTeaches() {
    String whole = text(tally(entries));
    assertTrue(whole.contains("\"models\"") && whole.contains("\"weibull\""), whole);
    for (int number : new int[] {2, 3, 17, 400}) {
      List<List<BookEntry>> parts = parts(number, number);
      Collections.shuffle(parts, new Random(number));
      BookTally all = BookTally.none(RULE);
      for (List<BookEntry> part : parts) {
        all = all.plus(tally(part));
      }
      assertEquals(JOBS, all.jobs());
      assertEquals(whole, text(all), number + " parts");
    }
  }

  /** Were the ties needless, entries could be dealt out one by one. */
  @Test
  void whatIsTiedAndTornApartTeachesSomethingElse() {
    List<BookEntry> even = new ArrayList<>();
    List<BookEntry> odd = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      (i % 2 == 0 ? even : odd).add(entries.get(i));
    }
    assertNotEquals(text(tally(entries)), text(tally(even).plus(tally(odd))));
  }

  @Test
  void aTallyStaysWhenMoreIsReadOrItIsAskedAgain() {
    BookLearning learning = BookLearning.begin(BookTallyTest::kind, RULE);
    entries.subList(0, 1_000).forEach(learning::read);
    BookTally before = learning.tally();
    String told = text(before);
    assertEquals(told, LearnedFile.text(learning.learned()));
    entries.subList(1_000, 2_000).forEach(learning::read);
    learning.learned();

    assertEquals(told, text(before));
    assertEquals(told, text(tally(entries.subList(0, 1_000))));
  }

  @Test
  void aTallyIsTheSameAfterItWasSent() throws IOException, ClassNotFoundException {
    BookTally tally = tally(entries);
    ByteArrayOutputStream sent = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(sent)) {
      out.writeObject(tally);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(sent.toByteArray()))) {
      Learned arrived = ((BookTally) in.readObject()).learned(BookTallyTest::kind);
      assertEquals(tally.learned(BookTallyTest::kind), arrived);
    }
  }

  @Test
  void partsCountedByDifferentRulesAreNotPutTogether() {
    BookTally other = BookTally.none(new LearningRule(TODAY, 0.8));
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> tally(entries).plus(other));
    assertTrue(refused.getMessage().contains("0.8"), refused.getMessage());
  }

  @Test
  void aKindThatWasCountedAndIsGoneIsTold() {
    BookTally tally = tally(entries);
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> tally.learned(any -> Optional.empty()));
    assertTrue(refused.getMessage().contains("'spinner'"), refused.getMessage());
  }
}
