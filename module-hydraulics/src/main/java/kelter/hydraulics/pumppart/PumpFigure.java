package kelter.hydraulics.pumppart;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;

/** What faults can change of a pump with its motor. */
public final class PumpFigure {

  public static final FigureSet ALL = new FigureSet("pump");
  public static final Figure STRENGTH =
      ALL.figure(
          "its head at no flow by that of its kind: the strength of this very pump; ratio", 1);
  public static final Figure OPEN_PASSAGES =
      ALL.figure("the share of its vane passages that is open, ratio", 1);
  public static final Figure HEAD =
      ALL.figure("its head by that with all vanes at work and no air in the water, ratio", 1);
  public static final Figure HEAD_OPEN =
      ALL.figure("how far its head may differ, standard deviation in the ratio of the head", 0);
  public static final Figure DENSITY =
      ALL.figure("the density of what it moves by that of water without air, ratio", 1);
  public static final Figure SLIP =
      ALL.figure("the share of the speed that is lost between shaft and impeller, ratio", 0);
  public static final Figure LEAK =
      ALL.figure("the flow that runs back inside at the rated head, by the rated flow, ratio", 0);
  public static final Figure DRAG =
      ALL.figure("the torque of bearings, seals and rubbing by the rated torque, ratio", 0);
  public static final Figure SPEED =
      ALL.figure("the speed that the motor has without a load by what it should be, ratio", 1);
  public static final Figure OPEN_WINDING =
      ALL.figure("whether no current can flow, since the winding is open: 1, else 0", 0);
  public static final Figure NO_VOLTAGE =
      ALL.figure("whether no current can flow, since there is no voltage: 1, else 0", 0);
  public static final Figure LOUDNESS =
      ALL.figure("how much louder it is than usual, on the scale of PumpNoise", 0);
  public static final Figure DEBRIS =
      ALL.figure("debris in it, place on a scale from 0 to 1; judgement", 0.1);
  public static final Figure STIFFNESS =
      ALL.figure("how hard it is to turn by hand, place on a scale from 0 to 1; judgement", 0.1);

  private PumpFigure() {}
}
