package kelter.core.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.catalogue.Cover;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindPart;
import kelter.core.catalogue.WorkSteps;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Component;
import kelter.core.problem.InputException;
import kelter.core.quantity.Nearest;
import kelter.core.safety.Caution;
import kelter.core.safety.lockout.StepsFor;
import kelter.core.workshop.Case;

/**
 * What to do for one piece of work, in order. It says what to do and what to hold against which
 * limit; that a machine may be used again is said by who did the work.
 *
 * @param first what the lock-out table says first; empty if nothing
 * @param remedies the work
 * @param sections the steps
 */
public record WorkSheet(String first, List<Remedy> remedies, List<Section> sections) {

  /**
   * Steps under a heading.
   *
   * @param title the heading
   * @param steps the steps, a sentence or two each
   */
  public record Section(String title, List<String> steps) {

    /** Copies the steps. */
    public Section {
      steps = List.copyOf(steps);
    }
  }

  /** Copies the lists. */
  public WorkSheet {
    remedies = List.copyOf(remedies);
    sections = List.copyOf(sections);
  }

  /**
   * The sheet for the work to be done first, or for a piece of work that somebody names.
   *
   * @param machine the case
   * @param bag what is taken along
   * @param known the steps that are known
   * @param words {@code component.remedy} of the work; empty for what the diagnosis puts first
   * @return the sheet
   * @throws InputException if no work of that name is known, or the table bars the part
   */
  public static WorkSheet of(Case machine, Bag bag, WorkSteps known, Optional<String> words) {
    List<Remedy> work = work(machine, words);
    WorkSteps onMachine = known.on(machine.kind());
    WorkSteps.Steps steps = onMachine.always();
    for (Remedy remedy : work) {
      steps =
          steps.and(
              onMachine.of(
                  machine.job().appliance().kind(),
                  remedy.component(),
                  kindOf(remedy.component(), machine)));
    }
    List<Section> sections = new ArrayList<>();
    add(sections, "Bring", bring(bag, steps));
    add(sections, "Isolate", machine.isolation().stream().map(StepsFor::text).toList());
    List<String> open = new ArrayList<>(opening(machine, work));
    open.addAll(steps.open());
    add(sections, "Open", open);
    add(sections, "Look at, while it is open", steps.look());
    add(sections, "Do", doing(work));
    add(sections, "Mind", steps.traps());
    add(sections, "Close", steps.close());
    add(sections, "Back to power", machine.backToPower().stream().map(StepsFor::text).toList());
    add(sections, "Run", steps.run());
    return new WorkSheet(machine.lockOut().text(), work, sections);
  }

  private static void add(List<Section> sections, String title, List<String> steps) {
    if (!steps.isEmpty()) {
      sections.add(new Section(title, steps));
    }
  }

  private static List<Remedy> work(Case machine, Optional<String> words) {
    if (words.isEmpty()) {
      List<Remedy> needed = machine.diagnosis().surelyNeeded();
      return needed.isEmpty()
          ? machine.diagnosis().plan().stream().map(Diagnosis.PlanStep::remedy).limit(1).toList()
          : needed;
    }
    for (Remedy remedy : machine.remedies()) {
      if (remedy.key().equals(words.get())) {
        return List.of(remedy);
      }
    }
    List<String> keys = machine.remedies().stream().map(Remedy::key).distinct().toList();
    throw new InputException(
        words.get(),
        "is no work that is known for this machine",
        Nearest.of(words.get(), keys)
            .map(near -> "did you mean '" + near + "'?")
            .orElse("'kelter diagnose --full' lists what may be done"));
  }

  private static String kindOf(String component, Case machine) {
    return machine
        .job()
        .appliance()
        .component(component)
        .map(each -> each.kind())
        .or(() -> part(component, machine).map(KindPart::kind))
        .orElse(component);
  }

  private static Optional<KindPart> part(String component, Case machine) {
    return machine.kind().flatMap(kind -> kind.part(component));
  }

  private static List<String> bring(Bag bag, WorkSteps.Steps steps) {
    List<String> bring = new ArrayList<>();
    for (Bag.Item item : bag.items()) {
      if (item.worth()) {
        bring.add(
            "Part for %s: %s (needed: %s %%)"
                .formatted(
                    Component.words(item.remedy().component()),
                    item.remedy().title(),
                    Math.round(100 * item.chance())));
      }
    }
    bring.addAll(steps.bring());
    return bring;
  }

  /** The covers in front of what is worked on, each once. */
  private static List<String> opening(Case machine, List<Remedy> work) {
    Set<String> opening = new LinkedHashSet<>();
    for (Remedy remedy : work) {
      Optional<KindPart> part = part(remedy.component(), machine);
      part.flatMap(KindPart::behind)
          .flatMap(id -> cover(id, machine.kind()))
          .ifPresent(
              cover ->
                  opening.add(
                      "Take off: %s (about %s, off and on)."
                          .formatted(cover.title(), cover.minutes().display())));
    }
    return List.copyOf(opening);
  }

  private static Optional<Cover> cover(String id, Optional<Kind> kind) {
    return kind.stream()
        .flatMap(each -> each.covers().stream())
        .filter(cover -> cover.id().equals(id))
        .findFirst();
  }

  private static List<String> doing(List<Remedy> work) {
    List<String> doing = new ArrayList<>();
    for (Remedy remedy : work) {
      for (Caution caution : remedy.cautions()) {
        doing.add("! " + caution.display());
      }
      doing.add(
          "%s: %s. About %s min."
              .formatted(
                  Component.words(remedy.component()),
                  remedy.title(),
                  Math.round(remedy.minutes())));
    }
    return doing;
  }
}
