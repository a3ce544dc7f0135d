/**
 * Laws of what turns: belts, brushes, rolling bearings, swings that die away. They know no part.
 */
package kelter.electrical.drive;
