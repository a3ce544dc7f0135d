package kelter.core.safety.lockout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import kelter.core.safety.lockout.table.Retest;
import kelter.core.safety.lockout.table.SafetyStep;

/**
 * The steps around power that a machine needs, in order.
 *
 * @param id the word for the step
 * @param title what it is about in a few words, for an owner; may be empty
 * @param text what to do, for a person
 * @param read what is read at this step and held against its limit; none where one only looks
 * @param rulesOut ids of symptoms that the machine does not have where the step holds
 * @param powered whether the machine is under power meanwhile
 */
public record StepsFor(
    String id,
    String title,
    String text,
    List<Retest> read,
    List<String> rulesOut,
    boolean powered) {

  /** Copies the lists. */
  public StepsFor {
    read = List.copyOf(read);
    rulesOut = List.copyOf(rulesOut);
  }

  /**
   * The steps of a machine.
   *
   * @param steps all steps
   * @param situation the job
   * @param rows the ids of the rows that hold
   * @return those that the machine needs, with its figures, in its market's words
   */
  public static List<StepsFor> of(List<SafetyStep> steps, Situation situation, Set<String> rows) {
    List<SafetyStep> needed = new ArrayList<>();
    for (SafetyStep step : steps) {
      if (isNeeded(step, situation, rows)) {
        needed.add(step);
      }
    }
    needed.sort(Comparator.comparingInt(SafetyStep::order));
    MachineFigures figures = new MachineFigures(situation);
    return needed.stream()
        .map(
            step ->
                new StepsFor(
                    step.id(),
                    step.title(),
                    figures.fill(step.text().in(situation.market())),
                    step.read(),
                    step.rulesOut(),
                    step.powered()))
        .toList();
  }

  private static boolean isNeeded(SafetyStep step, Situation situation, Set<String> rows) {
    boolean supply = step.fixed().isEmpty() || step.fixed().get() == situation.isFixed();
    boolean kind = step.kinds().isEmpty() || situation.isNamed(step.kinds());
    boolean part = step.parts().isEmpty() || !situation.parts(step.parts()).isEmpty();
    boolean row = step.rows().isEmpty() || step.rows().stream().anyMatch(rows::contains);
    return supply && kind && part && row;
  }
}
