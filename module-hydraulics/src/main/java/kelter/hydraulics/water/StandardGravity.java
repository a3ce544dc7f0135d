package kelter.hydraulics.water;

/** The conventional acceleration of free fall, which ties a head to a pressure. */
public final class StandardGravity {

  /** 9.80665 m/s2, exact by definition (3rd CGPM, 1901; ISO 80000-3:2019, item 3-9.2). */
  public static final double G = 9.80665;

  private StandardGravity() {}
}
