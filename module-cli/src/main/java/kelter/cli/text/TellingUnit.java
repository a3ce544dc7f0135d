package kelter.cli.text;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Finding;
import kelter.core.quantity.Unit;

/**
 * The unit in which a finding is told: that of the reading, unless its limits would then be a
 * figure with a row of noughts, as those of a heater that was read in MOhm by mistake.
 */
final class TellingUnit {

  private static final double LEAST = 0.01;
  private static final double MOST = 100_000;
  private static final List<String> PREFIXED = List.of("Ohm", "V", "A", "W", "Pa", "F");
  private static final List<String> PREFIXES = List.of("M", "k", "", "m", "u");

  private TellingUnit() {}

  static Unit of(Finding finding) {
    Unit unit = finding.unit();
    double limit = Math.max(size(finding.limits().low()), size(finding.limits().high()));
    double figure = limit / unit.factor();
    if (limit == 0 || (figure >= LEAST && figure < MOST)) {
      return unit;
    }
    return PREFIXED.stream()
        .filter(symbol -> Unit.of(symbol).isCompatibleWith(unit))
        .findFirst()
        .flatMap(symbol -> prefixed(symbol, limit))
        .orElse(unit);
  }

  private static double size(double limit) {
    return Double.isFinite(limit) ? Math.abs(limit) : 0;
  }

  private static Optional<Unit> prefixed(String symbol, double limit) {
    return PREFIXES.stream()
        .map(prefix -> Unit.of(prefix + symbol))
        .filter(unit -> limit >= unit.factor())
        .findFirst();
  }
}
