/**
 * What a hose, a fitting, a blockage or a jet takes from the head of the water that flows through
 * it. It knows water but neither pumps nor machines.
 */
package kelter.hydraulics.pipe;
