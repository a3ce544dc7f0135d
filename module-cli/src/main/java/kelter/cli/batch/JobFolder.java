package kelter.cli.batch;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import kelter.core.file.disk.DiskFault;
import kelter.core.file.job.JobFile;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;

/** The files of a folder whose names end in .json, by name. */
public final class JobFolder implements BatchJob.Jobs {

  private final Iterator<Path> files;

  /**
   * The jobs of a folder.
   *
   * @param folder the folder; folders in it are passed over
   * @throws InputException if it cannot be read or has none
   */
  public JobFolder(Path folder) {
    List<Path> all = files(folder);
    if (all.isEmpty()) {
      throw new InputException(
          Mistake.FILE, folder.toString(), "holds no job", "jobs are files that end in .json");
    }
    files = all.iterator();
  }

  private static List<Path> files(Path folder) {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries
          .filter(each -> each.toString().endsWith(".json") && Files.isRegularFile(each))
          .sorted()
          .toList();
    } catch (IOException unreadable) {
      throw DiskFault.unreadable(folder.toString(), unreadable);
    }
  }

  @Override
  public BatchJob next() {
    return files.hasNext() ? job(files.next()) : null;
  }

  private static BatchJob job(Path file) {
    return new BatchJob(file.toString(), () -> bytes(file));
  }

  private static byte[] bytes(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(JobFile.MAX_BYTES + 1);
      if (bytes.length > JobFile.MAX_BYTES) {
        throw new InputException(
            Mistake.FILE,
            file.toString(),
            "is larger than %s MB".formatted(JobFile.MAX_BYTES / 1024 / 1024),
            "name a job file");
      }
      return bytes;
    } catch (IOException unreadable) {
      throw DiskFault.unreadable(file.toString(), unreadable);
    }
  }
}
