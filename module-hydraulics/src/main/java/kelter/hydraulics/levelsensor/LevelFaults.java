package kelter.hydraulics.levelsensor;

import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;

/**
 * What can be wrong with the measuring of the level. At severity 1 a clogged trap passes 5 % of the
 * pressure; a leaking tube keeps 5 % of it while the water stands; a drifting sensor shows half as
 * much again, or half. That, the minutes and the chances of cure are judgement: common practice, no
 * source.
 */
final class LevelFaults {

  private static final Caution OVERFLOW =
      new Caution(
          Signal.CAUTION,
          "Flood. A machine that does not know its level can overfill: stay beside it for the first fill.");

  private static final Work CLEAN_TRAP =
      Work.byHand(
          "clean-trap",
          "clean the air trap and its passage, blow the tube out",
          25,
          0.9,
          Caution.UNPLUG,
          OVERFLOW);

  private static final Work RENEW_TUBE =
      Work.withPart(
          "renew-tube",
          "renew the tube and seat it on its nozzles",
          20,
          0.9,
          Caution.UNPLUG,
          OVERFLOW);

  private static final Work RENEW_SENSOR =
      Work.renewing("renew-sensor", "renew the level sensor", 25, 0.95, Caution.UNPLUG, OVERFLOW);

  /** The faults. */
  static final List<FaultRow> ALL =
      List.of(
          fault("trap-clogged", "air trap of the level sensor clogged", 0.04)
              .wears(Wear.DEPOSIT)
              .changes(
                  LevelFigure.PASSED.times(0.05),
                  LevelFigure.SHOWN.times(0.05),
                  LevelFigure.DEBRIS.plus(0.82))
              .curedBy(CLEAN_TRAP),
          fault("tube-leaks", "tube or trap of the level sensor leaks air", 0.04)
              .wears(Wear.RUBBER)
              .changes(
                  LevelFigure.PASSED.times(0.05),
                  LevelFigure.SHOWN.times(0.05),
                  LevelFigure.LEAK.plus(1))
              .curedBy(RENEW_TUBE),
          fault("drifts-high", "level sensor shows too much", 0.015)
              .wears(Wear.SENSOR)
              .changes(LevelFigure.SHOWN.times(1.5))
              .curedBy(RENEW_SENSOR),
          fault("drifts-low", "level sensor shows too little", 0.015)
              .wears(Wear.SENSOR)
              .apartFrom("drifts-high")
              .changes(LevelFigure.SHOWN.times(0.5))
              .curedBy(RENEW_SENSOR));

  private LevelFaults() {}
}
