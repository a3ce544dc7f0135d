package kelter.cli.program;

import java.nio.file.Path;
import java.util.List;
import kelter.core.catalogue.Completion;
import kelter.core.file.job.JobDocument;
import kelter.core.file.job.JobFile;
import kelter.core.file.json.Json;
import kelter.core.vocabulary.Vocabulary;

/** Jobs as they stand in their text, without what a shop and the kind of a machine add. */
public final class StatedJob {

  private StatedJob() {}

  public static JobDocument read(Path path, Vocabulary vocabulary) {
    return stated(JobFile.content(path), vocabulary);
  }

  public static JobDocument parse(String text, Vocabulary vocabulary) {
    return stated(JobFile.content(text), vocabulary);
  }

  private static JobDocument stated(Json content, Vocabulary vocabulary) {
    return JobFile.document(content, vocabulary, List.of(), Completion.NONE);
  }
}
