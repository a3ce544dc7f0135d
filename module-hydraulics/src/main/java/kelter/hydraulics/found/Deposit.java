package kelter.hydraulics.found;

import kelter.core.diagnosis.model.Figure;

/** What has gathered or burnt where it is seen. */
enum Deposit implements Figure {
  /** Place on the scale from clean. */
  PLACE;

  @Override
  public double inOrder() {
    return 0.15;
  }
}
