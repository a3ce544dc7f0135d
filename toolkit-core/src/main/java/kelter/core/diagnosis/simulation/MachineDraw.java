package kelter.core.diagnosis.simulation;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Draws machines: each fault is there with its own prior, at any severity alike. What the world
 * does not allow (too many faults in a group, a machine in order that should not be) is drawn anew,
 * so that what is allowed keeps its odds.
 */
final class MachineDraw {

  private static final int MOST_TRIES = 1_000_000;

  private final List<double[]> priors = new ArrayList<>();
  private final World world;

  MachineDraw(List<FaultModel> models, World world) {
    this.world = world;
    for (FaultModel model : models) {
      priors.add(model.faults().stream().mapToDouble(Fault::prior).toArray());
    }
  }

  Machine draw(UniformRandomProvider random) {
    if (random.nextDouble() < world.nothingWrong()) {
      return new Machine(
          priors.stream().map(group -> new double[group.length]).toList(),
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

  private Machine any(UniformRandomProvider random) {
    List<double[]> severity = new ArrayList<>();
    List<Boolean> unexplained = new ArrayList<>();
    for (double[] group : priors) {
      boolean strange = random.nextDouble() < world.unexplained();
      unexplained.add(strange);
      severity.add(strange ? new double[group.length] : faults(group, random));
    }
    return new Machine(severity, unexplained);
  }

  private double[] faults(double[] prior, UniformRandomProvider random) {
    double[] severity = new double[prior.length];
    do {
      for (int i = 0; i < prior.length; i++) {
        severity[i] = random.nextDouble() < prior[i] ? 1 - random.nextDouble() : 0;
      }
    } while (Machine.faults(severity) > world.mostTogether());
    return severity;
  }
}
