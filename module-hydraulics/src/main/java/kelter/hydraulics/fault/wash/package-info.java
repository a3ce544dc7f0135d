/**
 * What can be wrong on the circuit of the wash water: wash pump, filter, passage and jets, and how
 * it would show. It knows nothing of the other groups of parts.
 */
package kelter.hydraulics.fault.wash;
