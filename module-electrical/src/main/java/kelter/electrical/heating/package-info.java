/**
 * Heaters with what lies in their circuit: thermal links, relays, temperature sensors, supply and
 * cord; what can be read on them, what they may have, what can be wrong, and how it shows.
 */
package kelter.electrical.heating;
