/**
 * Spray arms: banks of jets, what some closed ones do, and whether the reaction of the jets turns
 * the arm. It knows jets but neither pumps nor faults.
 *
 * <p>Stability: may change.
 */
package kelter.hydraulics.spray;
