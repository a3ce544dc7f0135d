package kelter.cli.diagnosis;

import java.util.ArrayList;
import java.util.List;
import kelter.core.vocabulary.Statement;

/** What is told beside a diagnosis. */
public enum DiagnosisNote {
  /** How what the job says was taken. */
  AS_READ("job-as-read"),
  /** Nothing in the job tells that somebody complains. */
  COMPLAINT_ASSUMED("complaint-assumed"),
  /** Typical figures stand in. */
  STAND_INS("figures-stand-in"),
  /** What the job book taught. */
  FROM_BOOK("from-book"),
  /** What could not be assessed. */
  NOT_ASSESSED("not-assessed");

  private final String id;

  DiagnosisNote(String id) {
    this.id = id;
  }

  /**
   * The word for programs; it stays the same when the words change.
   *
   * @return lower-case letters and hyphens
   */
  public String id() {
    return id;
  }

  /**
   * A note.
   *
   * @param text a sentence
   * @return the note
   */
  public Statement of(String text) {
    return new Statement(id, text);
  }

  /**
   * Notes.
   *
   * @param texts a sentence each
   * @return a note for each
   */
  public List<Statement> each(List<String> texts) {
    List<Statement> notes = new ArrayList<>();
    for (String text : texts) {
      notes.add(of(text));
    }
    return notes;
  }
}
