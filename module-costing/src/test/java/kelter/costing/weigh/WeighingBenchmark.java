package kelter.costing.weigh;

import java.util.ArrayList;
import java.util.Arrays;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Job;

/** How long weighing takes. No test: run its main method by itself on a quiet machine. */
public final class WeighingBenchmark {

  private static final int DRAWS = 100_000;
  private static final int ROUNDS = 40;

  private WeighingBenchmark() {}

  /**
   * Times weighing and explaining, warm.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    Job job = Cases.washer(8, Cases.prices(12, 150, 800, 3));
    Diagnosis diagnosis = Cases.diagnosis(0.6, 0.25, 0.05, 0.02);
    LifecycleWeigher weigher = new LifecycleWeigher(DRAWS);
    int options = Comparison.of(job, diagnosis, new ArrayList<>()).weighed().size();
    long first = System.nanoTime();
    new LifecycleWeigher().weigh(job, diagnosis, 0);
    double cold = (System.nanoTime() - first) / 1e6;
    double weighing = least(() -> weigher.weigh(job, diagnosis, 1));
    double reasons = least(() -> new LifecycleWeigher().explain(job, diagnosis, 1));
    System.out.printf(
        "%d draws, %d options: %.0f ms warm; %d draws cold: %.0f ms; reasons: %.0f ms warm%n",
        DRAWS, options, weighing, LifecycleWeigher.DRAWS, cold, reasons);
  }

  /** The least of the rounds: what the work takes when nothing disturbs it. */
  private static double least(Runnable work) {
    double[] times = new double[ROUNDS];
    for (int i = 0; i < ROUNDS; i++) {
      long start = System.nanoTime();
      work.run();
      times[i] = (System.nanoTime() - start) / 1e6;
    }
    Arrays.sort(times);
    return times[0];
  }
}
