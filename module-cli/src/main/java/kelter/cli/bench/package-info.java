/** What a led case says on the terminal. It knows the session and no commands. */
package kelter.cli.bench;
