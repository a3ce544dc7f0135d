package kelter.core.session;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.proof.Proof;
import kelter.core.proof.ReadTwice;
import kelter.core.safety.Caution;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.vocabulary.Symptom;

/** What a session asks. */
public sealed interface Prompt {

  /**
   * Which kind of machine it is.
   *
   * @param likely the id of the one that was asked for by name, to which a yes is an answer
   */
  record KindOfMachine(Optional<String> likely) implements Prompt {}

  /** How old the machine is. */
  record Age() implements Prompt {}

  /** What the owner says, word for word. */
  record Said() implements Prompt {}

  /**
   * That a caution which changes what may be done was read.
   *
   * @param caution the caution
   */
  record Heed(Caution caution) implements Prompt {}

  /**
   * Whether the machine has a symptom.
   *
   * @param symptom the symptom
   */
  record Ask(Symptom symptom) implements Prompt {}

  /**
   * A reading.
   *
   * @param question what is read
   * @param minutes how long it takes, in min
   * @param why why it is taken again; empty for a new one
   */
  record Measure(Question question, double minutes, String why) implements Prompt {}

  /**
   * Up to what the tester reads that showed a value over its range, which would decide it.
   *
   * @param question what was read
   * @param told what was typed for it, such as {@code OL at 45 °C}
   */
  record RangeEnd(Question question, String told) implements Prompt {}

  /**
   * What was done.
   *
   * @param likely the work that the diagnosis puts first, at most three
   */
  record Work(List<Remedy> likely) implements Prompt {

    /** Copies the list. */
    public Work {
      likely = List.copyOf(likely);
    }
  }

  /**
   * Whether a test without a figure came out as it must.
   *
   * @param test the test
   */
  record Look(ReleaseTest test) implements Prompt {}

  /**
   * Nothing more before something is mended: a test did not come out as it must.
   *
   * @param test the test
   */
  record Failed(ReleaseTest test) implements Prompt {}

  /**
   * Nothing more before something is mended: what was read dead after the work does not conform.
   *
   * @param read what it is, as found and as left
   * @param question what is read again, under the same conditions
   */
  record Outside(ReadTwice read, Question question) implements Prompt {}

  /**
   * Nothing more: all that can be shown was shown.
   *
   * @param proof what it came to
   */
  record Shown(Proof proof) implements Prompt {}

  /**
   * Nothing more: another question or reading would not change what is done.
   *
   * @param first the work to do first, if any is worth it
   */
  record Enough(Optional<Diagnosis.PlanStep> first) implements Prompt {}
}
