/** Laws of hot water: heating it as it flows, mixing, storing, expanding and boiling it. */
package kelter.hydraulics.hotwater;
