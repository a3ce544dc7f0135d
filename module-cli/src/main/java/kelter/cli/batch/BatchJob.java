package kelter.cli.batch;

import java.io.IOException;
import java.util.concurrent.Callable;

/**
 * A job of many that has not been read.
 *
 * @param name what it is called where a mistake in it is told
 * @param bytes gives its text
 */
public record BatchJob(String name, Callable<byte[]> bytes) {

  /** Gives the jobs of a batch one by one. */
  @FunctionalInterface
  public interface Jobs {
    /**
     * The next job.
     *
     * @return the job, or null if there is none left
     * @throws IOException if where they come from cannot be read
     */
    BatchJob next() throws IOException;
  }
}
