package kelter.core.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.job.work.Outcome;
import kelter.core.proof.Cure;
import kelter.core.proof.Proof;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.workshop.Case;

/** Whether the work worked, and what nobody has read or looked at. */
final class Unsettled {

  private static final double WORTH_TELLING = 0.05;
  private static final double LIKELIER = 0.5;
  private static final String ON_WORD = "that it is mended is the word of whoever closed the job.";

  private final Case machine;
  private final Proof proof;
  private final boolean saidMended;
  private final boolean saidSound;

  private Unsettled(Case machine, Proof proof) {
    this.machine = machine;
    this.proof = proof;
    this.saidMended = isEnded(Outcome.CURED);
    this.saidSound = isEnded(Outcome.NOTHING_WRONG);
  }

  private boolean isEnded(Outcome outcome) {
    return machine.job().progress().closing().filter(each -> each.outcome() == outcome).isPresent();
  }

  static Point of(Case machine, Proof proof) {
    return Point.of(
        "Did it work, and what is still open?", new Unsettled(machine, proof).answers());
  }

  private List<String> answers() {
    List<String> answers = new ArrayList<>(mended());
    for (String symptom : proof.openSymptoms()) {
      answers.add(
          "Nobody has looked after the work whether it still "
              + machine.vocabulary().symptom(symptom).orElseThrow().title()
              + ".");
    }
    long tests =
        proof.openTests().stream()
            .filter(each -> each.result() == ReleaseTest.Result.NOT_MEASURED)
            .map(ReleaseTest::title)
            .filter(title -> !title.isEmpty())
            .distinct()
            .count();
    if (tests > 0) {
      answers.add(
          "Not measured or looked at: "
              + tests
              + (tests == 1 ? " test" : " of the tests")
              + " after the work.");
    }
    return answers;
  }

  private List<String> mended() {
    Optional<Cure> read = proof.cure().filter(Cure::read);
    if (read.isPresent()) {
      return read(read.get());
    }
    List<String> answers = new ArrayList<>();
    if (saidMended) {
      answers.add(
          (isTested()
                  ? "Nobody has read or seen after the work that the fault is gone: "
                  : "Nobody has measured or looked after the work: ")
              + ON_WORD);
    } else if (proof.cure().isEmpty() && saidSound) {
      answers.add("It was found in order. If it does it again, call and say what you were doing.");
    } else if (proof.cure().isEmpty()) {
      answers.add(
          machine.diagnosis().isNothingWrong()
              ? "Nothing was mended, since nothing wrong was found."
              : "Nothing was mended, so what was wrong is wrong still.");
    } else {
      answers.add(proof.cure().get().words() + ".");
    }
    proof
        .cure()
        .ifPresent(
            cure -> {
              answers.add(
                  "Such work mends it in %s of 100 such cases."
                      .formatted(inHundred(cure.chance())));
              answers.addAll(still(cure));
            });
    return answers;
  }

  private boolean isTested() {
    return proof.tests().stream()
        .anyMatch(
            test ->
                test.result() != ReleaseTest.Result.NOT_MEASURED
                    && test.result() != ReleaseTest.Result.NOT_APPLICABLE);
  }

  private List<String> read(Cure cure) {
    List<String> answers = new ArrayList<>();
    answers.add(
        cure.tellsChance()
            ? "%s: in %s of 100 such cases the cause is gone."
                .formatted(cure.words(), inHundred(cure.chance()))
            : cure.words() + ".");
    if (saidMended && (cure.chance() < LIKELIER || !cure.tellsChance())) {
      answers.add("What was read after the work does not show it: " + ON_WORD);
    }
    answers.addAll(still(cure));
    return answers;
  }

  private static List<String> still(Cure cure) {
    return cure.still().stream()
        .map(Cure.Still::fault)
        .filter(fault -> fault.probability() >= WORTH_TELLING)
        .map(
            fault ->
                "It may also have this (%s in 100): %s."
                    .formatted(
                        inHundred(fault.probability()), OwnersTitle.of(fault.fault().title())))
        .toList();
  }

  static String inHundred(double probability) {
    long whole = Math.round(100 * probability);
    return whole > 99 ? "more than 99" : whole < 1 ? "fewer than 1" : "about " + whole;
  }
}
