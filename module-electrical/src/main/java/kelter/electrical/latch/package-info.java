/** The latch that holds a carriage down. */
package kelter.electrical.latch;
