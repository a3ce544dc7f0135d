/** The terminal: the one place from which text reaches a person. It knows nothing of jobs. */
package kelter.cli.terminal;
