package kelter.core.safety.lockout;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.job.Measurement;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.safety.lockout.table.LockOutRow;
import kelter.core.safety.lockout.table.Told;
import kelter.core.safety.lockout.table.When;
import kelter.core.vocabulary.Symptom;

/**
 * What makes a row hold.
 *
 * @param measurements the readings beyond a limit
 * @param symptoms the ids of symptoms that are reported
 * @param because what makes it hold
 * @param ask the ids of symptoms to ask for once
 * @param holds whether anything does
 * @param standing whether only the kind of machine does
 */
record Trigger(
    List<Measurement> measurements,
    Set<String> symptoms,
    List<Ground> because,
    Set<String> ask,
    boolean holds,
    boolean standing) {

  private static final Trigger NONE =
      new Trigger(List.of(), Set.of(), List.of(), Set.of(), false, false);

  /**
   * What makes a row hold.
   *
   * @param said the words of each clause of what was said of the machine
   */
  static Trigger of(LockOutRow row, Situation situation, List<List<String>> said) {
    When when = row.when();
    if (when.fixed().isPresent() && when.fixed().get() != situation.isFixed()) {
      return NONE;
    }
    List<Measurement> beyond = beyond(when, situation);
    Set<String> reported = new LinkedHashSet<>();
    Set<String> ask = new LinkedHashSet<>();
    List<Ground> because = new ArrayList<>();
    if (isAbout(when, situation)) {
      for (Told told : when.told()) {
        told(told, situation, said, reported, ask, because);
      }
    }
    for (Measurement measurement : beyond) {
      because.add(
          Ground.ofReading(
              Ground.Sort.READING,
              measurement.component(),
              measurement.observable(),
              measurement.shown()));
    }
    boolean kind = isOfKind(when, situation) && !isDenied(when, situation);
    boolean found = !because.isEmpty();
    if (kind && situation.isSupplyOpen() && asksForPlug(when)) {
      ask.add(Situation.NO_PLUG);
    }
    if (kind) {
      because.add(new Ground(Ground.Sort.KIND, "", "kind of machine"));
    }
    return new Trigger(beyond, reported, because, ask, found || kind, kind && !found);
  }

  private static List<Measurement> beyond(When when, Situation situation) {
    Read read = new Read(situation);
    List<Measurement> beyond = new ArrayList<>();
    for (Measurement measurement : situation.job().measurements()) {
      if (when.readings().stream().anyMatch(limit -> read.isBeyond(limit, measurement))) {
        beyond.add(measurement);
      }
    }
    return beyond;
  }

  /** Whether a row speaks of such a machine; of one of an unknown kind it does. */
  private static boolean isAbout(When when, Situation situation) {
    if (situation.kind().isEmpty()) {
      return true;
    }
    return (when.among().isEmpty() || situation.isNamed(when.among()))
        && (when.with().isEmpty() || !situation.parts(when.with()).isEmpty());
  }

  private static void told(
      Told told,
      Situation situation,
      List<List<String>> said,
      Set<String> reported,
      Set<String> ask,
      List<Ground> because) {
    Optional<Answer> answer = situation.answer(told.symptom());
    Said here = answer.isPresent() ? Said.NOT : Said.of(told.phrases(), said);
    boolean holds =
        answer.isPresent() ? answer.get() != Answer.NO : here.compareTo(Said.UNSURE) >= 0;
    if (holds) {
      reported.add(told.symptom());
      because.add(
          Ground.ofSymptom(
              told.symptom(),
              situation
                  .vocabulary()
                  .symptom(told.symptom())
                  .map(Symptom::title)
                  .orElse(told.symptom())));
    }
    if (here == Said.DENIED || here == Said.UNSURE) {
      ask.add(told.symptom());
    }
  }

  private static boolean isOfKind(When when, Situation situation) {
    boolean named =
        situation.isNamed(when.kinds())
            && (when.with().isEmpty() || !situation.parts(when.with()).isEmpty());
    boolean parts = !when.parts().isEmpty() && !situation.parts(when.parts()).isEmpty();
    boolean stated = !when.stated().isEmpty() && situation.isStated(when.stated());
    return named || parts || stated;
  }

  private static boolean asksForPlug(When when) {
    return when.told().stream().anyMatch(told -> told.symptom().equals(Situation.NO_PLUG));
  }

  /** Whether somebody answered that this machine is not as its kind is. */
  private static boolean isDenied(When when, Situation situation) {
    return !when.told().isEmpty()
        && when.told().stream()
            .anyMatch(
                told -> situation.answer(told.symptom()).filter(a -> a == Answer.NO).isPresent());
  }
}
