package kelter.core.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.catalogue.Kind;
import kelter.core.job.Component;
import kelter.core.job.work.Closing;
import kelter.core.job.work.Outcome;
import kelter.core.proof.Proof;
import kelter.core.proof.ReadTwice;
import kelter.core.safety.LockState;
import kelter.core.safety.lockout.ActiveRow;
import kelter.core.safety.lockout.LockOut;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.workshop.Case;

/**
 * Whether the owner may use the machine: what speaks against it, and else whose word it is. What
 * holds for every machine of a kind is no reason against this one.
 */
public final class MayUse {

  private static final Set<Outcome> FAULT_STAYS = Set.of(Outcome.NOT_CURED, Outcome.STOPPED);

  private final LockOut lockOut;
  private final Proof proof;
  private final Optional<Closing> closing;
  private final boolean plug;

  MayUse(Case machine, Proof proof) {
    this.plug = machine.kind().filter(Kind::fixed).isEmpty();
    this.lockOut = machine.lockOut();
    this.proof = proof;
    this.closing = machine.job().progress().closing();
  }

  /**
   * What was found on this machine and locks it out.
   *
   * @param lockOut what may be proposed on the machine
   * @return the text of the strictest row that something found makes hold; empty if none does
   */
  public static Optional<String> danger(LockOut lockOut) {
    return lockOut.rows().stream()
        .filter(row -> !row.quiet() && !isOfKind(row))
        .map(ActiveRow::text)
        .findFirst();
  }

  /**
   * What holds for every machine of its kind and is for the owner to keep to, each text once: what
   * he must leave to others. How the others make it safe to work on is not for him.
   */
  static List<String> ofKind(LockOut lockOut) {
    Set<String> texts = new LinkedHashSet<>();
    lockOut.rows().stream()
        .filter(row -> !row.quiet() && isOfKind(row) && row.row().state() == LockState.D)
        .forEach(row -> texts.add(row.text()));
    return List.copyOf(texts);
  }

  /** A kind may be told by a word as well: somebody says that the machine has no plug. */
  private static boolean isOfKind(ActiveRow row) {
    return row.standing() || !row.row().when().kinds().isEmpty();
  }

  Point point(boolean names) {
    List<String> against = against();
    if (against.isEmpty()) {
      return Point.of("May I use it?", word(names));
    }
    against.add(outOfUse());
    return new Point("May I use it?", against, true);
  }

  /** Whether something speaks against using the machine. */
  boolean isBarred() {
    return !against().isEmpty();
  }

  /** What an owner has to keep to whose machine must not be used. */
  String outOfUse() {
    return plug
        ? "Do not use it; leave it unplugged until it is mended."
        : "Do not use it; leave its circuit switched off at the board until it is mended.";
  }

  private List<String> against() {
    List<String> against = new ArrayList<>();
    Optional<String> danger = danger(lockOut);
    Optional<String> ended = ended().filter(words -> danger.isPresent());
    ended.ifPresent(words -> against.add("No, not as it is: " + words + ". " + danger.get()));
    danger
        .filter(text -> ended.isEmpty())
        .ifPresent(text -> against.add("No, not as it is. " + text));
    if (danger.isEmpty() && isStopped()) {
      against.add("No, not as it is: " + ended().orElseThrow() + ".");
    }
    List<String> failed =
        proof.tests().stream()
            .filter(test -> test.result() == ReleaseTest.Result.NOT_MET)
            .map(test -> lower(test.title()))
            .distinct()
            .toList();
    if (!failed.isEmpty()) {
      against.add("No, not as it is. Not as it must be: " + String.join(", ", failed) + ".");
    }
    List<String> outside =
        proof.outside().stream()
            .filter(ReadTwice::isDead)
            .map(each -> Component.words(each.component()) + ": " + each.observable().title())
            .distinct()
            .toList();
    if (!outside.isEmpty()) {
      against.add(
          "No, not as it is. Read after the work and not within its limits: "
              + String.join("; ", outside)
              + ".");
    }
    return against;
  }

  private Optional<String> ended() {
    return closing
        .map(Closing::outcome)
        .filter(FAULT_STAYS::contains)
        .map(outcome -> "the job ended as " + outcome.words());
  }

  private boolean isStopped() {
    return closing.filter(each -> each.outcome() == Outcome.STOPPED).isPresent();
  }

  private List<String> word(boolean names) {
    List<String> answers = new ArrayList<>();
    ended().ifPresent(words -> answers.add(sentence(words) + "."));
    String who =
        closing
            .map(Closing::by)
            .filter(name -> names && !name.isBlank())
            .orElse("the person who did the work");
    answers.add("That is for " + who + " to say, here, by name and signature:");
    return answers;
  }

  private static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static String lower(String words) {
    return words.isEmpty() ? words : Character.toLowerCase(words.charAt(0)) + words.substring(1);
  }
}
