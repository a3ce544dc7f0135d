package kelter.cli.command.shop;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.catalogue.Learning;
import kelter.core.catalogue.MachineModel;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.file.catalogue.ModelFile;
import kelter.core.file.shop.ShopFolder;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Quantity;
import kelter.core.workshop.Case;
import kelter.core.workshop.Workshop;

/** {@code kelter model learn JOB}: a model file from a machine that is in order. */
public final class ModelLearnCommand implements Command {

  private static final CommandOption IN_ORDER =
      CommandOption.flag(
          "--in-order", "the machine is in order, although the job is no inspection");
  private static final CommandOption OUTPUT =
      CommandOption.one(
              "--output",
              ValueKind.FILE,
              "FILE",
              "where to write; an existing file is kept (default: the models of the shop's folder,"
                  + " else the terminal)")
          .or("-o");

  /** A machine with a fault that is likelier teaches nothing; own choice. */
  private static final double LIKELIEST_FAULT = 0.2;

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "model learn",
        "Write a model file from a job of a machine in order.",
        "What the job states is carried over, and readings become figures and curves. It is"
            + " refused if a finding does not conform or a fault is likelier than 20\u00a0%.",
        List.of(IN_ORDER, OUTPUT, Invocation.SHOP),
        List.of(Invocation.jobFile("a job file")),
        List.of(
            "kelter model learn demo/jobs/healthy-washer.json",
            "kelter model learn --shop my-shop washer-3"));
  }

  @Override
  public boolean diagnoses() {
    return true;
  }

  @Override
  public void run(Invocation invocation) {
    Job job = invocation.job();
    Workshop workshop = invocation.workshop();
    Optional<Path> output = invocation.given().path(OUTPUT);
    Optional<ShopFolder> folder =
        output.isPresent() ? Optional.empty() : invocation.shop().folder();
    requireInOrder(job, invocation.given().has(IN_ORDER), workshop);
    MachineModel model = learned(job, invocation.stated(), workshop);
    if (folder.isPresent()) {
      requireNew(model, workshop);
    }
    if (output.isPresent()) {
      ModelFile.writeNew(model, output.get());
    }
    Optional<Path> written = folder.isPresent() ? folder.map(to -> to.write(model)) : output;
    if (written.isEmpty() || invocation.isJson()) {
      invocation.terminal().printJson(ModelFile.text(model));
    } else {
      Layout layout = new Layout(invocation.terminal());
      tell(written.get(), model, invocation.stated(), layout);
      invocation.terminal().print(layout.toString());
    }
  }

  private static void requireInOrder(Job job, boolean inOrder, Workshop workshop) {
    List<Problem> problems = new ArrayList<>();
    if (!inOrder && job.complaint().reason() != Complaint.Reason.INSPECTION) {
      problems.add(
          new Problem(
              "job " + job.id(),
              "is no inspection: somebody complains of the machine",
              "learn from an inspection, or add " + IN_ORDER.name() + " if it is in order"));
    }
    Case machine = workshop.open(asInspection(job));
    for (Finding finding : machine.findings()) {
      if (finding.judgement().verdict() == Verdict.DOES_NOT_CONFORM) {
        problems.add(
            new Problem(
                finding.component() + "." + finding.observable(),
                "does not conform (" + finding.title() + "): " + finding.shown(),
                "learn from a machine in order"));
      }
    }
    Diagnosis diagnosis = machine.diagnosis();
    for (Diagnosis.FaultProbability fault : diagnosis.faults()) {
      if (fault.probability() > LIKELIEST_FAULT) {
        problems.add(unlikely(fault.fault().key(), fault.fault().title(), fault.probability()));
      }
    }
    double unexplained = diagnosis.unexplained().probability();
    if (unexplained > LIKELIEST_FAULT) {
      problems.add(unlikely("job " + job.id(), "something no known fault explains", unexplained));
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  private static Problem unlikely(String where, String fault, double probability) {
    return new Problem(
        where,
        "%s is %s %% likely; at most %s %% is allowed"
            .formatted(fault, Math.round(100 * probability), Math.round(100 * LIKELIEST_FAULT)),
        "learn from a machine in order, or read more of this one");
  }

  /** What was reported stays: it speaks against a machine in order. */
  private static Job asInspection(Job job) {
    Complaint said = job.complaint();
    Complaint none =
        new Complaint(Complaint.Reason.INSPECTION, said.said(), said.displayed(), said.symptoms());
    return job.with(none, job.measurements());
  }

  private static MachineModel learned(Job job, Appliance stated, Workshop workshop) {
    try {
      return Learning.of(job, stated, workshop.vocabulary());
    } catch (IllegalArgumentException unnamed) {
      throw new InputException(
          "/appliance", unnamed.getMessage(), "write maker and model into the job");
    }
  }

  private static void requireNew(MachineModel model, Workshop workshop) {
    for (MachineModel known : workshop.shop().models().all()) {
      if (known.meets(model)) {
        throw new InputException(
            model.name(),
            "the shop has a model of it already",
            "put what is new into its file, or name another place with " + OUTPUT.name());
      }
    }
  }

  private static void tell(Path written, MachineModel model, Appliance stated, Layout layout) {
    List<String> read = new ArrayList<>();
    for (Component component : model.components()) {
      Optional<Component> own = stated.component(component.id());
      component
          .figures()
          .forEach(
              (id, figure) -> {
                if (own.flatMap(each -> each.figure(id)).isEmpty()) {
                  read.add(told(component, id, figure));
                }
              });
      component
          .curves()
          .forEach(
              (id, curve) -> {
                if (own.flatMap(each -> each.curve(id)).isEmpty()) {
                  int points = curve.points().size();
                  read.add(component.id() + " " + id + ", curve of " + points + " points");
                }
              });
    }
    layout.line("Written: " + written);
    layout.line(
        read.isEmpty()
            ? "Carried over from the job; no reading became a figure."
            : "Carried over from the job, and from readings: " + String.join("; ", read) + ".");
    layout.line("Add other names of the model (also) and what its codes mean (codes), if you can.");
  }

  private static String told(Component component, String id, Quantity figure) {
    return component.id() + " " + id + " " + figure.display();
  }
}
