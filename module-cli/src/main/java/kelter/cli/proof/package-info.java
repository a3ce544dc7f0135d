/** What was shown after the work, as text. It knows no commands. */
package kelter.cli.proof;
