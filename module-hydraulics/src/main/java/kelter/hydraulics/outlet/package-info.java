/** Where water leaves a machine or meets its load: heads, taps, arms, drawers, windows. */
package kelter.hydraulics.outlet;
