/**
 * The contract between the core and the modules that add computations: what a module is, what it
 * can compute, and how a computation is run and explained.
 *
 * <p>Stability: stable.
 */
package kelter.core.module;
