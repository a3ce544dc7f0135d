/** Control boards and small electronics, by what goes in and what comes out. */
package kelter.electrical.control;
