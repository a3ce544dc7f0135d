/**
 * The protective conductor of a supply cord, and the signs of current or heat that take a machine
 * out of use. What leaks and what gets hot is told by the heating circuit.
 */
package kelter.electrical.supplycord;
