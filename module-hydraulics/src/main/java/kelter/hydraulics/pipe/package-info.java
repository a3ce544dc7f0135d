/**
 * What a hose, a fitting, a blockage or a jet takes from the head of the water that flows through
 * it. It knows water but neither pumps nor machines.
 *
 * <p>Stability: may change.
 */
package kelter.hydraulics.pipe;
