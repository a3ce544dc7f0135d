package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.likelihood.Group;
import kelter.core.diagnosis.likelihood.Item;
import kelter.core.diagnosis.likelihood.Likelihood;
import kelter.core.diagnosis.likelihood.Readings;

/** Finds the readings that are likelier wrong than right. */
final class Suspects {

  private static final double MATTERS = 0.01;
  private static final double LIKELIER_THAN_NOT = 0.5;
  private static final int SEVERITIES = 3;

  private Suspects() {}

  static List<Diagnosis.Suspect> among(List<Group> groups, JointPosterior posterior) {
    List<Diagnosis.Suspect> suspects = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      Group group = groups.get(g);
      double[] wrong = wrong(group, g, posterior);
      for (int k = 0; k < wrong.length; k++) {
        if (wrong[k] > LIKELIER_THAN_NOT) {
          Item item = group.readings().items().get(k);
          suspects.add(
              new Diagnosis.Suspect(
                  item.question().component(),
                  item.question().observable().id(),
                  item.shown(),
                  wrong[k]));
        }
      }
    }
    suspects.sort(
        GreatestFirst.by(
            Diagnosis.Suspect::probability, s -> s.component() + "." + s.observable()));
    return suspects;
  }

  /** The chance that each reading is a blunder, over all states that matter (Bayes' theorem). */
  private static double[] wrong(Group group, int g, JointPosterior posterior) {
    Readings readings = group.readings();
    double[] wrong = new double[readings.count()];
    double mass = 0;
    for (int state = 0; state < group.states() && wrong.length > 0; state++) {
      double probability = posterior.marginal(g, state);
      if (probability < MATTERS) {
        continue;
      }
      mass += probability;
      if (state == group.unexplainedState()) {
        for (int k = 0; k < wrong.length; k++) {
          wrong[k] += probability * readings.items().get(k).likelihood().blunder();
        }
        continue;
      }
      List<double[]> nodes = posterior.nodes(g, state, SEVERITIES);
      for (double[] severity : nodes) {
        double[] forecast = readings.forecast(severity);
        for (int k = 0; k < wrong.length; k++) {
          Likelihood likelihood = readings.items().get(k).likelihood();
          double all = likelihood.of(forecast[k], readings.spread(forecast, k));
          wrong[k] += probability / nodes.size() * likelihood.blunderTerm() / all;
        }
      }
    }
    for (int k = 0; k < wrong.length; k++) {
      wrong[k] /= mass;
    }
    return wrong;
  }
}
