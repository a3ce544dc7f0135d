/**
 * The kinds of components of which this module speaks: what can be measured or seen on them and
 * how, and what their service figures are called. It knows neither checks nor faults.
 */
package kelter.hydraulics.part;
