package kelter.core.workshop.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.Outcome;
import kelter.core.book.ReadingTaken;
import kelter.core.catalogue.KindPart;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Measurement.Stage;
import kelter.core.job.SymptomReport;
import kelter.core.job.work.Closing;
import kelter.core.job.work.PartUsed;
import kelter.core.job.work.WorkDone;
import kelter.core.proof.Proof;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.workshop.Case;

/** Makes an entry of a job book of a closed case. Names of persons are left out. */
public final class ClosedCase {

  private static final double SECONDS_PER_MINUTE = 60;

  /** A prediction below this tells nothing of how good predictions are; own choice. */
  private static final double LEAST = 0.005;

  private final Case machine;
  private final Job job;
  private final Closing closing;

  private ClosedCase(Case machine, Closing closing) {
    this.machine = machine;
    this.job = machine.job();
    this.closing = closing;
  }

  /**
   * The entry of a case.
   *
   * @param machine the case
   * @return the entry; empty if the case is not closed
   */
  public static Optional<BookEntry> entry(Case machine) {
    return machine
        .job()
        .progress()
        .closing()
        .map(closing -> new ClosedCase(machine, closing).entry());
  }

  private BookEntry entry() {
    Optional<LocalDate> called =
        Optional.of(job.date()).filter(date -> !date.isEmpty()).map(LocalDate::parse);
    LocalDate closed = LocalDate.parse(closing.date());
    return new BookEntry(
        job.id(),
        called.filter(day -> !day.isAfter(closed)),
        closed,
        machine(),
        job.market(),
        job.complaint().said(),
        notes(),
        symptoms(),
        displayed(),
        outcome(),
        causes(),
        work(),
        readings(),
        predictions(),
        closing.charged(),
        job.progress().callBackOf().filter(first -> !first.equals(job.id())));
  }

  private BookedMachine machine() {
    Appliance appliance = job.appliance();
    OptionalDouble age =
        appliance.age().isPresent()
            ? OptionalDouble.of(QuantityKind.AGE.unit().fromSi(appliance.age().get().si()))
            : OptionalDouble.empty();
    return new BookedMachine(
        appliance.kind(),
        appliance.maker(),
        appliance.model(),
        appliance.serial(),
        age,
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  private String notes() {
    List<String> notes = new ArrayList<>();
    job.progress().work().forEach(each -> notes.add(each.note()));
    notes.add(closing.note());
    notes.removeIf(String::isBlank);
    return String.join("\n", notes);
  }

  private Map<String, SymptomReport.Answer> symptoms() {
    Map<String, SymptomReport.Answer> symptoms = new LinkedHashMap<>();
    job.complaint().symptoms().forEach(each -> symptoms.put(each.symptom(), each.answer()));
    return symptoms;
  }

  private List<String> displayed() {
    String displayed = job.complaint().displayed();
    return displayed.isBlank() ? List.of() : List.of(displayed);
  }

  private Outcome outcome() {
    boolean inspection = job.complaint().reason() == Complaint.Reason.INSPECTION;
    return switch (closing.outcome()) {
      case CURED -> isProven() ? Outcome.CURED : Outcome.UNKNOWN;
      case NOT_CURED -> Outcome.NOT_CURED;
      case LEFT ->
          inspection && closing.causes().isEmpty() ? Outcome.NOTHING_WRONG : Outcome.NOT_REPAIRED;
      case NOTHING_WRONG -> Outcome.NOTHING_WRONG;
      case REPLACED -> Outcome.NOT_REPAIRED;
      case STOPPED -> Outcome.STOPPED;
    };
  }

  /** A word alone teaches no cure, nor does what was read after the work and speaks against it. */
  private boolean isProven() {
    return Proof.of(machine).isProven();
  }

  private List<ConfirmedCause> causes() {
    return closing.causes().stream()
        .distinct()
        .map(
            key -> {
              String component = key.substring(0, key.indexOf('.'));
              String fault = key.substring(key.indexOf('.') + 1);
              return new ConfirmedCause(component, kindOf(component), fault);
            })
        .toList();
  }

  private String kindOf(String component) {
    return job.appliance()
        .component(component)
        .map(Component::kind)
        .or(() -> machine.kind().flatMap(kind -> kind.part(component)).map(KindPart::kind))
        .orElse(component);
  }

  private List<kelter.core.book.WorkDone> work() {
    List<kelter.core.book.WorkDone> all = new ArrayList<>();
    for (WorkDone work : job.progress().work()) {
      if (work.remedy().isPresent()) {
        String key = work.remedy().get();
        String component = key.substring(0, key.indexOf('.'));
        all.add(
            new kelter.core.book.WorkDone(
                kindOf(component),
                key.substring(key.indexOf('.') + 1),
                minutes(work.time()),
                parts(work),
                cured(key)));
      }
    }
    return all;
  }

  private static OptionalDouble minutes(Optional<Quantity> time) {
    return time.isPresent()
        ? OptionalDouble.of(time.get().si() / SECONDS_PER_MINUTE)
        : OptionalDouble.empty();
  }

  /** What its parts cost; empty where a price is missing, or currencies differ. */
  private static Optional<Money> parts(WorkDone work) {
    BigDecimal sum = BigDecimal.ZERO;
    for (PartUsed part : work.parts()) {
      if (part.price().isEmpty()
          || !part.price().get().currency().equals(work.parts().get(0).price().get().currency())) {
        return Optional.empty();
      }
      sum = sum.add(part.price().get().amount().multiply(BigDecimal.valueOf(part.count())));
    }
    return work.parts().isEmpty()
        ? Optional.empty()
        : Optional.of(new Money(sum, work.parts().get(0).price().get().currency()));
  }

  /** Whether work cured a confirmed cause; nobody knows of work for something else. */
  private Optional<Boolean> cured(String remedy) {
    boolean meant =
        machine.faults().stream()
            .filter(fault -> closing.causes().contains(fault.key()))
            .flatMap(fault -> fault.remedies().stream())
            .anyMatch(each -> each.key().equals(remedy));
    return switch (closing.outcome()) {
      case CURED -> meant && isProven() ? Optional.of(true) : Optional.empty();
      case NOT_CURED -> meant ? Optional.of(false) : Optional.empty();
      default -> Optional.empty();
    };
  }

  private List<ReadingTaken> readings() {
    List<ReadingTaken> readings = new ArrayList<>();
    for (Measurement each : job.measurements()) {
      if (each.stage() == Stage.AS_FOUND) {
        readings.add(
            new ReadingTaken(
                kindOf(each.component()),
                each.observable(),
                each.instrument().orElse(""),
                OptionalDouble.empty(),
                false));
      }
    }
    return readings;
  }

  private Map<String, Double> predictions() {
    return machine.diagnosis().faults().stream()
        .filter(each -> each.probability() >= LEAST)
        .collect(
            Collectors.toMap(
                each -> each.fault().key(),
                Diagnosis.FaultProbability::probability,
                (one, other) -> one,
                LinkedHashMap::new));
  }
}
