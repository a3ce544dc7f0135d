/**
 * Readings of pumps and hoses held against their curve, their operating point and their nameplate.
 * It knows nothing of faults: it says what is outside its limits, not why.
 */
package kelter.hydraulics.check;
