package kelter.cli.architecture.broken.hydraulics;

import kelter.core.check.DecisionRule;
import kelter.core.check.Judgement;
import kelter.core.check.Limits;
import kelter.core.uncertainty.Estimate;

final class Judges {
  Judgement judge(Estimate estimate) {
    return Judgement.of(estimate, Limits.atMost(1), DecisionRule.USUAL, false);
  }
}
