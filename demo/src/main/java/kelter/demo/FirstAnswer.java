package kelter.demo;

import java.nio.file.Path;
import java.util.ServiceLoader;
import kelter.core.module.CalculationModule;
import kelter.core.workshop.Case;
import kelter.core.workshop.Workshop;

/** Another program on the core alone: reads a job file, checks, diagnoses and weighs it. */
public final class FirstAnswer {

  private FirstAnswer() {}

  /**
   * Prints how many readings do not conform, the likeliest fault, what to measure next and the
   * cheapest option.
   *
   * @param arguments a job file
   */
  public static void main(String[] arguments) {
    Workshop workshop = Workshop.of(ServiceLoader.load(CalculationModule.class));
    Case machine = workshop.open(workshop.read(Path.of(arguments[0])));
    machine.findings().forEach(f -> System.out.println(f.id() + ": " + f.verdict().words()));
    System.out.println(machine.diagnosis().faults().get(0).fault().title());
    System.out.println(machine.diagnosis().next().get(0).question().key());
    System.out.println(machine.options(1).options().get(0).title());
  }
}
