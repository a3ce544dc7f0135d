/**
 * Calls that are drawn, to see how good the diagnosis is over all kinds of machines, and calls that
 * were written by hand without sight of the files. A long trial is started from {@code src/bench}.
 */
package kelter.cli.trial;
