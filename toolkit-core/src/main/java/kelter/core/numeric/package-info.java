/**
 * Roots and integrals of functions of one variable. It knows numbers only; whoever knows what a
 * function means tells why it has a root.
 *
 * <p>Stability: internal.
 */
package kelter.core.numeric;
