package kelter.electrical.switching;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactLimits;
import kelter.electrical.contact.Path;
import kelter.electrical.contact.SwitchContact;

/**
 * A part that conducts or does not, and shows marks when it was hot. Resistances and spreads are
 * from memory.
 *
 * @param kind its words
 * @param closed what it reads while it should conduct
 * @param opened what it reads while it should not, if it can open
 * @param marks how burnt or damaged it looks, if that can be seen
 * @param ifNot what to mind where it does not read what it should
 * @param faults what can be wrong with it
 */
record ContactPart(
    ComponentKind kind,
    Observable closed,
    Optional<Observable> opened,
    Optional<Observable> marks,
    Caution ifNot,
    List<FaultRow> faults)
    implements Part {

  /** How far closed and open contacts in one state differ, as a natural logarithm. */
  private static final Spread<Object> OF_CONTACTS = Spread.constant(0.7);

  @Override
  public List<ComponentKind> kinds() {
    return List.of(kind);
  }

  @Override
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    checks.add(
        LimitCheck.named(kind.id() + "-conducts", "Does the " + kind.title() + " conduct?")
            .on(kind, closed, ContactLimits.lowPath("resistance of the " + kind.title(), ifNot)));
    if (opened.isPresent()) {
      checks.add(
          LimitCheck.named(kind.id() + "-opens", "Does the " + kind.title() + " open?")
              .on(kind, opened.get(), ContactLimits.open("resistance of an open contact", ifNot)));
    }
    return checks;
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component part) {
    PartModel model =
        PartModel.of(part.id(), Electrical.PRIORS, Path.ALL)
            .on(part, kind, SwitchContact.ALL)
            .faults(faults)
            .looks(closed, Path.RESISTANCE, OF_CONTACTS);
    if (opened.isPresent()) {
      model.looks(opened.get(), SwitchContact.OPENED, OF_CONTACTS);
    }
    if (marks.isPresent()) {
      model.looks(marks.get(), SwitchContact.MARKS);
    }
    return Optional.of(model.build());
  }
}
