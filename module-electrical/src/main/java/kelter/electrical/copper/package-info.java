/**
 * What all windings and coils of copper share: what one measures at the temperature of a reading,
 * and what it may measure. It knows no part.
 */
package kelter.electrical.copper;
