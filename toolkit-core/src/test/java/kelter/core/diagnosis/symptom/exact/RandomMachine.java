package kelter.core.diagnosis.symptom.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kelter.core.diagnosis.symptom.Background;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.MachineChances;
import kelter.core.diagnosis.symptom.Report;
import kelter.core.diagnosis.symptom.Reports;
import kelter.core.diagnosis.symptom.StateChances;
import kelter.core.diagnosis.symptom.WrongReports;

/** A small machine by chance: up to three groups, four symptoms and three nodes of severity. */
final class RandomMachine {

  final MachineChances machine;
  final Reports reports;
  private final Random random;

  RandomMachine(long seed) {
    this.random = new Random(seed);
    int symptoms = 1 + random.nextInt(4);
    List<GroupChances> groups = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    for (int g = 0; g < count; g++) {
      groups.add(group(symptoms));
    }
    this.machine = new MachineChances(groups, .4 * random.nextDouble());
    this.reports = reports(symptoms);
  }

  private GroupChances group(int symptoms) {
    double healthy = .5 + .5 * random.nextDouble();
    List<StateChances> states = new ArrayList<>();
    states.add(StateChances.Nodes.silent(Math.log(healthy * random.nextDouble()), symptoms));
    int faults = 1 + random.nextInt(3);
    for (int i = 0; i < faults; i++) {
      states.add(state(symptoms));
    }
    if (faults > 1) {
      states.add(new StateChances.PairOf(Math.log(.02 * random.nextDouble()), 1, 2));
    }
    return new GroupChances(Math.log(healthy), states);
  }

  private StateChances state(int symptoms) {
    int nodes = 1 + random.nextInt(3);
    double[] share = new double[nodes];
    double sum = 0;
    for (int n = 0; n < nodes; n++) {
      share[n] = random.nextDouble();
      sum += share[n];
    }
    for (int n = 0; n < nodes; n++) {
      share[n] /= sum;
    }
    double[][] chance = new double[symptoms][];
    for (int i = 0; i < symptoms; i++) {
      chance[i] = random.nextInt(3) == 0 ? null : random.doubles(nodes).toArray();
    }
    double logWeight = Math.log(.3 * random.nextDouble() * random.nextDouble());
    return new StateChances.Nodes(logWeight, share, chance);
  }

  private Reports reports(int count) {
    List<Background> symptoms = new ArrayList<>();
    List<Report> reports = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int masker = random.nextInt(2 * count);
      int[] maskers = masker < count && masker != i ? new int[] {masker} : new int[0];
      symptoms.add(new Background(.1 * random.nextDouble(), .3 * random.nextDouble(), maskers));
      double falseNo = random.nextBoolean() ? 0 : .2 * random.nextDouble();
      WrongReports wrong =
          new WrongReports(.1 * random.nextDouble(), falseNo, .5 * random.nextDouble());
      int answer = random.nextInt(3);
      reports.add(
          answer == 0 ? Report.UNASKED : answer == 1 ? Report.yes(wrong) : Report.no(wrong));
    }
    return new Reports(symptoms, reports);
  }
}
