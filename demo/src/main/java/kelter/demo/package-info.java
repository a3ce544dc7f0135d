/** A module from outside and programs on the core alone. It knows nothing of the other modules. */
package kelter.demo;
