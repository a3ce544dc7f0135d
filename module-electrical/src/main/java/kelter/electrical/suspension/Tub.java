package kelter.electrical.suspension;

import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;

/** What can hurt at a tub on springs. */
final class Tub {

  /** It hangs, and carries weights. */
  static final Caution HEAVY =
      new Caution(
          Signal.WARNING,
          "Crushing. Tub and weights are 20 kg and more on springs under tension: prop the tub and"
              + " keep fingers out before you unhook anything.");

  private Tub() {}
}
