/** The water softener of a dishwasher or glasswasher with its salt and its valve. */
package kelter.hydraulics.softening;
