/**
 * Laws of the air in appliances: fans, ducts, what air carries of heat and water, suction, and what
 * ice and leaks cost a cold cabinet. It knows no part.
 *
 * <p>Stability: may change.
 */
package kelter.hydraulics.air;
