/**
 * The kinds of components of which this module speaks: what can be measured or seen on them and
 * how, what their service figures are called, and what a pump was made for. It knows neither checks
 * nor faults.
 */
package kelter.hydraulics.part;
