/** How good the diagnosis is, told to a person. It knows neither commands nor the disk. */
package kelter.cli.simulation;
