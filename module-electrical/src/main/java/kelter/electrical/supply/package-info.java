/**
 * The supply at the outlet, for information: what it should be, how weak it is, what a joint
 * wastes. Mending it is work for a licensed electrician. Knows nothing of jobs.
 *
 * <p>Stability: may change.
 */
package kelter.electrical.supply;
