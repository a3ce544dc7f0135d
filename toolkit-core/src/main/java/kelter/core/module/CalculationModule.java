package kelter.core.module;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.diagnosis.FaultModel;
import kelter.core.job.Appliance;
import kelter.core.job.Instrument;
import kelter.core.option.Weigher;
import kelter.core.vocabulary.ComponentKind;

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
   * The kinds of components of which it speaks, with what can be observed on them.
   *
   * @return kinds of components; another module may speak of the same kind
   */
  default List<ComponentKind> componentKinds() {
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
   * What it can hold against limits.
   *
   * @return checks, each id once among all modules
   */
  default List<Check> checks() {
    return List.of();
  }

  /**
   * Which faults it knows on an appliance, and how they would show.
   *
   * @param appliance the machine
   * @return the models that apply; empty where the machine lacks the parts or the figures
   */
  default List<FaultModel> faultModels(Appliance appliance) {
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
