package kelter.cli.book;

import static kelter.cli.book.Entries.DAY;
import static kelter.cli.book.Entries.full;
import static kelter.cli.book.Entries.plain;
import static kelter.cli.book.Entries.said;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import kelter.core.book.Added;
import kelter.core.book.BookEntry;
import kelter.core.book.JobBook;
import kelter.core.book.Likeness;
import kelter.core.book.Selection;
import kelter.core.book.learning.BookLearning;
import kelter.core.book.learning.LearningRule;
import kelter.core.file.book.LearnedFile;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.module.CalculationModule;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;

/** What a job book must do, whichever database it is in. */
abstract class BookContract {

  /** An empty place for a book. */
  abstract BookPlace place() throws Exception;

  private static BookEntry washer(int number) {
    return plain(
        "job-" + number, DAY.plusDays(number), "washing-machine", "B", OptionalDouble.of(5));
  }

  @Test
  void anEntryComesBackAsItWasAdded() throws Exception {
    try (JobBook book = place().openOrMake()) {
      BookEntry bare = plain("bare", DAY, "kettle", "", OptionalDouble.empty());
      assertEquals(List.of(Added.NEW, Added.NEW), book.add(List.of(full("one"), bare)));

      assertEquals(Optional.of(full("one")), book.find("one"));
      assertEquals(Optional.of(bare), book.find("bare"));
      assertEquals(Optional.empty(), book.find("none"));
      assertEquals(2, book.size());
      assertEquals(List.of(), book.check());
    }
  }

  @Test
  void theSameJobIsKeptOnce() throws Exception {
    BookPlace place = place();
    try (JobBook book = place.openOrMake()) {
      book.add(List.of(full("one")));
    }
    try (JobBook book = place.open()) {
      BookEntry other = said(full("one"), "something else", Map.of());

      assertEquals(
          List.of(Added.KNOWN, Added.OTHER, Added.NEW, Added.KNOWN),
          book.add(List.of(full("one"), other, full("two"), full("two"))));
      assertEquals(Optional.of(full("one")), book.find("one"));
      assertEquals(2, book.size());
    }
  }

  /** As entries are exported; what else differs is another content. */
  @Test
  void anEntryWithoutItsSerialNumberIsKnown() throws Exception {
    try (JobBook book = place().openOrMake()) {
      book.add(List.of(full("one"), washer(2)));
      BookEntry other = said(full("one").withoutSerial(), "something else", Map.of());

      assertEquals(
          List.of(Added.KNOWN, Added.KNOWN),
          book.add(List.of(full("one").withoutSerial(), washer(2).withoutSerial())));
      assertEquals(List.of(Added.OTHER), book.add(List.of(other)));
      assertEquals(Optional.of(full("one")), book.find("one"));
    }
  }

  @Test
  void entriesAreListedTheLatestFirst() throws Exception {
    try (JobBook book = place().openOrMake()) {
      book.add(List.of(washer(1), washer(3), washer(2)));
      book.add(List.of(plain("k", DAY.plusDays(9), "kettle", "", OptionalDouble.empty())));
      Selection washers =
          new Selection("washing-machine", Optional.of(DAY.plusDays(2)), Optional.empty(), 10);
      Selection early = new Selection("", Optional.empty(), Optional.of(DAY.plusDays(2)), 10);

      assertEquals(List.of("job-3", "job-2"), jobs(book.list(washers)));
      assertEquals(List.of("job-2", "job-1"), jobs(book.list(early)));
      assertEquals(
          List.of("k"), jobs(book.list(new Selection("", Optional.empty(), Optional.empty(), 1))));
    }
  }

  private static List<String> jobs(List<BookEntry> entries) {
    return entries.stream().map(BookEntry::job).toList();
  }

  @Test
  void wordsAreFoundByTheirBeginning() throws Exception {
    try (JobBook book = place().openOrMake()) {
      book.add(
          List.of(
              full("one"),
              said(washer(2), "Leaks at the door seal when hot", Map.of()),
              said(washer(3), "Leaks from below", Map.of())));

      assertEquals(List.of("job-3", "job-2"), jobs(book.search("leak", 9)));
      assertEquals(List.of("job-2"), jobs(book.search("LEAKS seal", 9)));
      assertEquals(List.of("one"), jobs(book.search("t9-0412", 9)));
      assertEquals(List.of("one"), jobs(book.search("tarnwell drum 9", 9)));
      assertEquals(List.of("one"), jobs(book.search("müller", 9)));
      assertEquals(List.of("job-3"), jobs(book.search("leaks", 1)));
      assertEquals(List.of(), book.search("  -- ' \" * ", 9));
      assertEquals(List.of(), book.search("') or 1=1 --", 9));
      assertEquals(List.of(), book.search("near and or not \"", 9));
    }
  }

  @Test
  void theLikestComeFirst() throws Exception {
    try (JobBook book = place().openOrMake()) {
      book.add(
          List.of(
              said(washer(1), "", Map.of("leaks", Answer.YES)),
              said(washer(2), "", Map.of("leaks", Answer.NO)),
              said(washer(3), "", Map.of("leaks", Answer.YES, "loud", Answer.YES)),
              plain("k", DAY, "kettle", "B", OptionalDouble.of(5))));
      Likeness wanted =
          new Likeness(washer(0).machine(), Map.of("leaks", Answer.SOMETIMES, "loud", Answer.YES));

      List<String> found =
          book.similar(wanted, 9).stream().map(each -> each.entry().job()).toList();

      assertEquals(List.of("job-3", "job-1", "job-2"), found);
      assertEquals(1, book.similar(wanted, 1).size());
    }
  }

  @Test
  void allAreReadInTheOrderOfTheirClosing() throws Exception {
    try (JobBook book = place().openOrMake()) {
      List<BookEntry> entries = new ArrayList<>();
      for (int i = 0; i < 1203; i++) {
        entries.add(washer(i * 7 % 1203));
      }
      book.add(entries);
      List<BookEntry> read = new ArrayList<>();
      book.each(read::add);

      assertEquals(1203, read.size());
      for (int i = 0; i < read.size(); i++) {
        assertEquals("job-" + i, read.get(i).job());
      }
    }
  }

  @Test
  void lessonsTeachWhatTheWholeEntriesDo() throws Exception {
    try (JobBook book = place().openOrMake()) {
      List<BookEntry> entries = new ArrayList<>();
      for (int i = 0; i < 1203; i++) {
        entries.add(i % 2 == 0 ? Entries.full("full-" + i) : washer(i));
      }
      book.add(entries);
      BookLearning whole = learning();
      BookLearning lessons = learning();
      book.each(whole::read);
      book.lessons(lessons::read);

      assertEquals(1203, lessons.tally().jobs());
      assertEquals(LearnedFile.text(whole.learned()), LearnedFile.text(lessons.learned()));
    }
  }

  /** Numbers come as text with a lesson, and still none loses a digit. */
  @Test
  void lessonsKeepEveryDigit() throws Exception {
    SplittableRandom random = new SplittableRandom(17);
    List<BookEntry> entries = new ArrayList<>();
    for (int i = 0; i < 2_000; i++) {
      double small = random.nextDouble() * Math.pow(10, -random.nextInt(12));
      entries.add(Entries.figures("figures-" + i, 1e4 * random.nextDouble(), small));
    }
    entries.add(Entries.figures("least", Double.MIN_VALUE, Double.MIN_NORMAL));
    entries.add(Entries.figures("most", 1e4, 1));
    entries.add(Entries.figures("none", 0, 0));
    try (JobBook book = place().openOrMake()) {
      book.add(entries);
      List<BookEntry> lessons = new ArrayList<>();
      book.lessons(lessons::add);

      assertEquals(entries, lessons);
    }
  }

  private static BookLearning learning() {
    Workshop tool = Workshop.of(ServiceLoader.load(CalculationModule.class));
    LearningRule rule = new LearningRule(LocalDate.of(2030, 1, 1), LearningRule.USUALLY_KEPT);
    return BookLearning.begin(tool.kinds()::kind, rule);
  }

  /** Two vans at once: each entry is there once, whoever came first. */
  @Test
  void twoWritersLoseNothing() throws Exception {
    BookPlace place = place();
    place.openOrMake().close();
    ExecutorService vans = Executors.newFixedThreadPool(2);
    List<Future<Integer>> done = new ArrayList<>();
    for (int van = 0; van < 2; van++) {
      done.add(vans.submit(writing(place)));
    }
    int fresh = 0;
    for (Future<Integer> each : done) {
      fresh += each.get();
    }
    vans.shutdown();
    try (JobBook book = place.open()) {
      Set<String> jobs = new TreeSet<>();
      book.each(entry -> jobs.add(entry.job()));

      assertEquals(200, fresh);
      assertEquals(200, jobs.size());
      assertEquals(List.of(), book.check());
    }
  }

  private static Callable<Integer> writing(BookPlace place) {
    return () -> {
      int fresh = 0;
      try (JobBook book = place.open()) {
        for (int i = 0; i < 200; i += 5) {
          List<BookEntry> some = new ArrayList<>();
          for (int k = i; k < i + 5; k++) {
            some.add(washer(k));
          }
          fresh += (int) book.add(some).stream().filter(Added.NEW::equals).count();
        }
      }
      return fresh;
    };
  }

  @Test
  void anEmptyBookIsSound() throws Exception {
    try (JobBook book = place().openOrMake()) {
      assertEquals(List.of(), book.check());
      assertEquals(0, book.size());
      assertEquals(List.of(), book.search("leaks", 9));
    }
  }
}
