package kelter.cli.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.cli.wiring.Found;
import kelter.core.book.learned.Learned;
import kelter.core.book.learned.LearnedKind;
import kelter.core.file.catalogue.KindFile;
import kelter.core.file.json.JsonText;
import kelter.core.shop.Shop;
import kelter.core.workshop.Case;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a book taught moves shares; which parts a machine has, and what locks it out, it does not.
 */
class BookAndTableTest {

  private static final LearnedKind OF_ONE_JOB =
      new LearnedKind(1, 0.002, Map.of(), Map.of(), Map.of(), Map.of(), Map.of());

  static List<String> kinds() {
    return KindFile.shipped();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void aBookLocksNoMachineOut(String kind) {
    Case without = open(Workshop.of(Found.usual().modules()), kind);
    Workshop taught =
        Workshop.of(Found.usual().modules())
            .in(Shop.UNKNOWN.with(Optional.of(learned(Map.of(kind, OF_ONE_JOB)))));
    Case with = open(taught, kind);

    assertEquals(without.lockOut().text(), with.lockOut().text());
    assertEquals(without.lockOut().rows(), with.lockOut().rows());
    assertEquals(without.backToPower(), with.backToPower());
    assertEquals(
        without.diagnosis().faults().size(), with.diagnosis().faults().size(), "causes of " + kind);
  }

  private static Case open(Workshop workshop, String kind) {
    byte[] call = Call.of(kind).json("", "", "");
    return workshop.open(workshop.read(JsonText.read(call, "call", "")).job());
  }

  private static Learned learned(Map<String, LearnedKind> kinds) {
    return new Learned(
        LocalDate.of(2026, 1, 1),
        1,
        0.9,
        500,
        30,
        kinds,
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Optional.empty());
  }
}
