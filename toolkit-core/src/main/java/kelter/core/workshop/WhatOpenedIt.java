package kelter.core.workshop;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.diagnosis.Brings;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.engine.Permit;
import kelter.core.job.Appliance;
import kelter.core.job.Component;

/**
 * What protects opens for a reason: where a thermal link, a fuse or an overload protector leads,
 * whatever may have opened it is read before enough is known, since a new one goes the same way.
 *
 * @param plain what may be proposed beside that
 * @param appliance the machine
 * @param brings which causes bring others
 */
record WhatOpenedIt(Permit plain, Appliance appliance, List<Brings> brings) implements Permit {

  /** Kinds of components that open so that nothing worse happens. */
  private static final Set<String> PROTECT = Set.of("thermal-link", "fuse", "overload-protector");

  /** From this chance on what protects is taken to have opened. */
  private static final double OPENED = 0.5;

  /** Below this chance a cause is ruled out, and from {@link #KNOWN} on it needs no reading. */
  private static final double OUT = 0.02;

  private static final double KNOWN = 0.9;

  @Override
  public Granted after(List<Diagnosis.FaultProbability> faults) {
    Granted granted = plain.after(faults);
    Set<String> open = open(faults);
    return open.isEmpty() ? granted : new Needing(granted, open);
  }

  /** The components of causes that may have opened what leads, and of which it is open. */
  private Set<String> open(List<Diagnosis.FaultProbability> faults) {
    Map<String, Double> chance = new HashMap<>();
    for (Diagnosis.FaultProbability each : faults) {
      chance.put(each.fault().key(), each.probability());
    }
    Set<String> open = new HashSet<>();
    for (Brings each : brings) {
      double cause = chance.getOrDefault(each.cause(), 0.0);
      if (protects(component(each.effect()))
          && chance.getOrDefault(each.effect(), 0.0) >= OPENED
          && cause >= OUT
          && cause < KNOWN) {
        open.add(component(each.cause()));
      }
    }
    return open;
  }

  private static String component(String fault) {
    return fault.substring(0, fault.indexOf('.'));
  }

  private boolean protects(String component) {
    return appliance
        .component(component)
        .map(Component::kind)
        .filter(PROTECT::contains)
        .isPresent();
  }

  /** The same, where readings of some components are needed. */
  private record Needing(Granted plain, Set<String> components) implements Granted {

    @Override
    public boolean measures(Question question) {
      return plain.measures(question);
    }

    @Override
    public boolean goesFirst(Question question) {
      return plain.goesFirst(question);
    }

    @Override
    public boolean isNeeded(Question question) {
      return components.contains(question.component());
    }

    @Override
    public Optional<Question> before(Question question) {
      return plain.before(question);
    }

    @Override
    public boolean mends(String component) {
      return plain.mends(component);
    }

    @Override
    public boolean staysUnplugged() {
      return plain.staysUnplugged();
    }
  }
}
