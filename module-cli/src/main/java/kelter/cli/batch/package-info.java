/** Many jobs one after another, several at once. It knows no command and no terminal. */
package kelter.cli.batch;
