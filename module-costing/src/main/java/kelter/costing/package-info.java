/**
 * The door of the costing module: what it can compute and how it weighs options. The laws
 * themselves stand in the sub-packages.
 *
 * <p>Stability: may change.
 */
package kelter.costing;
