/** The gravity drain valve of washer-extractors. */
package kelter.hydraulics.drainvalve;
