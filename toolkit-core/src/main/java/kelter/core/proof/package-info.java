/**
 * Whether work has cured a machine: readings as found and as left side by side, the tests on the
 * way back to power, what is still open. It says which entered readings meet which limit, and never
 * more.
 *
 * <p>Stability: may change.
 */
package kelter.core.proof;
