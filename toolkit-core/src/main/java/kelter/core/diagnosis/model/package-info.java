/**
 * How a module tells what can be wrong with a part: figures that faults change, fault rows that say
 * what they change, sections that solve the physics of a state once, and observable rows that read
 * a value off what was solved. The loops, the places in arrays, the bounds and the checks of what
 * comes out are here and nowhere else.
 *
 * <p>Stability: stable.
 */
package kelter.core.diagnosis.model;
