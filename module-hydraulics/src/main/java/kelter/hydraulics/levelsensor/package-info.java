/** The level sensor with its air trap and tube: words, checks, physics and faults. */
package kelter.hydraulics.levelsensor;
