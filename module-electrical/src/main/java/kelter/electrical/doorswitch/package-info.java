/** A door switch. */
package kelter.electrical.doorswitch;
