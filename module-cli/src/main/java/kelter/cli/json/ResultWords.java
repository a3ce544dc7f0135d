package kelter.cli.json;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import kelter.cli.diagnosis.DiagnosisNote;
import kelter.core.check.ToSettle;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Conclusion;
import kelter.core.diagnosis.simulation.MeasuringOrder;
import kelter.core.file.catalogue.LockOutFile;
import kelter.core.option.Weigher;
import kelter.core.proof.Change;
import kelter.core.proof.Cure;
import kelter.core.quote.Quote;
import kelter.core.quote.RepairForm;
import kelter.core.safety.LockState;
import kelter.core.safety.lockout.Ground;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.source.Standing;
import kelter.core.uncertainty.Shape;
import kelter.core.uncertainty.montecarlo.Validation;
import kelter.core.vocabulary.Likelihood;
import kelter.core.vocabulary.Statement;
import kelter.core.workshop.Workshop;

/**
 * The ids that results tell beside words, so that a program knows them beforehand.
 *
 * @param member the member of results that has the id
 * @param values each id with its words; those are empty, or begin only, where they depend on the
 *     job
 */
record ResultWords(String member, List<Statement> values) {

  /** All of them, but for cautions, rows of the lock-out table and the vocabulary of jobs. */
  static List<ResultWords> of(Workshop workshop) {
    List<ResultWords> all = new ArrayList<>();
    all.add(of("verdict-id", Verdict.values(), Verdict::id, Verdict::words));
    all.add(of("standing-id", Standing.values(), Standing::id, Standing::words));
    all.add(of("likelihood-id", Likelihood.values(), Likelihood::id, Likelihood::words));
    all.add(
        of(
            "reason-id",
            Conclusion.Reason.values(),
            Conclusion.Reason::id,
            Conclusion.Reason::words));
    all.add(of("action-id", Conclusion.Advice.values(), Conclusion.Advice::id, none -> ""));
    all.add(of("why-id", Conclusion.Advice.values(), Conclusion.Advice::id, none -> ""));
    all.add(of("to-settle", ToSettle.values(), ToSettle::id, none -> ""));
    all.add(of("notes", DiagnosisNote.values(), DiagnosisNote::id, none -> ""));
    all.add(of("state-id", LockState.values(), LockState::id, LockState::word));
    all.add(of("because", Ground.Sort.values(), Ground.Sort::id, none -> ""));
    all.add(
        new ResultWords(
            "rows",
            LockOutFile.shipped().rows().stream()
                .map(row -> new Statement(row.id(), row.text().usual()))
                .toList()));
    all.add(
        new ResultWords(
            "tests",
            LockOutFile.shipped().backToPower().stream()
                .map(step -> new Statement(step.id(), step.title()))
                .toList()));
    all.add(of("words-id", Cure.Outcome.values(), Cure.Outcome::id, Cure.Outcome::words));
    all.add(of("change", Change.values(), Change::id, Change::words));
    all.add(
        of(
            "result",
            ReleaseTest.Result.values(),
            ReleaseTest.Result::id,
            ReleaseTest.Result::words));
    all.add(new ResultWords("terms", Quote.vocabulary()));
    all.add(new ResultWords("missing-id", RepairForm.vocabulary()));
    all.add(
        new ResultWords("weighing", workshop.weigher().map(Weigher::statements).orElse(List.of())));
    all.add(of("order-id", MeasuringOrder.values(), MeasuringOrder::id, MeasuringOrder::words));
    all.add(of("distribution-id", Shape.values(), Shape::id, Shape::words));
    all.add(
        of(
            "to-one-digit-id",
            Validation.Answer.values(),
            Validation.Answer::id,
            Validation.Answer::words));
    all.add(
        of(
            "to-two-digits-id",
            Validation.Answer.values(),
            Validation.Answer::id,
            Validation.Answer::words));
    return all;
  }

  private static <T> ResultWords of(
      String member, T[] values, Function<T, String> id, Function<T, String> words) {
    return new ResultWords(
        member,
        Stream.of(values).map(each -> new Statement(id.apply(each), words.apply(each))).toList());
  }
}
