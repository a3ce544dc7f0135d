package kelter.hydraulics.check;

import java.util.Optional;
import kelter.core.job.Component;
import kelter.core.vocabulary.Observable;
import kelter.hydraulics.part.DrainPumpKind;
import kelter.hydraulics.part.WashPumpKind;

/**
 * What is observed alike on a drain pump and on a wash pump.
 *
 * @param drain the word on a drain pump
 * @param wash the word on a wash pump
 */
record OnPump(Observable drain, Observable wash) {

  /** The word on a component, or empty if that is no such pump. */
  Optional<Observable> of(Component component) {
    return switch (component.kind()) {
      case DrainPumpKind.ID -> Optional.of(drain);
      case WashPumpKind.ID -> Optional.of(wash);
      default -> Optional.empty();
    };
  }
}
