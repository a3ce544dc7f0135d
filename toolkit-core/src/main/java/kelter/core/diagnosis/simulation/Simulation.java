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
import kelter.core.job.Appliance;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;

/**
 * Tries the diagnosis on machines that are drawn by chance, whose faults are therefore known.
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
   * @param models what the engine is told of it
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
      List<FaultModel> models,
      List<FaultModel> truth,
      EngineSettings settings,
      SimulationPlan plan,
      IntConsumer progress) {
    Bench bench = new Bench(appliance, models, truth, settings, plan.world());
    List<UniformRandomProvider> generators = generators(plan.seed(), plan.jobs());
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
        bench.questions(),
        results.stream().map(Result::trial).toList(),
        results.stream().map(Result::walks).filter(walks -> !walks.isEmpty()).toList());
  }

  private record Result(Trial trial, List<Walk> walks) {}

  private static Result result(Bench bench, UniformRandomProvider random, boolean led) {
    Bench.Case drawn = bench.draw(random);
    List<Walk> walks = new ArrayList<>();
    if (led) {
      for (MeasuringOrder order : MeasuringOrder.values()) {
        walks.add(bench.walk(drawn, order, random));
      }
    }
    return new Result(bench.all(drawn), walks);
  }

  /**
   * One generator for each job, 2^128 steps apart on one sequence (XoShiRo256++), so that a job
   * draws the same whichever thread takes it. The first state is filled by SplitMix64.
   */
  private static List<UniformRandomProvider> generators(long seed, int jobs) {
    SplitMix64 seeds = new SplitMix64(seed);
    long[] state = new long[WORDS_OF_STATE];
    Arrays.setAll(state, i -> seeds.nextLong());
    XoShiRo256PlusPlus sequence = new XoShiRo256PlusPlus(state);
    List<UniformRandomProvider> generators = new ArrayList<>();
    for (int job = 0; job < jobs; job++) {
      generators.add(sequence.jump());
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
