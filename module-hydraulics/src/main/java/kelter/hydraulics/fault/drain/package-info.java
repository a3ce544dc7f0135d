/**
 * What can be wrong on the way of the water out: drain pump, strainer, hose and check valve, and
 * how it would show. It knows nothing of the other groups of parts.
 */
package kelter.hydraulics.fault.drain;
