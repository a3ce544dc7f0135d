package kelter.core.workshop.kind;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kelter.core.catalogue.TypicalMachine;
import kelter.core.catalogue.TypicalMachine.OpenFigure;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.SharedQuantity;
import kelter.core.job.Appliance;
import kelter.core.module.Part;
import kelter.core.module.Parts;

/** The fault models of a machine, in which typical figures are open. */
final class MachineModels {

  private final TypicalMachine machine;
  private final Map<Integer, Appliance> moved = new HashMap<>();

  private MachineModels(TypicalMachine machine) {
    this.machine = machine;
  }

  /**
   * The models of some parts.
   *
   * @param machine the machine
   * @param parts the parts
   * @return the models that apply, in the order of the parts
   * @throws kelter.core.problem.InputException if a figure or a curve of a component is impossible
   */
  public static List<FaultModel> of(TypicalMachine machine, Parts parts) {
    MachineModels models = new MachineModels(machine);
    List<FaultModel> all = new ArrayList<>();
    for (Part part : parts.all()) {
      all.addAll(models.of(part));
    }
    return all;
  }

  private List<FaultModel> of(Part part) {
    List<FaultModel> usual = part.faultModels(machine.usual());
    if (usual.isEmpty()) {
      return usual;
    }
    Map<Integer, List<FaultModel>> others = new HashMap<>();
    List<FaultModel> all = new ArrayList<>();
    for (FaultModel model : usual) {
      all.add(withOpenFigures(model, part, others));
    }
    return all;
  }

  private FaultModel withOpenFigures(
      FaultModel model, Part part, Map<Integer, List<FaultModel>> others) {
    Set<String> components = new HashSet<>();
    for (Question question : model.questions()) {
      components.add(question.component());
    }
    List<FaultModel> ofMoved = new ArrayList<>();
    List<SharedQuantity> figures = new ArrayList<>();
    for (int j = 0; j < machine.open().size(); j++) {
      OpenFigure open = machine.open().get(j);
      if (open.figure().isOpen() && components.contains(open.component())) {
        others.computeIfAbsent(j, number -> part.faultModels(moved(number))).stream()
            .filter(other -> other.id().equals(model.id()))
            .forEach(
                other -> {
                  ofMoved.add(other);
                  figures.add(quantity(open));
                });
      }
    }
    return figures.isEmpty() ? model : new TypicalModel(model, ofMoved, figures);
  }

  private Appliance moved(int number) {
    return moved.computeIfAbsent(number, any -> machine.at(number, 1));
  }

  private static SharedQuantity quantity(OpenFigure open) {
    return new SharedQuantity(
        open.component() + "-" + open.figure().word(), open.told(), open.source(), true);
  }
}
