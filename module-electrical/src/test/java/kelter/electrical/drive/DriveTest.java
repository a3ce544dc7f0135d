package kelter.electrical.drive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.testkit.ledger.NoOutsideCheck;
import kelter.testkit.ledger.OutsideCheck;
import org.junit.jupiter.api.Test;

class DriveTest {

  /** A printed example of a belt maker: 0.11 kg/m, 0.17 m, 220 Hz; it prints 610 N, rounded. */
  @OutsideCheck(
      of = "belt-tension",
      against = "a printed example of a belt maker, which is not named")
  @Test
  void tensionOfABelt() {
    assertEquals(610, BeltTension.tension(0.11, 0.17, 220), 6);
    assertEquals(4 * 0.11 * 0.0289 * 48_400, BeltTension.tension(0.11, 0.17, 220), 0.1);
  }

  /** The law of the string: a quarter of the tension sounds an octave lower. */
  @Test
  void aQuarterOfTheTensionHalvesTheNote() {
    assertEquals(0.5, BeltTension.note(0.25), 1e-12);
    assertEquals(0, BeltTension.note(0));
  }

  /** By hand: a drum of 580 mm at 52 rpm has 30 160, a pulley of 11.5 mm at 2800 rpm 32 200. */
  @NoOutsideCheck(
      of = "belt-slip",
      because = "a ratio of two speeds by its definition; worked by hand")
  @Test
  void slipOfABelt() {
    assertEquals(1 - 30_160.0 / 32_200, BeltSlip.slip(2800 / 60.0, 0.0115, 52 / 60.0, 0.58), 1e-9);
  }

  /** By hand: 22 mm at 0.04 mm an hour are 550 h; an EU rule asks 500 h of vacuum motors. */
  @NoOutsideCheck(
      of = "brush-life",
      because =
          "no printed example was found of a length divided by a rate of wear; worked by" + " hand")
  @Test
  void hoursOfBrushes() {
    assertEquals(550, BrushLife.left(0.030, 0.008, BrushLife.USUAL_RATE) / 3600, 1e-6);
    assertEquals(0, BrushLife.left(0.007, 0.008, BrushLife.USUAL_RATE));
  }

  /** A printed example: 1800 rpm, 8 balls, 10 mm on 50 mm: 12, 96, 144 and 72 Hz. */
  @OutsideCheck(of = "bearing-frequencies", against = "a printed example, which is not named")
  @Test
  void frequenciesOfABearing() {
    BearingFrequencies all = BearingFrequencies.of(30, 8, 0.2, 1);
    assertEquals(12, all.cage(), 1e-9);
    assertEquals(96, all.outer(), 1e-9);
    assertEquals(144, all.inner(), 1e-9);
    assertEquals(72, all.ball(), 1e-9);
  }

  /** A worked exercise: 13 % are left after 100 swings; decrement 0.0204, damping 0.00325. */
  @OutsideCheck(of = "damped-swing", against = "a worked exercise, which is not named")
  @Test
  void dampingOfASwing() {
    double decrement = DampedSwing.decrement(0.13, 100);
    assertEquals(0.0204, decrement, 0.00005);
    assertEquals(0.00325, DampedSwing.damping(decrement), 0.000005);
  }

  /** Each swing a third of the last is a damping of 0.17, and three swings leave a 27th. */
  @Test
  void aThirdEachSwing() {
    assertEquals(0.17, DampedSwing.damping(DampedSwing.decrement(1 / 3.0, 1)), 0.005);
    double damping = DampedSwing.damping(Math.log(3));
    assertEquals(3, DampedSwing.swings(damping, 1 / 27.0), 1e-9);
    assertTrue(DampedSwing.swings(0.1, 0.1) > DampedSwing.swings(0.3, 0.1));
  }

  @Test
  void impossibleFiguresAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> BeltTension.tension(0, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> BeltSlip.slip(0, 1, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> BrushLife.left(1, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> BearingFrequencies.of(1, 8, 1.5, 1));
    assertThrows(IllegalArgumentException.class, () -> DampedSwing.decrement(0, 1));
    assertThrows(IllegalArgumentException.class, () -> DampedSwing.swings(1.2, 0.1));
  }

  /**
   * By hand, with balls that touch at 60° (cosine 0.5): k = 0.2 · 0.5 = 0.1, so 15 · 0.9 = 13.5, 8
   * · 13.5 = 108, 8 · 15 · 1.1 = 132 and 15 · 0.99 / 0.2 = 74.25 Hz.
   */
  @Test
  void anInclinedContactBringsTheFrequenciesCloser() {
    BearingFrequencies all = BearingFrequencies.of(30, 8, 0.2, 0.5);
    assertEquals(13.5, all.cage(), 1e-9);
    assertEquals(108, all.outer(), 1e-9);
    assertEquals(132, all.inner(), 1e-9);
    assertEquals(74.25, all.ball(), 1e-9);
  }
}
