package kelter.core.diagnosis.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import kelter.core.diagnosis.Brings;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.Remedy.Restores;
import org.junit.jupiter.api.Test;

/** What to take along, against sums over all states of small machines by their definition. */
class PartsNeededTest {

  private static final double EXACT = 1e-12;
  private static final int MACHINES = 40;

  /** 10 min at a chance of 0.7: before all that needs a part, which counts for 30 min more. */
  private static final Remedy CLEAN = remedy("clean", 10, Restores.FUNCTION, 0.7);

  /** 40 and 30 min over 0.8: 87.5. */
  private static final Remedy SEAL = remedy("renew-seal", 40, Restores.PART, 0.8);

  /** 70 and 30 min over 0.95: 105.3, so that it comes after the seal. */
  private static final Remedy PUMP = remedy("renew-pump", 70, Restores.COMPONENT, 0.95);

  /**
   * For the first three faults of a machine what helps them, in no order; the others are cleaned.
   */
  private static final List<List<Remedy>> HELPS =
      List.of(List.of(PUMP, SEAL, CLEAN), List.of(PUMP), List.of(PUMP, SEAL));

  /** With which chance the first three faults come to a new seal: 1 - 0.7 for the first. */
  private static final double[] TO_SEAL = {0.3, 0, 1};

  /** To a new pump: (1 - 0.7) (1 - 0.8), at once, and 1 - 0.8. */
  private static final double[] TO_PUMP = {0.06, 1, 0.2};

  private static Remedy remedy(String id, double minutes, Restores restores, double cures) {
    return new Remedy(
        id, "part", id, minutes, restores, restores != Restores.FUNCTION, cures, List.of());
  }

  /** A machine of which something was said and seen, and the keys of its first three faults. */
  private record Given(SmallMachine machine, List<String> faults) {}

  private static Given given(int seed) {
    Random random = new Random(seed);
    SmallMachine machine = SmallMachine.random(random);
    List<String> keys = new ArrayList<>();
    List<SmallMachine.Part> parts = new ArrayList<>();
    for (SmallMachine.Part part : machine.parts()) {
      List<Fault> faults = new ArrayList<>();
      for (Fault fault : part.faults()) {
        faults.add(
            helpedBy(fault, keys.size() < HELPS.size() ? HELPS.get(keys.size()) : List.of(CLEAN)));
        keys.add(fault.key());
      }
      parts.add(
          new SmallMachine.Part(part.name(), faults, part.apart(), part.seen(), part.chance()));
    }
    List<Brings> brings = List.of(new Brings(keys.get(0), keys.get(keys.size() - 1), 0.5));
    SmallMachine told =
        new SmallMachine(
                parts,
                machine.symptoms(),
                seed % 2 == 0 ? List.of() : brings,
                machine.reports(),
                machine.readings())
            .told(random);
    return new Given(told, keys.subList(0, HELPS.size()));
  }

  private static Fault helpedBy(Fault fault, List<Remedy> remedies) {
    return new Fault(
        fault.id(),
        fault.component(),
        fault.title(),
        fault.prior(),
        fault.source(),
        remedies,
        fault.wear(),
        fault.symptoms());
  }

  private static Diagnosis diagnosis(SmallMachine machine) {
    return new DiagnosisEngine(SmallMachine.SETTINGS)
        .diagnose(
            machine.job(),
            new Knowledge(
                List.copyOf(machine.parts()), machine.symptoms(), machine.brings(), List.of()));
  }

  /** Over all states: one less the chance that no fault of the state comes to the remedy. */
  private static double byDefinition(Given given, double[] comes) {
    double sum = 0;
    for (Map.Entry<Set<String>, Double> state : given.machine.posterior().entrySet()) {
      double spared = 1;
      for (int i = 0; i < comes.length; i++) {
        spared *= state.getKey().contains(given.faults.get(i)) ? 1 - comes[i] : 1;
      }
      sum += state.getValue() * (1 - spared);
    }
    return sum;
  }

  private static double told(Diagnosis diagnosis, Remedy remedy) {
    return diagnosis.takeAlong().stream()
        .filter(needed -> needed.remedy().equals(remedy))
        .mapToDouble(Diagnosis.Needed::chance)
        .findFirst()
        .orElse(0);
  }

  @Test
  void theChanceOfAPartIsItsSumOverAllStates() {
    for (int seed = 0; seed < MACHINES; seed++) {
      Given given = given(seed);
      Diagnosis diagnosis = diagnosis(given.machine);
      double seal = byDefinition(given, TO_SEAL);
      double pump = byDefinition(given, TO_PUMP);
      assertTrue(seal > 0.02 && pump > 0.02, "machine " + seed + " needs both");
      assertEquals(seal, told(diagnosis, SEAL), EXACT, "seal of machine " + seed);
      assertEquals(pump, told(diagnosis, PUMP), EXACT, "pump of machine " + seed);
    }
  }

  /** Cleaning needs no part; the likeliest stands first. */
  @Test
  void onlyPartsAreTakenAlongTheLikeliestFirst() {
    for (int seed = 0; seed < MACHINES; seed++) {
      List<Diagnosis.Needed> needed = diagnosis(given(seed).machine).takeAlong();
      assertEquals(2, needed.size(), needed.toString());
      assertTrue(needed.stream().allMatch(each -> each.remedy().needsPart()), needed.toString());
      assertTrue(needed.get(0).chance() >= needed.get(1).chance(), needed.toString());
    }
  }

  /**
   * By hand: one fault with a prior of 0.2, a group that does what nobody knows in 0.03 of all
   * cases, and a machine with nothing wrong in 0.1. So the fault has 0.97 * 0.2 = 0.194 of 0.224
   * that is wrong, and 0.9 of all: 0.7795. Cleaning does not cure 0.3 of it.
   */
  @Test
  void theChanceOfOneFaultByHand() {
    Fault fault = helpedBy(SmallMachine.fault("worn", 0.2, List.of()), List.of(SEAL, CLEAN));
    SmallMachine.Part part =
        new SmallMachine.Part("pump", List.of(fault), Set.of(), List.of(), new double[2][0]);
    SmallMachine machine =
        new SmallMachine(List.of(part), List.of(), List.of(), List.of(), Map.of());

    assertEquals(0.9 * 0.194 / 0.224 * 0.3, told(diagnosis(machine), SEAL), EXACT);
  }
}
