/**
 * How water comes into a machine: the supply, the hose, the valve, the time to fill and the surge
 * when it closes. It knows neither jobs nor faults.
 *
 * <p>Stability: may change.
 */
package kelter.hydraulics.fill;
