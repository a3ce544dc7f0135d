package kelter.core.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sentences as owners say them, made up here. */
class OwnersWordsTest {

  private static List<String> named(String sentence) {
    return OwnersWords.named(sentence, Symptoms.ALL).stream().map(Symptom::id).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "'There was a puddle on the floor this morning.', leaks",
    "'It won''t start at all', does-not-start",
    "'The water doesn''t get hot any more', stays-cold",
    "'It takes ages to drain', drains-slowly",
    "'It jumps about when it spins', vibrates",
    "'It knocks the RCD out', trips-rcd",
    "'It can’t drain', does-not-drain",
    "'Clothes are still damp after two hours', does-not-dry",
    "'I felt a tingle when I touched it', shock-felt",
    "'It takes two cycles now', does-not-dry",
    "'It takes for ever to dry', does-not-dry",
    "'It takes forever to get hot', heats-slowly",
    "'Five minutes and it is gone. It used to last for all of us', runs-out-early",
    "'The hot water doesn''t last', runs-out-early",
    "'Three hours and the towels are clammy', does-not-dry",
    "'The bottom of everything stays raw', uneven-heat",
  })
  void aSentenceNamesItsSymptom(String sentence, String symptom) {
    assertTrue(named(sentence).contains(symptom), named(sentence).toString());
  }

  /** Words of two clauses do not make a phrase. */
  @Test
  void aPhraseEndsWithItsClause() {
    assertEquals(List.of(), named("It does not, and heat is fine."));
    assertEquals(List.of(), named(""));
  }

  @Test
  void aSymptomIsFoundByItsIdOrItsWords() {
    assertEquals(List.of(Symptoms.STAYS_COLD), OwnersWords.meant("stays-cold", Symptoms.ALL));
    assertEquals(List.of(Symptoms.STAYS_COLD), OwnersWords.meant("Stays cold", Symptoms.ALL));
    assertEquals(List.of(Symptoms.TRIPS_RCD), OwnersWords.meant("rcd", Symptoms.ALL));
    assertEquals(List.of(), OwnersWords.meant("purple", Symptoms.ALL));
  }

  /**
   * Every symptom that is not shown by the machine itself has phrases, and all of them are known.
   */
  @Test
  void everySymptomCanBeSaid() {
    for (Symptom symptom : Symptoms.ALL) {
      boolean shown = symptom.id().startsWith("shows-");
      assertEquals(!shown, OwnersWords.isSaid(symptom), symptom.id());
    }
  }

  /** Words that fit several symptoms are for whoever tells them to part, not for the tool. */
  @ParameterizedTest
  @CsvSource({"slow", "too slow", "takes long", "takes for ever", "It takes forever"})
  void wordsThatOnlySayThatItTakesLongMeanAllThatMayTakeLong(String words) {
    List<Symptom> ofDryer = List.of(Symptoms.HEATS_SLOWLY, Symptoms.DOES_NOT_DRY, Symptoms.LOUD);

    assertEquals(
        List.of(Symptoms.HEATS_SLOWLY, Symptoms.DOES_NOT_DRY), OwnersWords.meant(words, ofDryer));
    assertEquals(
        List.of(Symptoms.DRAINS_SLOWLY),
        OwnersWords.meant(words, List.of(Symptoms.DRAINS_SLOWLY, Symptoms.LEAKS)));
  }
}
