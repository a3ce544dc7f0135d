import java.sql.Driver;
import kelter.core.module.CalculationModule;

/**
 * The command line of Kelter: it finds the modules, binds them into one injector, runs the commands
 * and is the only part that writes to the terminal.
 *
 * <p>Modules are found by ServiceLoader on the module path and in the plugin folder that the user
 * names, there in a module layer of its own for each plugin.
 */
// Guice has no module descriptor; its automatic module name com.google.guice is stable.
@SuppressWarnings("requires-automatic")
module kelter.cli {
  requires com.fasterxml.jackson.core;
  requires com.google.guice;
  requires com.samskivert.jmustache;
  requires jakarta.inject;
  requires java.sql;
  requires kelter.core;
  requires org.apache.commons.cli;
  requires org.jline.reader;

  uses CalculationModule;
  // Drivers of the databases that a job book may be in; looked for by the commands of the book.
  uses Driver;

  // The main class, which a runtime image starts by its name.
  exports kelter.cli;

  // Guice makes the workshop.
  opens kelter.cli.wiring to
      com.google.guice;
}
