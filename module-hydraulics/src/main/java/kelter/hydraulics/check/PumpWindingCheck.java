package kelter.hydraulics.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.hydraulics.fault.PumpWinding;
import kelter.hydraulics.part.DrainPumpKind;
import kelter.hydraulics.part.RatedSupply;
import kelter.hydraulics.part.WashPumpKind;

/**
 * Does the winding of a pump measure what it should? Within 10 % of its figure, copper brought to
 * the temperature of the reading, or to 10 °C to 35 °C where none is stated. Without a figure only
 * an open winding and a short between its terminals are told: within a sixth and six times of what
 * is typical for power and voltage. Both are common practice, no source.
 */
public final class PumpWindingCheck implements Check {

  private static final String ID = "pump-winding";
  private static final OnPump OBSERVED =
      new OnPump(DrainPumpKind.WINDING_RESISTANCE, WashPumpKind.WINDING_RESISTANCE);
  private static final String TITLE = "Resistance of the pump's winding";
  private static final double WITHIN = 0.1; // ratio; common practice, no source
  private static final double FACTOR = 6; // ratio; common practice, no source
  private static final Conditions COLD = at(10);
  private static final Conditions WARM = at(35);
  private static final Source OF_FIGURE =
      Source.commonPractice("within 10 % of the figure, copper by the coefficient of IEC 60028");
  private static final Source OF_TYPICAL =
      Source.commonPractice(
          "within a sixth and six times of a typical pump of this power, voltage");
  private static final String TYPICAL_ONLY =
      "The pump has no winding-resistance of its own, so that only an open winding or a short is told.";

  /** A check without a memory. */
  public PumpWindingCheck() {}

  private static Conditions at(double celsius) {
    return new Conditions(
        Map.of("temperature", Quantity.of(celsius, "Cel", QuantityKind.TEMPERATURE)));
  }

  @Override
  public String id() {
    return ID;
  }

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public List<Finding> apply(Job job, DecisionRule rule) {
    List<Finding> findings = new ArrayList<>();
    for (Component component : job.appliance().components()) {
      Optional<Observable> winding = OBSERVED.of(component);
      if (winding.isPresent()) {
        findings.addAll(findings(job, component, winding.get(), rule));
      }
    }
    return List.copyOf(findings);
  }

  private static List<Finding> findings(
      Job job, Component component, Observable observable, DecisionRule rule) {
    boolean known = component.figure(DrainPumpKind.WINDING.id()).isPresent();
    Told told = new Told(ID, TITLE, observable, known ? OF_FIGURE : OF_TYPICAL);
    List<Finding> findings = new ArrayList<>();
    for (Measurement measurement : job.measurements(component.id(), observable.id())) {
      PumpWinding winding =
          PumpWinding.of(component, RatedSupply.of(component, job.appliance().nameplate()));
      findings.add(
          told.finding(
              job,
              measurement,
              limits(winding, known, measurement.conditions()),
              rule,
              known ? "" : TYPICAL_ONLY));
    }
    return findings;
  }

  private static Limits limits(PumpWinding winding, boolean known, Conditions conditions) {
    boolean stated = conditions.figure("temperature").isPresent();
    double low = winding.resistance(false, stated ? conditions : COLD);
    double high = winding.resistance(false, stated ? conditions : WARM);
    return known
        ? new Limits(low * (1 - WITHIN), high * (1 + WITHIN))
        : new Limits(low / FACTOR, high * FACTOR);
  }
}
