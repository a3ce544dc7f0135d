package kelter.core.diagnosis.symptom.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Reports of symptoms on four groups, against figures of twelve digits that were worked out outside
 * the project by adding up all joint states and all sets of symptoms.
 */
class NetworkOneTest {

  private static final double TWELVE_DIGITS = 5.01e-13;
  private static final String[] QUERIES = {"Q1", "Q3", "Q4", "Q6"};

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "reports | .271934387142 | .042470873318 | .010847049622 | .000213601542",
        "sound | .072186530752 | .004700019043 | .003315249323 | .001200844651",
        "a1 | .023478758138 | .007368000265 | .471210683869 | .154243556408",
        "a2 | .021774266476 | .013912894270 | .178929368839 | .066122034549",
        "a3 | .059039458164 | .008363884322 | .140903240807 | .109225267777",
        "b1 | .390140886413 | .826810316761 | .340518956451 | .533666859263",
        "b2 | .211569313923 | .090275046683 | .433921710220 | .377149771789",
        "b3 | .069939795858 | .093765711260 | .111778584900 | .094686978071",
        "b4 | .011578874406 | .002512985676 | .113190854805 | .059535946877",
        "U_B | - | .009957816018 | .047724826583 | .031969501903",
        "c1 | .023823615801 | .003495807257 | .102540686478 | .034753306782",
        "c2 | .091394641915 | .026526073811 | .099427270523 | .048776002338",
        "c3 | .094529975713 | .017122427510 | .011541043607 | .014767094815",
        "c4 | .023698349249 | .074960077088 | .019436254691 | .055108856598",
        "c5 | .016409079520 | .012052542705 | .024929061498 | .023628000935",
        "U_C | - | .002786497681 | .005936860694 | .004466058970",
        "d1 | .059522755027 | .478228634975 | .050075413999 | .325535516609",
        "d2 | .035692340781 | .144983877092 | .108344597282 | .456840441826",
        "d3 | .035467112201 | .011324829753 | .107243995205 | .076136816497",
        "s1 by no group | .954666372793 | .991497711979 | .167618000666 | .728097015822",
        "s2 by no group | .181349461631 | .040765209217 | .375087918628 | .131790388269",
        "s3 by no group | .839890139703 | .991471170995 | .134520426392 | .086525546494",
        "s4 by no group | .917752047289 | .327157792173 | .884736124241 | .213558905942",
      })
  void probabilities(String what, String q1, String q3, String q4, String q6) {
    String[] expected = {q1, q3, q4, q6};
    for (int q = 0; q < QUERIES.length; q++) {
      if (!expected[q].equals("-")) {
        NetworkOne network = NetworkOne.of(QUERIES[q]);
        SymptomPosterior posterior = SymptomPosterior.of(network.machine(), network.reports);
        String message = what + ", " + QUERIES[q];
        assertEquals(
            Double.parseDouble(expected[q]),
            asked(network, posterior, what),
            TWELVE_DIGITS,
            message);
      }
    }
  }

  private static double asked(NetworkOne network, SymptomPosterior posterior, String what) {
    return switch (what) {
      case "reports" -> Math.exp(posterior.logLikelihood());
      case "sound" -> posterior.sound();
      case "s1 by no group" -> posterior.madeByNoGroup(0);
      case "s2 by no group" -> posterior.madeByNoGroup(1);
      case "s3 by no group" -> posterior.madeByNoGroup(2);
      case "s4 by no group" -> posterior.madeByNoGroup(3);
      default -> network.fault(posterior, what);
    };
  }

  @ParameterizedTest
  @CsvSource({
    "Q1, b1, .286394430496",
    "Q3, b1 d1, .327609144377",
    "Q4, a1 b2, .118286418920",
    "Q6, b1 d2, .160454601711",
  })
  void likeliestState(String query, String name, double probability) {
    NetworkOne network = NetworkOne.of(query);
    SymptomPosterior posterior = SymptomPosterior.of(network.machine(), network.reports);
    JointState likeliest = posterior.likeliest(8).get(0);

    assertEquals(name, network.name(likeliest));
    assertEquals(probability, likeliest.probability(), TWELVE_DIGITS);
    assertEquals(probability, posterior.joint(likeliest.states()), TWELVE_DIGITS);
  }
}
