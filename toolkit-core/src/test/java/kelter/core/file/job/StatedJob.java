package kelter.core.file.job;

import java.nio.file.Path;
import java.util.List;
import kelter.core.catalogue.Completion;
import kelter.core.job.Instrument;
import kelter.core.problem.InputException;
import kelter.core.vocabulary.Vocabulary;

/** Jobs as they stand in their text, without what a shop and the kind of a machine add. */
public final class StatedJob {

  private StatedJob() {}

  public static JobDocument read(Path path, Vocabulary vocabulary) {
    return read(path, vocabulary, List.of());
  }

  public static JobDocument read(Path path, Vocabulary vocabulary, List<Instrument> instruments) {
    try {
      return JobFile.document(JobFile.content(path), vocabulary, instruments, Completion.NONE);
    } catch (InputException mistakes) {
      throw JobFile.placed(path, mistakes);
    }
  }

  public static JobDocument parse(String text, Vocabulary vocabulary) {
    return parse(text, vocabulary, List.of());
  }

  public static JobDocument parse(
      String text, Vocabulary vocabulary, List<Instrument> instruments) {
    return JobFile.document(JobFile.content(text), vocabulary, instruments, Completion.NONE);
  }
}
