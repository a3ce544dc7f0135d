/**
 * Parts that air runs through: filters, ducts, flaps, coils. Words, checks, physics and faults;
 * chances, spreads and thresholds are from memory.
 */
package kelter.hydraulics.airway;
