package kelter.core.module;

import java.util.List;
import java.util.Optional;
import kelter.core.job.Instrument;
import kelter.core.option.Weigher;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Symptom;

/**
 * What a module adds. Found by {@link java.util.ServiceLoader}.
 *
 * <p>A module must have a public constructor without parameters or a provider method, must be free
 * of memory between calls, safe for several threads, and must name the source of every figure. It
 * should answer every method in well under a millisecond. The contract test kit in {@code
 * kelter.testkit} holds any module against this.
 */
public interface CalculationModule {

  /**
   * Who it is.
   *
   * @return id, title and version
   */
  About about();

  /**
   * What it can compute by itself.
   *
   * @return calculations, each id once among all modules
   */
  default List<Calculation> calculations() {
    return List.of();
  }

  /**
   * The parts and circuits that it knows.
   *
   * @return the parts; another module may speak of the same kinds of components
   */
  default Parts parts() {
    return Parts.NONE;
  }

  /**
   * Symptoms that only its machines have, beside those of any machine.
   *
   * @return symptoms whose ids no other module uses; none by default
   */
  default List<Symptom> symptoms() {
    return List.of();
  }

  /**
   * What it may tell people to mind, at calculations, readings, findings and work, so that programs
   * know the ids beforehand.
   *
   * @return cautions whose ids no other module uses, each id once, beside {@link Caution#COMMON}; a
   *     text that takes figures has {@code %s} for each
   */
  default List<Caution> cautions() {
    return List.of();
  }

  /**
   * The instruments and ways of measuring of its trade that a job may name without describing them.
   *
   * @return instruments typical of their class, each with its source, each id once among all
   *     modules
   */
  default List<Instrument> instruments() {
    return List.of();
  }

  /**
   * How it weighs options, if it does.
   *
   * @return the weigher, or empty
   */
  default Optional<Weigher> weigher() {
    return Optional.empty();
  }
}
