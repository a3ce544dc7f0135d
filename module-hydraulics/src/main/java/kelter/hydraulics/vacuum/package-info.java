/**
 * The way of the air in a vacuum cleaner: hose, bag, body. Words, checks, physics and faults;
 * chances, spreads and thresholds are from memory.
 */
package kelter.hydraulics.vacuum;
