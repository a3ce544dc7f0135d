package kelter.cli.plugin;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Job;
import kelter.core.option.CarbonBalance;
import kelter.core.option.Explained;
import kelter.core.option.LearnedLives;
import kelter.core.option.Weigher;
import kelter.core.option.Weighing;
import kelter.core.vocabulary.Statement;

/** The weigher of a plugin; once it failed, the next module that weighs takes its place. */
record GuardedWeigher(Guard guard, Weigher weigher, AtomicBoolean failed) implements Weigher {

  @Override
  public Weighing weigh(Job job, Diagnosis diagnosis, long seed) {
    return asked("weigher, weigh()", () -> weigher.weigh(job, diagnosis, seed));
  }

  @Override
  public Explained weighAndExplain(Job job, Diagnosis diagnosis, long seed) {
    return asked("weigher, weighAndExplain()", () -> weigher.weighAndExplain(job, diagnosis, seed));
  }

  @Override
  public Optional<CarbonBalance> carbon(Job job, Diagnosis diagnosis) {
    return asked("weigher, carbon()", () -> weigher.carbon(job, diagnosis));
  }

  @Override
  public List<Statement> statements() {
    return asked("weigher, statements()", weigher::statements);
  }

  @Override
  public Weigher learning(LearnedLives lives) {
    return new GuardedWeigher(
        guard, asked("weigher, learning()", () -> weigher.learning(lives)), failed);
  }

  private <T> T asked(String call, Supplier<T> answer) {
    try {
      return guard.askOfJob(call, answer);
    } catch (Guard.Failed wrong) {
      failed.set(true);
      throw guard.fault(wrong, true);
    }
  }
}
