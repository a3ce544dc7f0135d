package kelter.hydraulics.onefault;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.LimitRule;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.hydraulics.part.WaterSide;

/**
 * A part with one fault, whose signs follow from how bad it is.
 *
 * @param kind the words
 * @param fault the fault; unless it says what it changes of {@link Sign.Bad}, its signs follow its
 *     severity
 * @param signs what is read and seen, in the order in which it is asked
 * @param limits what can be held against limits
 */
public record OneFault(ComponentKind kind, FaultRow fault, List<Sign> signs, List<Limit> limits)
    implements Part {

  /**
   * A limit for a reading.
   *
   * @param id the id of the check
   * @param title what it asks
   * @param observable what must have been read
   * @param rule gives the limits of a reading
   */
  public record Limit(String id, String title, Observable observable, LimitRule rule) {}

  public OneFault {
    if (fault.effects().isEmpty()) {
      fault = fault.changes(Sign.Bad.SEVERITY.becomes(Course.line(0, 1)));
    }
    signs = List.copyOf(signs);
    limits = List.copyOf(limits);
  }

  /**
   * A part without limits.
   *
   * @param id the word in a job file
   * @param title the words for a person
   * @param fault the fault
   * @param signs what is read and seen
   * @return the part
   */
  public static OneFault of(String id, String title, FaultRow fault, Sign... signs) {
    List<Observable> observables = new ArrayList<>();
    Map<String, Characteristic> figures = new LinkedHashMap<>();
    for (Sign sign : signs) {
      observables.add(sign.observable());
      sign.figure().ifPresent(figure -> figures.putIfAbsent(figure.id(), figure));
    }
    ComponentKind kind =
        new ComponentKind(id, title, observables, List.copyOf(figures.values()), List.of());
    return new OneFault(kind, fault, List.of(signs), List.of());
  }

  /**
   * The same with limits.
   *
   * @param some what can be held against limits
   * @return the part
   */
  public OneFault within(Limit... some) {
    return new OneFault(kind, fault, signs, List.of(some));
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(kind);
  }

  @Override
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    for (Limit limit : limits) {
      checks.add(LimitCheck.named(limit.id, limit.title).on(kind, limit.observable, limit.rule));
    }
    return checks;
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component component) {
    PartModel model = PartModel.of(component, kind, WaterSide.PRIORS, Sign.Bad.ALL).faults(fault);
    for (Sign sign : signs) {
      sign.to(model, component);
    }
    return Optional.of(model.build());
  }
}
