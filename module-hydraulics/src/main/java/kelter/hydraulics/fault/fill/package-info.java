/**
 * What can be wrong on the way of the water in: supply, hose, screen and inlet valve, and how it
 * would show. It knows nothing of the other groups of parts.
 */
package kelter.hydraulics.fault.fill;
