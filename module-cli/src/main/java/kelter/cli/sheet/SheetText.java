package kelter.cli.sheet;

import java.util.Optional;
import java.util.stream.Collectors;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Figures;
import kelter.cli.text.Layout;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Component;
import kelter.core.sheet.Bag;
import kelter.core.sheet.WorkSheet;
import kelter.core.workshop.Case;

/** Work sheets and bags as text. */
public final class SheetText {

  private static final String CAUTION = "! ";

  /** The chance of a cure from which work is more than a trial. */
  private static final double LIKELY = 0.5;

  private final Terminal terminal;

  /**
   * Texts for a terminal.
   *
   * @param terminal where they will be shown
   */
  public SheetText(Terminal terminal) {
    this.terminal = terminal;
  }

  /**
   * The parts to take along.
   *
   * @param machine the case
   * @param bag the parts
   * @return the text, which fits a narrow screen
   */
  public String bag(Case machine, Bag bag) {
    Layout layout = new Layout(terminal);
    head(machine, layout);
    layout.heading("Take along");
    boolean any = false;
    for (Bag.Item item : bag.items()) {
      if (item.worth()) {
        any = true;
        layout.hanging("[ ] ", item(item));
      }
    }
    if (!any) {
      layout.line("No part is worth taking along.");
    }
    boolean left = false;
    for (Bag.Item item : bag.items()) {
      if (!item.worth()) {
        if (!left) {
          layout.heading("Not worth it by their chance");
          left = true;
        }
        layout.hanging("- ", item(item));
      }
    }
    return layout.toString();
  }

  private static String item(Bag.Item item) {
    String stock = item.inVan().isPresent() ? "; in the van: " + item.inVan().getAsInt() : "";
    return "%s: %s (%s%s)"
        .formatted(
            Component.words(item.remedy().component()),
            item.remedy().title(),
            Figures.percent(item.chance()),
            stock);
  }

  /**
   * A work sheet.
   *
   * @param machine the case
   * @param sheet the sheet
   * @return the text
   */
  public String sheet(Case machine, WorkSheet sheet) {
    Layout layout = new Layout(terminal);
    if (!sheet.first().isEmpty()) {
      layout.hanging(CAUTION, terminal.attention("DANGER: " + sheet.first()));
    }
    head(machine, layout);
    if (sheet.remedies().isEmpty()) {
      return layout
          .blank()
          .line(
              machine.lockOut().barsAll()
                  ? "No work on it is for this tool."
                  : "No work is likely enough to be worth it.")
          .toString();
    }
    layout.hanging(
        "Work: ",
        sheet.remedies().stream().map(Remedy::title).collect(Collectors.joining("; ")) + ".");
    chance(machine, sheet)
        .filter(cure -> cure < LIKELY)
        .ifPresent(
            cure ->
                layout.line(
                    "It is not decided: the chance that this cures it is %s. 'kelter bench' leads on."
                        .formatted(Figures.percent(cure))));
    for (WorkSheet.Section section : sheet.sections()) {
      layout.heading(section.title());
      int number = 0;
      for (String said : section.steps()) {
        SheetStep step = SheetStep.of(said);
        number += step.caution() ? 0 : 1;
        layout.hanging(
            step.caution() ? "    " + CAUTION : "%2s. ".formatted(number),
            step.caution() ? terminal.attention(step.signal() + ": " + step.text()) : step.text());
      }
    }
    return layout.blank().line(SheetHead.STANDING).toString();
  }

  /** The chance that the work cures, where the diagnosis proposes it. */
  private static Optional<Double> chance(Case machine, WorkSheet sheet) {
    return machine.diagnosis().plan().stream()
        .filter(step -> step.remedy().key().equals(sheet.remedies().get(0).key()))
        .map(Diagnosis.PlanStep::probabilityOfCure)
        .findFirst();
  }

  private static void head(Case machine, Layout layout) {
    layout.line(machine.job().id() + ": " + SheetHead.machine(machine.job()));
  }
}
