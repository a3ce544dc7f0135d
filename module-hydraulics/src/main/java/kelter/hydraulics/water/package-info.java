/**
 * Properties of water from 0 to 100 °C at the pressure of the air, by the formulations of the
 * International Association for the Properties of Water and Steam. It knows nothing of hoses, pumps
 * or machines; detergent, salt and air in the water are left out.
 *
 * <p>Stability: may change.
 */
package kelter.hydraulics.water;
