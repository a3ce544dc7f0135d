/** The brush roll of a vacuum cleaner. */
package kelter.electrical.brushroll;
