package kelter.cli.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.Set;
import kelter.cli.template.ShortJob;
import kelter.core.catalogue.Kind;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.file.catalogue.KindFile;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.job.Job;
import kelter.core.module.CalculationModule;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;

/**
 * Calls that were written without sight of the kinds' files, entered by what the technician said.
 * Nothing was read on the machine. The score is the one that was found; it must not fall. The files
 * are not to be tuned to these calls.
 */
class ThirtyCallsTest {

  private static final int FIRST = 20;
  private static final int AMONG_THREE = 27;
  private static final int FURTHER_FIRST = 18;
  private static final int FURTHER_AMONG_THREE = 26;
  private static final int FEW = 3;

  private static final Workshop WORKSHOP = Workshop.of(ServiceLoader.load(CalculationModule.class));

  @Test
  void findsAsManyCausesAsItDid() throws IOException {
    List<Json> calls = calls("thirty-calls.json");
    Set<String> without = new HashSet<>(KindFile.shipped());
    without.removeAll(kinds(calls));

    assertEquals(30, calls.size());
    assertEquals(Set.of("induction-hob", "plate-hob"), without, "kinds that came later");
    assertFound(calls, FIRST, AMONG_THREE);
  }

  /** All of them by somebody else, who had not seen the tool either. */
  @Test
  void findsThoseOfFurtherCalls() throws IOException {
    List<Json> calls = calls("further-calls.json");

    assertEquals(32, calls.size());
    assertEquals(Set.copyOf(KindFile.shipped()), kinds(calls));
    assertFound(calls, FURTHER_FIRST, FURTHER_AMONG_THREE);
  }

  private static Set<String> kinds(List<Json> calls) {
    Set<String> kinds = new HashSet<>();
    calls.forEach(call -> kinds.add(text((Json.Obj) call, "kind")));
    return kinds;
  }

  private static void assertFound(List<Json> calls, int first, int amongThree) {
    List<Integer> places = places(calls);
    assertTrue(upTo(1, places) >= first, "first: " + places);
    assertTrue(upTo(FEW, places) >= amongThree, "among three: " + places);
  }

  /** What came out, in sentences for the page on the method. */
  static List<String> told() throws IOException {
    return List.of(told("thirty-calls.json"), told("further-calls.json"));
  }

  private static String told(String name) throws IOException {
    List<Integer> places = places(calls(name));
    return "Of %d calls, the cause was named first in %d and among the first three in %d"
        .formatted(places.size(), upTo(1, places), upTo(FEW, places));
  }

  /** The place of the best of the causes of each call. */
  private static List<Integer> places(List<Json> calls) {
    List<Integer> places = new ArrayList<>();
    for (Json call : calls) {
      Json.Obj told = (Json.Obj) call;
      places.add(place(diagnosis(told), new HashSet<>(texts(told, "causes"))));
    }
    return places;
  }

  private static long upTo(int most, List<Integer> places) {
    return places.stream().filter(place -> place <= most).count();
  }

  private static int place(Diagnosis diagnosis, Set<String> causes) {
    int best = Integer.MAX_VALUE;
    for (String cause : causes) {
      best = Math.min(best, Standing.of(diagnosis, cause, causes).place());
    }
    return best;
  }

  private static Diagnosis diagnosis(Json.Obj call) {
    Kind kind = WORKSHOP.kinds().kind(text(call, "kind")).orElseThrow();
    ShortJob entered =
        new ShortJob(kind.id(), "2026-01-15", WORKSHOP.vocabulary(), kind.symptoms())
            .job("market", Optional.of("EU"))
            .machine("age", Optional.of(text(call, "age")))
            .said(Optional.of(text(call, "said")));
    texts(call, "entered").forEach(entered::symptom);
    Job job = WORKSHOP.read(entered.content()).job();
    return WORKSHOP.open(job).diagnosis();
  }

  private static List<Json> calls(String name) throws IOException {
    try (InputStream in = ThirtyCallsTest.class.getResourceAsStream(name)) {
      Json.Obj file = (Json.Obj) JsonText.read(in.readAllBytes(), name, "");
      return ((Json.Arr) file.members().get("calls")).items();
    }
  }

  private static String text(Json.Obj call, String name) {
    return ((Json.Str) call.members().get(name)).text();
  }

  private static List<String> texts(Json.Obj call, String name) {
    List<String> texts = new ArrayList<>();
    for (Json item : ((Json.Arr) call.members().get(name)).items()) {
      texts.add(((Json.Str) item).text());
    }
    return texts;
  }
}
