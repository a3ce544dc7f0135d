/** A fan wheel on its shaft. */
package kelter.electrical.fanwheel;
