/** A module from outside and a program on the core alone. It knows nothing of the other modules. */
package kelter.demo;
