/** The way of the brewing water in an espresso machine: tank valve, pump, valves, jet, screen. */
package kelter.hydraulics.brew;
