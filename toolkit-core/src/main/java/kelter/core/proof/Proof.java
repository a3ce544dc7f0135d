package kelter.core.proof;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Job;
import kelter.core.job.Progress;
import kelter.core.job.SymptomReport;
import kelter.core.job.work.WorkDone;
import kelter.core.safety.lockout.LockOut;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.safety.lockout.Reread;
import kelter.core.workshop.Case;

/**
 * What has been shown after the work, and what has not.
 *
 * @param first what the lock-out table says first; empty if nothing
 * @param release what is still to be read before a row of the table lets go, dead readings first
 * @param words the ids of rows of the table that keep the machine unplugged and that only the word
 *     of a competent person ends
 * @param readings what was read as found beside what was read as left
 * @param symptoms what was reported, before and after
 * @param tests the tests on the way back to power, in order
 * @param beforePower those of them that are open and hold the power back
 * @param cure how likely it worked; empty if nothing was done and nothing read after it
 * @param unknown work that no module knows, so that it counts for nothing in the chance of a cure
 */
public record Proof(
    String first,
    List<Reread> release,
    List<String> words,
    List<ReadTwice> readings,
    List<SeenTwice> symptoms,
    List<ReleaseTest> tests,
    List<ReleaseTest> beforePower,
    Optional<Cure> cure,
    List<String> unknown) {

  /**
   * A symptom before and after the work.
   *
   * @param symptom its id
   * @param found what was said of it when the job began, if anything
   * @param left what it does after the work, if somebody looked
   */
  public record SeenTwice(
      String symptom, Optional<SymptomReport.Answer> found, Optional<SymptomReport.Answer> left) {}

  /** Copies the lists. */
  public Proof {
    release = List.copyOf(release);
    words = List.copyOf(words);
    readings = List.copyOf(readings);
    symptoms = List.copyOf(symptoms);
    tests = List.copyOf(tests);
    beforePower = List.copyOf(beforePower);
    unknown = List.copyOf(unknown);
  }

  /**
   * The proof as it stands.
   *
   * @param machine the case
   * @return what was shown and what is open
   */
  public static Proof of(Case machine) {
    Job job = machine.job();
    List<ReadTwice> readings = new ReadingsTwice(machine).all();
    boolean better = readings.stream().anyMatch(each -> each.change() == Change.BETTER);
    Optional<Cure> cure =
        machine
            .asLeft()
            .map(left -> Cure.of(machine.diagnosis(), left, isRead(machine, readings), better));
    return new Proof(
        machine.lockOut().text(),
        release(machine.lockOut()),
        words(machine.lockOut()),
        readings,
        symptoms(job),
        machine.lockOut().backToPower(),
        machine.lockOut().beforePower(),
        cure,
        unknown(machine));
  }

  /** Whether something was read, seen or tested after the work that speaks of the complaint. */
  private static boolean isRead(Case machine, List<ReadTwice> readings) {
    Progress progress = machine.job().progress();
    Set<String> worked = new LinkedHashSet<>();
    progress.work().forEach(each -> worked.addAll(each.components()));
    boolean tested =
        machine.backToPower().stream()
            .filter(step -> !step.rulesOut().isEmpty())
            .anyMatch(
                step ->
                    progress.tests().stream()
                        .anyMatch(test -> test.met() && test.step().equals(step.id())));
    return tested
        || !progress.symptoms().isEmpty()
        || readings.stream()
            .filter(each -> each.left().isPresent())
            .anyMatch(each -> each.spoke() || worked.contains(each.component()));
  }

  private static List<Reread> release(LockOut lockOut) {
    Set<Reread> open = new LinkedHashSet<>();
    lockOut.rows().forEach(each -> open.addAll(each.openDead()));
    lockOut.rows().forEach(each -> open.addAll(each.openLast()));
    return List.copyOf(open);
  }

  private static List<String> words(LockOut lockOut) {
    return lockOut.keeping().stream()
        .filter(each -> each.openDead().isEmpty() && each.openLast().isEmpty())
        .map(each -> each.row().id())
        .toList();
  }

  private static List<SeenTwice> symptoms(Job job) {
    Set<String> ids = new LinkedHashSet<>();
    for (SymptomReport each : job.complaint().symptoms()) {
      if (each.answer() != SymptomReport.Answer.NO) {
        ids.add(each.symptom());
      }
    }
    for (SymptomReport each : job.progress().symptoms()) {
      ids.add(each.symptom());
    }
    List<SeenTwice> twice = new ArrayList<>();
    for (String id : ids) {
      twice.add(
          new SeenTwice(
              id, answer(id, job.complaint().symptoms()), answer(id, job.progress().symptoms())));
    }
    return twice;
  }

  private static Optional<SymptomReport.Answer> answer(String id, List<SymptomReport> reports) {
    return reports.stream()
        .filter(each -> each.symptom().equals(id))
        .map(SymptomReport::answer)
        .reduce((one, other) -> other);
  }

  private static List<String> unknown(Case machine) {
    List<String> known = machine.remedies().stream().map(Remedy::key).toList();
    List<String> unknown = new ArrayList<>();
    for (WorkDone each : machine.job().progress().work()) {
      if (each.remedy().isEmpty() && !each.isForWhatWasFound()) {
        unknown.add(each.title());
      } else if (each.remedy().filter(key -> !known.contains(key)).isPresent()) {
        unknown.add(each.remedy().get());
      }
    }
    return unknown;
  }

  /**
   * The readings that spoke for what was mended, or did not conform, and were not taken again.
   *
   * @return those to be taken, in the order of the job
   */
  public List<ReadTwice> toRepeat() {
    return readings.stream().filter(each -> each.spoke() && each.change() == Change.OPEN).toList();
  }

  /**
   * The readings after the work that do not conform: what they are of is to be mended and read
   * again. While one of them was taken dead, nothing is powered.
   *
   * @return those readings, in the order of the job
   */
  public List<ReadTwice> outside() {
    return readings.stream().filter(ReadTwice::isOutside).toList();
  }

  /**
   * The tests that are still to be made.
   *
   * @return the open ones, in their order
   */
  public List<ReleaseTest> openTests() {
    return tests.stream().filter(ReleaseTest::isOpen).toList();
  }

  /**
   * The symptoms of the complaint that nobody has looked at after the work.
   *
   * @return their ids
   */
  public List<String> openSymptoms() {
    return symptoms.stream().filter(each -> each.left().isEmpty()).map(SeenTwice::symptom).toList();
  }

  /**
   * Whether anything after the work speaks of the complaint: a reading of what was mended or of
   * what spoke for it, a look at a symptom, a test that rules some out.
   *
   * @return false where that it is mended rests on a word alone
   */
  public boolean isShown() {
    return cure.filter(Cure::read).isPresent();
  }

  /**
   * Whether it may be said to be mended by what was read, seen and tested.
   *
   * @return false where that rests on a word, and where the cure comes to not mended; tests that
   *     nobody made do not count against it
   */
  public boolean isProven() {
    return isShown() && !cure.get().outcome().isNotMended();
  }

  /**
   * How much is still to be shown.
   *
   * @return the number of readings, looks and tests
   */
  public int open() {
    Set<String> read = new LinkedHashSet<>();
    release.forEach(each -> read.add(each.component() + "." + each.observable()));
    outside().forEach(each -> read.add(each.component() + "." + each.observable().id()));
    toRepeat().forEach(each -> read.add(each.component() + "." + each.observable().id()));
    int looks = openSymptoms().size() + words.size();
    for (ReleaseTest test : openTests()) {
      looks += test.isRead() ? 0 : 1;
      if (test.isRead()) {
        read.add(test.component() + "." + test.observable());
      }
    }
    return looks + read.size();
  }

  /**
   * Whether something has come out as it must not.
   *
   * @return true if a test is not met, a reading is not within its limits, or a symptom is there
   */
  public boolean isRefuted() {
    return tests.stream().anyMatch(each -> each.result() == ReleaseTest.Result.NOT_MET)
        || !outside().isEmpty()
        || symptoms.stream()
            .anyMatch(
                each -> each.left().filter(said -> said != SymptomReport.Answer.NO).isPresent());
  }

  /**
   * Whether what became of a reading speaks against a cure.
   *
   * @param change what became of it
   * @return true if it does not conform after the work
   */
  public static boolean refutes(Change change) {
    return REFUTES.contains(change);
  }

  private static final Set<Change> REFUTES =
      Set.of(Change.BETTER, Change.SAME, Change.WORSE, Change.BAD);

  /** The state of the diagnosis as found that the work was for; the likeliest if none. */
  static Optional<Diagnosis.RankedState> mended(Case machine) {
    Set<String> done = new LinkedHashSet<>();
    machine.job().progress().work().forEach(each -> each.remedy().ifPresent(done::add));
    List<Diagnosis.RankedState> states = machine.diagnosis().ranking();
    Optional<Diagnosis.RankedState> meant =
        states.stream()
            .filter(
                state ->
                    state.faults().stream()
                        .flatMap(present -> present.fault().remedies().stream())
                        .anyMatch(remedy -> done.contains(remedy.key())))
            .findFirst();
    return meant.or(() -> states.stream().findFirst());
  }
}
