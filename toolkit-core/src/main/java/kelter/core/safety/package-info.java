/** What can hurt a person or a floor, and the words that go in front of a step. */
package kelter.core.safety;
