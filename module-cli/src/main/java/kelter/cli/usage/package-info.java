/**
 * What a command takes, as records; how the words of a command line are read by them, with all
 * mistakes told at once; and the help that is written from them. It knows no command, and only the
 * reader knows the library that splits the words.
 */
package kelter.cli.usage;
