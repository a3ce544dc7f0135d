package kelter.testkit;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;

/**
 * How the chances of faults go with the age of machines of which nothing else is known.
 *
 * @param machines the machines
 * @param models what can be wrong with one of them
 */
public record Aging(Collection<Appliance> machines, Function<Appliance, List<FaultModel>> models) {

  /**
   * Fails unless a fault gains on another by more than 15 % from 7 to 14 years, and is behind by
   * more than 15 % at 2 years.
   *
   * @param wears the key of a fault that comes with age
   * @param ageless the key of one that does not
   */
  public void assertComesWithAge(String wears, String ageless) {
    double usual = chance(wears, 7) / chance(ageless, 7);
    assertTrue(chance(wears, 14) / chance(ageless, 14) > 1.15 * usual);
    assertTrue(chance(wears, 2) / chance(ageless, 2) < 0.85 * usual);
  }

  private double chance(String fault, double years) {
    return machines.stream()
        .map(machine -> aged(machine, years))
        .map(
            job ->
                new DiagnosisEngine(EngineSettings.USUAL)
                    .diagnose(job, models.apply(job.appliance())))
        .flatMap(diagnosis -> diagnosis.faults().stream())
        .filter(suspect -> suspect.fault().key().equals(fault))
        .mapToDouble(suspect -> suspect.probability())
        .sum();
  }

  private static Job aged(Appliance machine, double years) {
    Appliance aged =
        new Appliance(
            machine.kind(),
            machine.maker(),
            machine.model(),
            machine.serial(),
            Optional.of(Quantity.of(years, "a", QuantityKind.AGE)),
            machine.nameplate(),
            machine.components());
    return new Job(
        "job-1",
        "",
        aged,
        new Complaint("something is wrong", ""),
        List.of(),
        List.of(),
        Optional.empty());
  }
}
