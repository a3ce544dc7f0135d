/**
 * What holds for the owner of a machine besides its prices: how it is used, what supplies cost, and
 * the terms of repair and replacement. It knows of no machine, reading or fault.
 *
 * <p>Stability: stable.
 */
package kelter.core.owner;
