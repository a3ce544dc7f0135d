/** The electrical module by itself: what it adds to the core. */
package kelter.electrical;
