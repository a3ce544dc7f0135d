/**
 * Laws of what turns: belts, brushes, rolling bearings, swings that die away. They know no part.
 *
 * <p>Stability: may change.
 */
package kelter.electrical.drive;
