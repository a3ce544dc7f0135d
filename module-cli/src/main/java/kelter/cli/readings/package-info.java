/**
 * From an instrument log to readings of a job: which windows, which columns, what a window is worth
 * with its instrument. It knows neither the command line nor how results are shown.
 */
package kelter.cli.readings;
