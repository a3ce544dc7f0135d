package kelter.hydraulics.fault.level;

import java.util.List;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.source.Source;
import kelter.hydraulics.fault.Ageing;

/**
 * What can be wrong with the measuring of the level. The severity of each runs from 0 to 1; what a
 * severity means in figures stands with {@link LevelModel}.
 */
enum LevelFault {
  /** The trap or its passage is clogged. */
  TRAP_CLOGGED("trap-clogged", "air trap of the level sensor clogged", 0.04, Ageing.DEPOSIT),
  /** Tube, trap or sensor lose air. */
  TUBE_LEAKS("tube-leaks", "tube or trap of the level sensor leaks air", 0.04, Ageing.RUBBER),
  /** The sensor shows more than there is. */
  DRIFTS_HIGH("drifts-high", "level sensor shows too much", 0.015, Ageing.SENSOR),
  /** The sensor shows less than there is. */
  DRIFTS_LOW("drifts-low", "level sensor shows too little", 0.015, Ageing.SENSOR);

  private static final Source PRIOR =
      Source.fromMemory(
          "how often each cause is met on machines with a complaint; an order of magnitude, to be"
              + " replaced by the job book");

  private final String id;
  private final String title;
  private final double prior;
  private final Ageing ageing;

  LevelFault(String id, String title, double prior, Ageing ageing) {
    this.id = id;
    this.title = title;
    this.prior = prior;
    this.ageing = ageing;
  }

  /**
   * The fault on a component.
   *
   * @param component the id of the level sensor
   * @return the fault
   */
  Fault on(String component) {
    return ageing.of(
        new Fault(id, component, title, prior, PRIOR, remedies(new LevelRemedies(component))));
  }

  private List<Remedy> remedies(LevelRemedies remedies) {
    return switch (this) {
      case TRAP_CLOGGED -> List.of(remedies.cleanTrap());
      case TUBE_LEAKS -> List.of(remedies.renewTube());
      case DRIFTS_HIGH, DRIFTS_LOW -> List.of(remedies.renewSensor());
    };
  }

  /** Whether the fault at a place is a drift of the sensor. */
  static boolean isDrift(int place) {
    return place == DRIFTS_HIGH.ordinal() || place == DRIFTS_LOW.ordinal();
  }

  /**
   * The severity of this fault in a state.
   *
   * @param severities all severities, in the order of the faults
   * @return from 0 to 1
   */
  double in(double[] severities) {
    return severities[ordinal()];
  }
}
