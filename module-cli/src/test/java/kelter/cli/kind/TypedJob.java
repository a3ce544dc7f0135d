package kelter.cli.kind;

import java.util.ServiceLoader;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.file.json.JsonText;
import kelter.core.job.Job;
import kelter.core.module.CalculationModule;
import kelter.core.workshop.Case;
import kelter.core.workshop.Workshop;

/** A job in the words of a job file, as a technician has it after a few entries. */
final class TypedJob {

  private static final Workshop WORKSHOP = Workshop.of(ServiceLoader.load(CalculationModule.class));

  private TypedJob() {}

  /**
   * Opens it.
   *
   * @param appliance members of the appliance, with single quotes for double ones
   * @param symptoms members of the symptoms
   * @param readings each as {@code component.observable=reading}
   */
  static Case open(String appliance, String symptoms, String... readings) {
    StringBuilder measurements = new StringBuilder();
    for (String reading : readings) {
      String[] parts = reading.split("[.=]", 3);
      measurements
          .append(measurements.isEmpty() ? "" : ", ")
          .append(
              "{ 'of': '%s', 'observable': '%s', 'reading': '%s' }"
                  .formatted(parts[0], parts[1], parts[2]));
    }
    String text =
        ("{ 'format': 'kelter-job/2', 'id': 'typed', 'date': '2026-11-30', 'market': 'EU',"
                + " 'appliance': { %s }, 'symptoms': { %s }, 'measurements': [ %s ] }")
            .formatted(appliance, symptoms, measurements)
            .replace('\'', '"');
    Job job = WORKSHOP.read(JsonText.read(text.getBytes(), "typed", "")).job();
    return WORKSHOP.open(job);
  }

  /** The chance of a fault by itself; 0 where it is not listed. */
  static double chance(Case machine, String fault) {
    return machine.diagnosis().faults().stream()
        .filter(each -> each.fault().key().equals(fault))
        .mapToDouble(Diagnosis.FaultProbability::probability)
        .findFirst()
        .orElse(0);
  }
}
