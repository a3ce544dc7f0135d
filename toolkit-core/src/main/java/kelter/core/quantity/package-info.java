/**
 * Units, quantities and the text that people write for them.
 *
 * <p>Unit codes are those of UCUM, the Unified Code for Units of Measure (version 2.2, ucum.org);
 * what a person types may also be a spelling of the trade. Nothing here knows of appliances, jobs
 * or instruments.
 *
 * <p>Stability: stable.
 */
package kelter.core.quantity;
