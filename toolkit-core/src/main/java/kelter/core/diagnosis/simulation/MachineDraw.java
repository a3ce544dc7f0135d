package kelter.core.diagnosis.simulation;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.likelihood.Priors;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Draws machines: each fault is there with its own prior, at any severity alike. What the world
 * does not allow (faults that cannot meet, too many in a group, a machine in order that should not
 * be) is drawn anew, so that what is allowed keeps its odds.
 */
final class MachineDraw {

  private static final int MOST_TRIES = 1_000_000;

  private final List<FaultModel> models;
  private final List<double[]> priors = new ArrayList<>();
  private final World world;

  MachineDraw(List<FaultModel> models, Priors priors, World world) {
    this.models = List.copyOf(models);
    this.world = world;
    for (FaultModel model : models) {
      this.priors.add(
          model.faults().stream().mapToDouble(fault -> world.beside(priors.of(fault))).toArray());
    }
  }

  /** For each group the chance of each of its faults in a machine that may have others as well. */
  List<double[]> priors() {
    return List.copyOf(priors);
  }

  Machine draw(UniformRandomProvider random) {
    if (random.nextDouble() < world.nothingWrong()) {
      return new Machine(
          priors.stream().map(group -> new double[group.length]).toList(),
          deviates(random),
          priors.stream().map(group -> false).toList());
    }
    for (int i = 0; i < MOST_TRIES; i++) {
      Machine machine = any(random);
      if (!machine.isSound()) {
        return machine;
      }
    }
    throw new IllegalArgumentException(
        "the priors of the faults are so small that hardly a machine is ever faulty");
  }

  private List<double[]> deviates(UniformRandomProvider random) {
    ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
    List<double[]> deviates = new ArrayList<>();
    for (FaultModel model : models) {
      deviates.add(model.shared().stream().mapToDouble(quantity -> normal.sample()).toArray());
    }
    return deviates;
  }

  private Machine any(UniformRandomProvider random) {
    List<double[]> severity = new ArrayList<>();
    List<Boolean> unexplained = new ArrayList<>();
    for (int g = 0; g < models.size(); g++) {
      boolean strange = random.nextDouble() < world.beside(world.unexplained());
      unexplained.add(strange);
      severity.add(strange ? new double[priors.get(g).length] : faults(g, random));
    }
    return new Machine(severity, deviates(random), unexplained);
  }

  private double[] faults(int group, UniformRandomProvider random) {
    double[] prior = priors.get(group);
    double[] severity = new double[prior.length];
    do {
      for (int i = 0; i < prior.length; i++) {
        severity[i] = random.nextDouble() < prior[i] ? 1 - random.nextDouble() : 0;
      }
    } while (!isAllowed(severity, models.get(group)));
    return severity;
  }

  private boolean isAllowed(double[] severity, FaultModel model) {
    for (int i = 0; i < severity.length; i++) {
      for (int j = 0; j < i; j++) {
        if (severity[i] > 0 && severity[j] > 0 && !model.mayMeet(i, j)) {
          return false;
        }
      }
    }
    return Machine.faults(severity) <= world.mostTogether();
  }
}
