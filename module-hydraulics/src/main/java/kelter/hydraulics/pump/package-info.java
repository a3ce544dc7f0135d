/**
 * Pumps by themselves: their head from gauges, their curve from points, what speed does to them,
 * the power that they take and the bands that a standard allows. It knows neither the hoses behind
 * a pump nor what can be wrong with it.
 *
 * <p>Stability: may change.
 */
package kelter.hydraulics.pump;
