package kelter.hydraulics.leak;

import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.Effect;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.Look;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;

/**
 * How a leak is hunted: tracks that dried, and dry paper after a run. From which leak on people see
 * it is common practice, no source.
 *
 * @param tracks what dried water has left at the part
 * @param wet whether paper laid there dry is wet after a run
 */
public record LeakHunt(Observable tracks, Observable wet) {

  /** What faults change. */
  public static final class Leak {
    public static final FigureSet ALL = new FigureSet("leak-hunt");
    public static final Figure TRACKS =
        ALL.figure("tracks of dried water, place on the scale from none to plain", 0.1);
    public static final Figure SEEPS = ALL.figure("how much of it seeps, 0 to 1", 0);

    private Leak() {}
  }

  /**
   * The hunt at one part.
   *
   * @param where where to look, ending without a full stop, such as "hose and clips"
   * @param opened how the part is reached with the plug out
   * @return the hunt
   */
  public static LeakHunt at(String where, Procedure opened) {
    return new LeakHunt(
        Observable.named("tracks", "tracks of dried water")
            .graded("none", "some", "plain")
            .how("Look at " + where + " for lime, rust, detergent or coffee that dried there.")
            .by(opened),
        Observable.named("paper-wet", "dry paper gets wet")
            .how(
                "Wipe it dry and lay paper at "
                    + where
                    + ". Close the machine, let it fill and run for five minutes, plug out, look which"
                    + " paper got wet first.")
            .by(Procedure.running(8, Procedure.BY_EYE, Caution.UNPLUG, Caution.HOT_WATER)));
  }

  /**
   * What a leak changes.
   *
   * @return the effects
   */
  public static Effect[] effects() {
    return new Effect[] {
      Leak.TRACKS.plus(Course.early(0, 0.8)), Leak.SEEPS.becomes(Course.early(0, 1))
    };
  }

  /**
   * Adds what is seen to a model whose component has the figures of a leak.
   *
   * @param model the model
   * @return the model
   */
  public PartModel seen(PartModel model) {
    return model.looks(tracks, Leak.TRACKS).looks(wet, new Look.Noticed(Leak.SEEPS, 0.2, 0.06));
  }
}
