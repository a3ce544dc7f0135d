package kelter.cli.sheet;

import kelter.cli.text.StepText;
import kelter.core.job.Appliance;
import kelter.core.job.Job;
import kelter.core.sheet.WorkSheet;

/** What a work sheet says beside its steps. */
final class SheetHead {

  static final String STANDING =
      "Common practice, no source. The maker's instructions, local codes and licensed practice come"
          + " first. Who does the work says when the machine may be used.";

  private SheetHead() {}

  /** What is done, as a heading. */
  static String work(WorkSheet sheet) {
    return StepText.sentence(sheet.remedies().get(0).title());
  }

  /** Kind, maker and model. */
  static String machine(Job job) {
    Appliance appliance = job.appliance();
    String name = (appliance.maker() + " " + appliance.model()).strip();
    return appliance.kind() + (name.isEmpty() ? "" : ", " + name);
  }

  /** Which job of which day. */
  static String job(Job job) {
    return "Job " + job.id() + ", " + job.date();
  }
}
