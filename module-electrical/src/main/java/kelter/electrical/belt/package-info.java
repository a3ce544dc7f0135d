/** A belt. */
package kelter.electrical.belt;
