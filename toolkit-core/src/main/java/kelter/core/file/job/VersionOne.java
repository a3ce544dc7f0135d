package kelter.core.file.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.job.Appliance;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptoms;

/**
 * Version 1 of job files told as a yes or a no on a component what is a symptom of the whole
 * machine now.
 */
public final class VersionOne {

  /** What such a file says of its format. */
  static final String FORMAT = "kelter-job/1";

  /** So many readings that became one symptom are named in a note. */
  private static final int NAMED = 3;

  private static final List<String> HEATERS = List.of("heater", "air-heater");

  private static final Map<String, Moved> MOVED =
      Map.ofEntries(
          moved("washes-cold", Symptoms.STAYS_COLD, HEATERS),
          moved("dries-cold", Symptoms.STAYS_COLD, HEATERS),
          moved("heats-slowly", Symptoms.HEATS_SLOWLY, HEATERS),
          moved("dries-slowly", Symptoms.DOES_NOT_DRY, HEATERS),
          moved("trips-rcd", Symptoms.TRIPS_RCD, List.of("heater", "air-heater", "motor")),
          moved("trips-breaker", Symptoms.TRIPS_BREAKER, HEATERS),
          moved("overheats", Symptoms.TOO_HOT, HEATERS),
          moved("hums", Symptoms.HUMS_ONLY, List.of("motor")),
          moved("silent", Symptoms.DOES_NOT_TURN, List.of("motor")),
          moved("does-not-start", Symptoms.DOES_NOT_START, List.of("door-switch")),
          moved("tingle", Symptoms.SHOCK_FELT, List.of("supply-cord")),
          moved("drains-slowly", Symptoms.DRAINS_SLOWLY, List.of("drain-pump")),
          moved("water-outside", Symptoms.LEAKS, List.of("drain-pump")),
          moved("fills-slowly", Symptoms.FILLS_SLOWLY, List.of("inlet-valve")),
          moved("weak-jets", Symptoms.POOR_RESULT, List.of("wash-pump")),
          moved("overfills", Symptoms.FILLS_WITHOUT_END, List.of("level-sensor")));

  private VersionOne() {}

  /**
   * An observable that became a symptom.
   *
   * @param kinds the kinds of components that had it; another module may call something of its own
   *     kind the same
   */
  private record Moved(Symptom symptom, List<String> kinds) {}

  /**
   * What a job of version 1 tells.
   *
   * @param measurements what is still read on components
   * @param reports what became symptoms
   * @param notes what became which
   */
  record Told(List<Measurement> measurements, List<SymptomReport> reports, List<String> notes) {}

  private static Map.Entry<String, Moved> moved(
      String observable, Symptom symptom, List<String> kinds) {
    return Map.entry(observable, new Moved(symptom, kinds));
  }

  /**
   * The symptom that an observable of version 1 became.
   *
   * @param kind the kind of component that had it
   * @param observable the word for it there
   * @return the symptom; empty if it never was such an observable
   */
  public static Optional<Symptom> symptom(String kind, String observable) {
    Moved moved = MOVED.get(observable);
    return moved != null && moved.kinds().contains(kind)
        ? Optional.of(moved.symptom())
        : Optional.empty();
  }

  /** An observable that became a symptom, as it was read in version 1: a yes or a no. */
  static Optional<Observable> observable(String kind, String observable) {
    return symptom(kind, observable)
        .map(symptom -> Observable.named(observable, symptom.title()).by(Procedure.look(1)));
  }

  /** Takes the measurements that are symptoms now out of the others. */
  static Told told(Appliance appliance, List<Measurement> measurements) {
    List<Measurement> rest = new ArrayList<>();
    Map<String, List<Measurement>> moved = new LinkedHashMap<>();
    for (Measurement measurement : measurements) {
      String kind = appliance.component(measurement.component()).orElseThrow().kind();
      Optional<Symptom> symptom = symptom(kind, measurement.observable());
      if (symptom.isPresent()) {
        moved.computeIfAbsent(symptom.get().id(), any -> new ArrayList<>()).add(measurement);
      } else {
        rest.add(measurement);
      }
    }
    List<SymptomReport> reports = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    moved.forEach(
        (symptom, read) -> {
          Answer answer = said(read, true) ? Answer.YES : Answer.NO;
          reports.add(new SymptomReport(symptom, answer));
          notes.add(note(symptom, answer, read));
        });
    return new Told(rest, reports, notes);
  }

  private static boolean said(List<Measurement> read, boolean yes) {
    return read.stream()
        .anyMatch(measurement -> measurement.readings().contains(new Reading.YesNo(yes)));
  }

  private static String note(String symptom, Answer answer, List<Measurement> read) {
    Set<String> sources = new LinkedHashSet<>();
    read.forEach(each -> sources.add("'" + each.component() + "." + each.observable() + "'"));
    String more = sources.size() > NAMED ? " and " + (sources.size() - NAMED) + " more" : "";
    return String.join(", ", sources.stream().limit(NAMED).toList())
        + more
        + " of a file of version 1: taken as the symptom '"
        + symptom
        + "', "
        + answer.id()
        + (said(read, true) && said(read, false) ? "; of yes and no, the yes counts" : "");
  }
}
