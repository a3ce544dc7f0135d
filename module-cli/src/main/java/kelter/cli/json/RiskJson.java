package kelter.cli.json;

import java.io.IOException;
import java.util.List;
import kelter.cli.json.output.JsonOutput;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.GuardBand;
import kelter.core.check.RiskOfFinding;

/** The risks of a wrong verdict as JSON. */
final class RiskJson {

  private RiskJson() {}

  static void write(JsonOutput out, List<Finding> findings, DecisionRule rule) throws IOException {
    out.objects(
        "risks",
        findings.stream().filter(finding -> RiskOfFinding.of(finding).isPresent()).toList(),
        finding -> write(out, finding, RiskOfFinding.of(finding).orElseThrow(), rule));
  }

  private static void write(JsonOutput out, Finding finding, RiskOfFinding risk, DecisionRule rule)
      throws IOException {
    double factor = finding.unit().factor();
    out.text("id", finding.id());
    out.probability("consumer", risk.ifPassed());
    out.probability("producer", risk.ifRejected());
    out.number("level", rule.level());
    out.number("guard-band", GuardBand.at(rule.level(), risk.measured()).width() / factor);
    out.number("guard-band-expanded", GuardBand.expanded(risk.uncertainty()).width() / factor);
    out.text("unit", finding.unit().code());
    if (risk.overMany().isPresent()) {
      out.probability("global-consumer", risk.overMany().get().consumer());
      out.probability("global-producer", risk.overMany().get().producer());
    }
  }
}
