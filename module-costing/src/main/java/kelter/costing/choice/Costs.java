package kelter.costing.choice;

/**
 * What the options cost, in units of the job's currency.
 *
 * @param labourPerHour the price of an hour of work
 * @param leastMinutes how many minutes of work are charged at least where something is mended
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
    double leastMinutes,
    double callOut,
    double callOutWithWork,
    double newMachine,
    double running,
    double runningNew,
    double waitForPart,
    double waitForMachine) {

  static final double MINUTES_PER_HOUR = 60;

  /**
   * What is charged beyond the work where there is little of it.
   *
   * @param minutes how long the work takes, in minutes
   * @return the amount
   */
  public double topUp(double minutes) {
    return labourPerHour * Math.max(0, leastMinutes - minutes) / MINUTES_PER_HOUR;
  }

  /**
   * The same with other prices.
   *
   * @param machine the price of a new machine, installed
   * @param old the running cost of the old machine a year
   * @param young the running cost of the new machine a year
   * @return the changed costs
   */
  public Costs with(double machine, double old, double young) {
    return new Costs(
        labourPerHour,
        leastMinutes,
        callOut,
        callOutWithWork,
        machine,
        old,
        young,
        waitForPart,
        waitForMachine);
  }

  /**
   * A new machine with the days until it is there.
   *
   * @return the amount
   */
  public double newMachineInAll() {
    return newMachine + waitForMachine;
  }
}
