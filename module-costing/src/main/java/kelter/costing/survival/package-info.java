/**
 * Lives learned from a shop's own jobs, machines that have not failed yet included. Nothing here
 * knows of money or of the studies.
 *
 * <p>Stability: may change.
 */
package kelter.costing.survival;
