package kelter.costing.choice;

/**
 * What the options cost, in units of the job's currency.
 *
 * @param labourPerHour the price of an hour of work
 * @param callOut what coming costs if nothing is mended
 * @param callOutWithWork what is left of that if something is mended
 * @param newMachine the price of a new machine, installed
 * @param running the running cost of the old machine a year
 * @param runningNew the running cost of the new machine a year
 * @param waitForPart what the days cost the owner in which a part is awaited
 * @param waitForMachine what the days cost the owner in which a new machine is awaited
 */
public record Costs(
    double labourPerHour,
    double callOut,
    double callOutWithWork,
    double newMachine,
    double running,
    double runningNew,
    double waitForPart,
    double waitForMachine) {

  /**
   * A new machine with the days until it is there.
   *
   * @return the amount
   */
  public double newMachineInAll() {
    return newMachine + waitForMachine;
  }
}
