package kelter.cli.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import kelter.core.file.catalogue.KindFile;
import kelter.core.file.json.JsonText;
import kelter.core.quote.Offer;
import kelter.core.quote.Quote;
import kelter.core.safety.lockout.ActiveRow;
import kelter.core.shop.Offering;
import kelter.core.workshop.Case;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is said of a machine, no price goes round the lock-out table. */
class QuoteLockOutTest {

  private static final List<String> DANGERS =
      List.of("", "trips-rcd", "shock-felt", "sparks", "smokes", "smells-burnt", "taps-tingle");

  private static final List<String> WORDS =
      List.of("", "It smells of gas.", "Water runs out onto the outlet.", "The plug is scorched.");

  static List<String> kinds() {
    return KindFile.shipped();
  }

  private static Case open(Call call) {
    String text = new String(call.json("", "", ""), StandardCharsets.UTF_8).strip();
    String priced =
        text.substring(0, text.length() - 1)
            + ",\"prices\":{\"currency\":\"EUR\",\"labour-per-hour\":\"60 EUR\"}}";
    byte[] bytes = priced.getBytes(StandardCharsets.UTF_8);
    return Call.WORKSHOP.open(Call.WORKSHOP.read(JsonText.read(bytes, "call", "")).job());
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void noPriceGoesRoundTheTable(String kind) {
    for (String danger : DANGERS) {
      hold(open(danger.isEmpty() ? Call.of(kind) : Call.of(kind).answered(danger, "yes")));
    }
    for (String words : WORDS) {
      hold(open(Call.of(kind).said(words)));
    }
  }

  private static void hold(Case machine) {
    Quote quote = Quote.of(machine, Offering.UNKNOWN, LocalDate.of(2026, 1, 1));
    String which = machine.job() + " " + machine.lockOut().rows();
    assertEquals(
        machine.lockOut().barsAll(), quote.offers().isEmpty() && quote.stop().all(), which);
    Set<String> awaited = new TreeSet<>();
    boolean open = false;
    for (ActiveRow row : machine.lockOut().rows()) {
      open |= row.row().only().isEmpty() && !row.standing() && !row.quiet();
      row.openDead().forEach(each -> awaited.add(each.component()));
      row.openLast().forEach(each -> awaited.add(each.component()));
    }
    for (Offer offer : quote.offers()) {
      if (machine.lockOut().staysUnplugged()) {
        assertFalse(offer.id().equals(Offer.LEAVE), which);
      }
      boolean only = open;
      offer
          .work()
          .forEach(
              remedy -> {
                assertTrue(machine.lockOut().mends(remedy.component()), which);
                assertTrue(!only || awaited.contains(remedy.component()), remedy + which);
              });
    }
    if (machine.lockOut().barsAll()) {
      assertFalse(quote.stop().first().isEmpty(), which);
    }
  }
}
