/**
 * The suction side of a pump: how far the water is from boiling at its inlet. It knows water but
 * neither pumps nor faults.
 *
 * <p>Stability: may change.
 */
package kelter.hydraulics.suction;
