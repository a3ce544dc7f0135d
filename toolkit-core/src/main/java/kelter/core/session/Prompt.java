package kelter.core.session;

import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Question;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Symptom;

/** What a session asks. */
public sealed interface Prompt {

  /** Which kind of machine it is. */
  record KindOfMachine() implements Prompt {}

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
   * Nothing more: another question or reading would not change what is done.
   *
   * @param first the work to do first, if any is worth it
   */
  record Enough(Optional<Diagnosis.PlanStep> first) implements Prompt {}
}
