/** Readings of electrical parts held against nameplate, tables and limits. */
package kelter.electrical.check;
