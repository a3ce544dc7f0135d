/**
 * What can hurt a person or a floor, and the words that go in front of a step.
 *
 * <p>Stability: stable.
 */
package kelter.core.safety;
