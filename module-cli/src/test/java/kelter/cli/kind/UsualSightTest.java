package kelter.cli.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kelter.core.vocabulary.OwnersWords;
import kelter.core.vocabulary.Symptoms;
import kelter.core.workshop.Case;
import org.junit.jupiter.api.Test;

/** What is usual accuses nothing, and what the owner plainly says points to its cause. */
class UsualSightTest {

  private static final String VACUUM = "'kind': 'vacuum-cleaner', 'age': '8 a'";

  @Test
  void takesADustyFilterAsUsual() {
    double before =
        TypedJob.chance(TypedJob.open(VACUUM, "'weak-suction': 'yes'"), "filter.clogged");
    double dusty =
        TypedJob.chance(
            TypedJob.open(VACUUM, "'weak-suction': 'yes'", "filter.dirt=dusty"), "filter.clogged");
    double clogged =
        TypedJob.chance(
            TypedJob.open(VACUUM, "'weak-suction': 'yes'", "filter.dirt=clogged"),
            "filter.clogged");

    assertTrue(dusty < 1.3 * before, () -> before + " " + dusty);
    assertTrue(clogged > 0.9, () -> "" + clogged);
  }

  @Test
  void asksForTheCordThatIsWiggled() {
    assertTrue(
        OwnersWords.named(
                "It goes off and on when I walk with it. If I wiggle the cable near the plug it runs"
                    + " again.",
                Symptoms.ALL)
            .contains(Symptoms.CUTS_IN_AND_OUT));

    Case machine = TypedJob.open(VACUUM, "'cuts-in-and-out': 'yes'");

    assertEquals("supply-cord.broken", machine.diagnosis().faults().get(0).fault().key());
  }

  /** Copper is not seen; the hob is in order. */
  @Test
  void asksForThePanBeforeTheHob() {
    assertTrue(
        OwnersWords.named("Since I have my new copper pans it flashes a U.", Symptoms.ALL)
            .contains(Symptoms.PAN_NOT_SEEN));

    String hob = "'kind': 'induction-hob', 'age': '3 a'";
    Case told = TypedJob.open(hob, "'stops-in-cycle': 'yes', 'pan-not-seen': 'yes'");
    Case shown =
        TypedJob.open(
            hob,
            "'stops-in-cycle': 'yes', 'pan-not-seen': 'yes'",
            "pan.magnet-falls-off=yes",
            "pan.good-pan-heats=yes");

    assertEquals("pan.unsuitable", told.diagnosis().faults().get(0).fault().key());
    assertTrue(TypedJob.chance(shown, "pan.unsuitable") > 0.95);
    assertEquals(
        List.of("show-pan"),
        shown.diagnosis().plan().stream().map(each -> each.remedy().id()).limit(1).toList());
  }
}
