package kelter.electrical.component;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;

/** Parts that switch. */
public final class ControlKinds {

  /** Resistance of a closed switch. */
  public static final Observable CLOSED_RESISTANCE =
      Observable.logarithmic(
          "closed-resistance",
          "resistance across it with the door closed",
          QuantityKind.RESISTANCE,
          Electrical.RESISTANCE,
          List.of(),
          Electrical.dead(
              "Take one wire off, close the door and measure across the switch, leads nulled.",
              4,
              Electrical.OHMMETER));

  /** Whether the machine starts. */
  public static final Observable DOES_NOT_START =
      Observable.yesNo(
          "does-not-start",
          "it does not start although the door is closed",
          Electrical.look("Ask, or close the door and start a programme.", 2));

  /** A door switch. */
  public static final ComponentKind DOOR_SWITCH =
      new ComponentKind(
          "door-switch",
          "door switch",
          List.of(CLOSED_RESISTANCE, DOES_NOT_START),
          List.of(),
          List.of());

  static final List<ComponentKind> ALL = List.of(DOOR_SWITCH);

  private ControlKinds() {}
}
