/**
 * Calls of plugins: whatever one of them does wrong is told as its own, with the call and the
 * reason, and the rest goes on. A plugin is code that runs with the rights of the user, and is
 * trusted as such: this guards against mistakes, not against malice. Nothing here is loaded while
 * no plugin is.
 */
package kelter.cli.plugin;
