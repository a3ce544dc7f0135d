package kelter.core.numeric;

/** Figures without the digits that the order of a sum decides. */
public final class Rounding {

  /** Of 52 digits of a double in base 2, so many are left out. */
  private static final int LEFT_OUT = 20;

  private Rounding() {}

  /**
   * A figure to compare others with, so that figures that should be equal are.
   *
   * @param figure any figure
   * @return the figure to about ten digits
   */
  public static double toCompare(double figure) {
    long bits = Double.doubleToLongBits(figure) + (1L << (LEFT_OUT - 1));
    return Double.isFinite(figure) ? Double.longBitsToDouble(bits >> LEFT_OUT << LEFT_OUT) : figure;
  }
}
