/** Parts at which this toolkit stops. */
package kelter.electrical.outofreach;
