package kelter.core.safety.lockout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Verdict;
import kelter.core.job.Measurement;
import kelter.core.safety.lockout.table.LockOutRow;
import kelter.core.safety.lockout.table.LockOutTable;
import kelter.core.safety.lockout.table.Suspect;

/**
 * A fault that would lock the machine out and is likely: until its test is in, nothing is powered.
 *
 * @param row the id of the row
 * @param component the id of the component
 * @param faultId the id of the fault
 * @param fault what is wrong, for a person
 * @param probability how likely, by itself or with the others of its row, 0 to 1
 * @param test the word for what is looked at or read dead first; empty if nothing is known that
 *     would rule it out
 */
public record Suspicion(
    String row,
    String component,
    String faultId,
    String fault,
    double probability,
    Optional<String> test) {

  /**
   * A fault with its chance.
   *
   * @param component the id of the component
   * @param id the id of the fault
   * @param title what is wrong, for a person
   * @param probability how likely, 0 to 1
   */
  public record Likely(String component, String id, String title, double probability) {}

  /**
   * What is suspected: each likely fault of a row, and where several of one row are likely only
   * together, the likeliest of them, with what they come to. Its test leaves fewer of them.
   *
   * @param table the table
   * @param situation the job
   * @param faults faults with their chances, the likeliest first
   * @return those whose test is not in, in the order of the faults
   */
  public static List<Suspicion> of(LockOutTable table, Situation situation, List<Likely> faults) {
    List<Suspicion> all = new ArrayList<>();
    for (LockOutRow row : table.rows()) {
      if (row.suspect().isPresent() && !situation.job().records().containsKey(row.id())) {
        all.addAll(of(row, row.suspect().get(), situation, faults));
      }
    }
    all.sort(Comparator.comparing(each -> place(faults, each)));
    return all;
  }

  private static int place(List<Likely> faults, Suspicion suspicion) {
    int place = 0;
    for (Likely each : faults) {
      if (each.component().equals(suspicion.component) && each.id().equals(suspicion.faultId)) {
        return place;
      }
      place++;
    }
    return place;
  }

  private static List<Suspicion> of(
      LockOutRow row, Suspect suspect, Situation situation, List<Likely> faults) {
    List<Suspicion> open = new ArrayList<>();
    double together = 0;
    for (Likely fault : faults) {
      if (suspect.names(fault.id(), situation.kindOf(fault.component()))) {
        Suspicion suspicion = of(row, suspect, situation, fault);
        if (suspicion.test.filter(word -> suspicion.isIn(situation, row, word)).isEmpty()) {
          open.add(suspicion);
          together += fault.probability();
        }
      }
    }
    if (open.isEmpty() || together < Suspect.LIKELY) {
      return List.of();
    }
    List<Suspicion> likely = new ArrayList<>(open);
    likely.removeIf(each -> each.probability < Suspect.LIKELY);
    return likely.isEmpty() ? List.of(toTest(open).among(together)) : likely;
  }

  private static Suspicion of(LockOutRow row, Suspect suspect, Situation situation, Likely fault) {
    Optional<String> test =
        suspect.tests().stream()
            .filter(word -> situation.observable(fault.component(), word).isPresent())
            .findFirst();
    return new Suspicion(
        row.id(), fault.component(), fault.id(), fault.title(), fault.probability(), test);
  }

  /** The likeliest that can be ruled out by a test, or else the likeliest. */
  private static Suspicion toTest(List<Suspicion> open) {
    return open.stream().filter(each -> each.test.isPresent()).findFirst().orElse(open.get(0));
  }

  /** The same as one of several, which are likely only together. */
  private Suspicion among(double together) {
    return new Suspicion(
        row, component, faultId, fault + ", or another of its kind", Math.min(1, together), test);
  }

  /** Whether a test was made and decided. */
  private boolean isIn(Situation situation, LockOutRow row, String observable) {
    Read read = new Read(situation);
    for (Measurement measurement : situation.job().measurements(component, observable)) {
      boolean beyond =
          row.when().readings().stream().anyMatch(limit -> read.isBeyond(limit, measurement));
      if (beyond || read.conforms(row, measurement)) {
        return true;
      }
      boolean decided =
          situation.judge().apply(measurement).stream()
              .anyMatch(
                  finding ->
                      finding.observable().equals(observable)
                          && finding.verdict() == Verdict.DOES_NOT_CONFORM);
      if (decided) {
        return true;
      }
    }
    return false;
  }
}
