/**
 * Finds the modules, on the module path and in the plugin folder, and binds them into one injector.
 * The only package that knows Guice.
 */
package kelter.cli.wiring;
