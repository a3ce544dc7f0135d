/** A door with its latch, hinges and springs, and the lock that holds it. */
package kelter.electrical.door;
