/**
 * What all parts that can leak to earth share: how a leak shows, and what insulation must have at
 * least. It knows no part.
 */
package kelter.electrical.insulation;
