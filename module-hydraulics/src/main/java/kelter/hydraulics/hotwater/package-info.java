/**
 * Laws of hot water: heating it as it flows, mixing, storing, expanding and boiling it.
 *
 * <p>Stability: may change.
 */
package kelter.hydraulics.hotwater;
