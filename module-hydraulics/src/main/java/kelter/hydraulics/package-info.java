/**
 * The module of everything that has to do with water in an appliance, as the core finds it. What it
 * computes stands in the packages below; this one only gathers it.
 *
 * <p>Stability: may change.
 */
package kelter.hydraulics;
