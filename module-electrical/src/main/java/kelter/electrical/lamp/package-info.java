/** The lamp inside a machine. */
package kelter.electrical.lamp;
