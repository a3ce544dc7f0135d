package kelter.cli.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;
import kelter.cli.json.output.JsonResult;
import kelter.cli.json.output.MadeBy;
import kelter.core.file.job.JobDocument;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonPlaces;
import kelter.core.file.json.JsonText;
import kelter.core.problem.InputException;
import kelter.core.workshop.Workshop;

/**
 * Works on many jobs, several at once, and tells a result on a line for each, in their order. Only
 * a few jobs are held at a time, however many there are.
 */
public final class Batch {

  /** So many jobs for each thread are read ahead of the one that is told next. */
  private static final int AHEAD = 8;

  private static final String START = "a job is an object";

  private final Workshop workshop;
  private final Function<JobDocument, JsonResult> work;
  private final MadeBy by;

  /**
   * A batch.
   *
   * @param workshop reads the jobs
   * @param work makes the result of a job; asked by several threads at once
   * @param by who makes the results
   */
  public Batch(Workshop workshop, Function<JobDocument, JsonResult> work, MadeBy by) {
    this.workshop = workshop;
    this.work = work;
    this.by = by;
  }

  /**
   * Works on all jobs. A job that cannot be used has its mistakes in place of a result.
   *
   * @param jobs gives the jobs
   * @param threads how many are worked on at once
   * @param lines takes a line of JSON for each, with its line end
   * @return the worst exit code of a job; 0 if all went well
   * @throws IOException if the jobs cannot be read
   */
  public int run(BatchJob.Jobs jobs, int threads, Consumer<String> lines) throws IOException {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      Deque<Future<ResultLine>> open = new ArrayDeque<>();
      int worst = 0;
      for (BatchJob job = jobs.next(); job != null; job = jobs.next()) {
        BatchJob next = job;
        open.add(pool.submit(() -> line(next)));
        if (open.size() >= AHEAD * threads) {
          worst = Math.max(worst, told(open.remove(), lines));
        }
      }
      while (!open.isEmpty()) {
        worst = Math.max(worst, told(open.remove(), lines));
      }
      return worst;
    } finally {
      pool.shutdownNow();
    }
  }

  private static int told(Future<ResultLine> done, Consumer<String> lines) {
    try {
      ResultLine line = done.get();
      lines.accept(line.text());
      return line.code();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupted);
    } catch (ExecutionException failed) {
      throw new IllegalStateException(failed.getCause());
    }
  }

  private ResultLine line(BatchJob job) {
    return ResultLine.of(job.name(), by, () -> work.apply(read(job)));
  }

  private JobDocument read(BatchJob job) throws Exception {
    byte[] bytes = job.bytes().call();
    Json content = JsonText.read(bytes, job.name(), START);
    try {
      return workshop.read(content);
    } catch (InputException mistakes) {
      throw JsonPlaces.found(job.name(), new String(bytes, StandardCharsets.UTF_8), mistakes);
    }
  }
}
