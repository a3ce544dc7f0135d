package kelter.core.diagnosis.simulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Knowledge;
import kelter.core.job.Appliance;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;

/**
 * Tries the diagnosis on machines that are drawn by chance, whose faults are therefore known. The
 * owner of each is asked for the same symptoms, then everything is measured.
 *
 * <p>Where the machines are drawn by what the engine itself takes for granted, its probabilities
 * must hold within the error of sampling; where they are drawn by a model that differs from the one
 * that the engine is given, it shows how far the engine is misled.
 */
public final class Simulation {

  private static final int WORDS_OF_STATE = 4;

  private Simulation() {}

  /**
   * Draws, measures and diagnoses machines.
   *
   * @param appliance the kind of machine
   * @param told what the engine is told of it, without what brings what: machines are drawn without
   *     that
   * @param truth how the machines truly are: the same models, or others of the same faults, in the
   *     same order
   * @param settings of the engine
   * @param plan how much is tried, and by which chances
   * @param progress told the number of machines done, from any thread
   * @return what came out; the same plan gives the same, whatever the number of threads
   * @throws IllegalArgumentException if the two lists of models do not have the same faults,
   *     nothing can be read on such a machine, or its priors leave hardly a machine faulty
   */
  public static SimulationReport run(
      Appliance appliance,
      Knowledge told,
      List<FaultModel> truth,
      EngineSettings settings,
      SimulationPlan plan,
      IntConsumer progress) {
    Bench bench = new Bench(appliance, told, truth, settings, plan);
    List<Chance> generators = generators(plan.seed(), plan.jobs());
    AtomicInteger done = new AtomicInteger();
    List<Result> results =
        onThreads(
            plan.threads(),
            plan.jobs(),
            job -> {
              Result result = result(bench, generators.get(job), job < plan.ledJobs());
              progress.accept(done.incrementAndGet());
              return result;
            });
    return Tally.report(
        bench.asked(),
        bench.questions(),
        results.stream().map(Result::unmeasured).toList(),
        results.stream().map(Result::measured).toList(),
        results.stream().map(Result::walks).filter(walks -> !walks.isEmpty()).toList());
  }

  private record Result(Trial unmeasured, Trial measured, List<Walk> walks) {}

  /**
   * What decides of a job.
   *
   * @param machine of its machine and of what is read on it
   * @param owner of its symptoms and of what the owner answers
   */
  private record Chance(UniformRandomProvider machine, UniformRandomProvider owner) {}

  private static Result result(Bench bench, Chance chance, boolean led) {
    Bench.Case drawn = bench.draw(chance.machine(), chance.owner());
    List<Walk> walks = new ArrayList<>();
    if (led) {
      for (MeasuringOrder order : MeasuringOrder.values()) {
        walks.add(bench.walk(drawn, order, chance.machine()));
      }
    }
    return new Result(bench.unmeasured(drawn), bench.measured(drawn), walks);
  }

  /**
   * Two generators for each job, 2^128 steps apart from those of the next on one sequence
   * (XoShiRo256++), so that a job draws the same whichever thread takes it. Those of the owners are
   * 2^192 steps further, so that machines are the same whatever is asked. The first state is filled
   * by SplitMix64.
   */
  private static List<Chance> generators(long seed, int jobs) {
    SplitMix64 seeds = new SplitMix64(seed);
    long[] state = new long[WORDS_OF_STATE];
    Arrays.setAll(state, i -> seeds.nextLong());
    XoShiRo256PlusPlus machines = new XoShiRo256PlusPlus(state);
    XoShiRo256PlusPlus owners = new XoShiRo256PlusPlus(state);
    owners.longJump();
    List<Chance> generators = new ArrayList<>();
    for (int job = 0; job < jobs; job++) {
      generators.add(new Chance(machines.jump(), owners.jump()));
    }
    return generators;
  }

  /** A stream runs in the pool from which it is started, and keeps the order of the jobs. */
  private static <T> List<T> onThreads(int threads, int jobs, IntFunction<T> work) {
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      return pool.submit(() -> IntStream.range(0, jobs).parallel().mapToObj(work).toList()).join();
    } finally {
      pool.shutdownNow();
    }
  }
}
