package kelter.cli.batch;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import kelter.core.file.job.JobFile;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;

/** Jobs on lines of a stream; a blank line is passed over. */
public final class JobLines implements BatchJob.Jobs {

  private final InputStream in;
  private long number;

  /**
   * The jobs of a stream.
   *
   * @param in a job in JSON on each line, UTF-8
   */
  public JobLines(InputStream in) {
    this.in = new BufferedInputStream(in);
  }

  @Override
  public BatchJob next() throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    long length = 0;
    for (int sign = in.read(); sign >= 0 || length > 0; sign = in.read()) {
      if (sign >= 0 && sign != '\n') {
        length++;
        if (length <= JobFile.MAX_BYTES) {
          line.write(sign);
        }
      } else {
        number++;
        if (length > JobFile.MAX_BYTES) {
          return tooLong();
        }
        byte[] bytes = line.toByteArray();
        if (!new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1).isBlank()) {
          return new BatchJob("input line " + number, () -> bytes);
        }
        line.reset();
        length = 0;
        if (sign < 0) {
          return null;
        }
      }
    }
    return null;
  }

  private BatchJob tooLong() {
    String name = "input line " + number;
    return new BatchJob(
        name,
        () -> {
          throw new InputException(
              Mistake.FILE,
              name,
              "is longer than %s MB".formatted(JobFile.MAX_BYTES / 1024 / 1024),
              "write each job on a line of its own");
        });
  }
}
