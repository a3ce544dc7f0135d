/** Programs on the core alone. They know nothing of the other modules. */
package kelter.demo;
