package kelter.cli.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import kelter.core.diagnosis.ChangedModel;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.file.catalogue.KindFile;
import org.junit.jupiter.api.Test;

/** Which causes no reading tells apart, and that there are no others. */
class AlikeTest {

  /** The faults that no reading tells from others, with the reason. */
  private static final Map<String, String> DECLARED =
      Map.of(
          "aged", "a heater loses less power than nameplates and supplies differ by",
          "valve-weak", "a valve that opens less takes less flow than supplies differ by",
          "internal-leak",
              "worn clearances take less head and flow than pumps of a kind differ by");

  @Test
  void everyOtherCauseIsToldByAReading() {
    List<String> undeclared = new ArrayList<>();
    for (String kind : KindFile.shipped()) {
      for (String cause : new TreeSet<>(Alike.of(kind).classes().keySet())) {
        if (!DECLARED.containsKey(cause.substring(cause.indexOf('.') + 1))) {
          undeclared.add(kind + ": " + cause);
        }
      }
    }

    assertEquals(List.of(), undeclared);
  }

  @Test
  void isTheSameFromBothSides() {
    Map<String, Set<String>> classes = Alike.of("dishwasher").classes();

    assertFalse(classes.isEmpty());
    classes.forEach(
        (one, others) -> {
          assertFalse(others.contains(one), one);
          others.forEach(other -> assertTrue(classes.get(other).contains(one), one + other));
        });
  }

  /** Where nothing is read, all are alike. */
  @Test
  void whatIsNotReadIsAlike() {
    List<FaultModel> blind = new ArrayList<>();
    for (FaultModel model : Alike.models("hob")) {
      blind.add(new Blind(model));
    }

    Set<String> like = Alike.of(blind).to("glass.cracked");

    assertTrue(like.contains("relay.coil-open"), like.toString());
    assertFalse(like.contains("glass.cracked"));
  }

  /** A model of which nothing is read. */
  private record Blind(FaultModel model) implements ChangedModel {

    @Override
    public List<Question> questions() {
      return List.of();
    }
  }
}
