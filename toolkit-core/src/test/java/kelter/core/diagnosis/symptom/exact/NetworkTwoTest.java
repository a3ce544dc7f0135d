package kelter.core.diagnosis.symptom.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Reports of symptoms beside a reading, with severities: against figures worked out outside the
 * project, by adding up everything on a grid of twelve midpoints (two programs), and by a rule of
 * Gauss of 192 nodes that agreed with one of 240 to 4e-14.
 */
class NetworkTwoTest {

  private static final double TWELVE_DIGITS = 5.01e-13;
  private static final double LIMIT = 2e-12;
  private static final String[] REPORTS = {".yy", "yn.", "yyy"};

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "reading and reports | .000942483669 | .000942165232 | .013613014322 | .013589827104 | .000065631760 | .000065508546",
        "sound | .000400527261 | .000400662633 | .000229827554 | .000230219690 | .000186085990 | .000186435996",
        "f | .908758557614 | .908687026842 | .984800816222 | .984774914444 | .943601600131 | .943487759815",
        "h | .096661404487 | .096524462781 | .051132171865 | .051058956749 | .202342085756 | .202028435979",
        "g | .638543561294 | .638577869285 | .059838837805 | .059838517128 | .532979847144 | .533026537923",
        "r1 | .014722353497 | .014720094742 | .064060304106 | .064121433376 | .047618171769 | .047640548067",
        "r2 | .098109471263 | .098134690210 | .020038752886 | .020038814556 | .097143262544 | .097195837169",
        "mean of f | .616365302223 | .616300707571 | .757697047803 | .757496303788 | .735192449715 | .735081422274",
        "mean of g | .644750582776 | .645830172589 | .498846704204 | .498836516019 | .622119402991 | .623195009873",
      })
  void probabilities(
      String what,
      double gridA,
      double limitA,
      double gridB,
      double limitB,
      double gridD,
      double limitD) {
    double[] grid = {gridA, gridB, gridD};
    double[] limit = {limitA, limitB, limitD};
    NetworkTwo onGrid = new NetworkTwo(NetworkTwo.Rule.grid());
    NetworkTwo fine = new NetworkTwo(NetworkTwo.Rule.fine());
    for (int q = 0; q < REPORTS.length; q++) {
      String message = what + ", " + REPORTS[q];
      assertEquals(grid[q], asked(onGrid, REPORTS[q], what), TWELVE_DIGITS, message);
      assertEquals(limit[q], asked(fine, REPORTS[q], what), LIMIT, message);
    }
  }

  private static double asked(NetworkTwo network, String reports, String what) {
    SymptomPosterior posterior = SymptomPosterior.of(network.machine, NetworkTwo.reports(reports));
    return switch (what) {
      case "reading and reports" -> network.density * Math.exp(posterior.logLikelihood());
      case "sound" -> posterior.sound();
      case "f" -> posterior.marginal(0, 1) + posterior.marginal(0, 3);
      case "h" -> posterior.marginal(0, 2) + posterior.marginal(0, 3);
      case "g" -> posterior.marginal(1, 1);
      case "r1" -> posterior.marginal(2, 1) + posterior.marginal(2, 3);
      case "r2" -> posterior.marginal(2, 2) + posterior.marginal(2, 3);
      case "mean of f" -> network.meanOfF(posterior);
      case "mean of g" -> network.meanOfG(posterior);
      default -> throw new IllegalArgumentException(what);
    };
  }
}
