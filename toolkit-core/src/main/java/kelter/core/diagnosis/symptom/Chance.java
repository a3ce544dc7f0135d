package kelter.core.diagnosis.symptom;

/** The rule for a chance. */
final class Chance {

  private Chance() {}

  static void require(String what, double chance) {
    if (!(chance >= 0 && chance <= 1)) {
      throw new IllegalArgumentException(what + " is " + chance + "; 0 to 1 is allowed");
    }
  }
}
