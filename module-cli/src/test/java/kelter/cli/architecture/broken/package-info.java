/** A small house that breaks every rule. Its classes are never run. */
package kelter.cli.architecture.broken;
