package kelter.core.diagnosis.engine;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Question;

/** What may be proposed, once the chances of all faults are known. */
public interface Permit {

  /** Whatever the settings allow. */
  Permit ALL =
      faults ->
          new Granted() {
            @Override
            public boolean measures(Question question) {
              return true;
            }

            @Override
            public boolean goesFirst(Question question) {
              return false;
            }

            @Override
            public boolean mends(String component) {
              return true;
            }

            @Override
            public boolean staysUnplugged() {
              return false;
            }
          };

  /**
   * What may be proposed.
   *
   * @param faults every fault by its own probability
   * @return what is granted
   */
  Granted after(List<Diagnosis.FaultProbability> faults);

  /** What is granted. */
  interface Granted {

    /**
     * Whether a measurement may be proposed.
     *
     * @param question what is measured
     * @return false if it may not
     */
    boolean measures(Question question);

    /**
     * Whether a measurement goes before all others.
     *
     * @param question what is measured
     * @return true if others wait for it
     */
    boolean goesFirst(Question question);

    /**
     * Whether not enough is known before a measurement was made: it comes after those that go
     * first, and before the rest.
     *
     * @param question what is measured
     * @return true if it is needed whatever it is worth
     */
    default boolean isNeeded(Question question) {
      return false;
    }

    /**
     * What has to be read before a measurement that is held back may be made.
     *
     * @param question a measurement that may not be proposed
     * @return the reading that lets it be made; empty where none does
     */
    default Optional<Question> before(Question question) {
      return Optional.empty();
    }

    /**
     * Whether work on a component may be proposed.
     *
     * @param component its id
     * @return false if it may not
     */
    boolean mends(String component);

    /**
     * Whether the machine must not be powered before something is mended.
     *
     * @return true if leaving it as it is is no choice
     */
    boolean staysUnplugged();
  }
}
