package kelter.fleet;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.file.book.LearnedFile;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.job.Job;
import kelter.core.problem.InputException;
import kelter.core.shop.Shop;
import kelter.core.workshop.Case;
import kelter.core.workshop.Workshop;
import org.apache.spark.SparkFiles;
import org.apache.spark.api.java.JavaRDD;

/** Diagnoses jobs, each a line with what would be a job file, into a line each. */
final class FleetDiagnosis {

  private static final String FORMAT = "kelter-fleet-result/1";

  private final Workshop workshop;

  private FleetDiagnosis(Workshop workshop) {
    this.workshop = workshop;
  }

  /**
   * Diagnoses.
   *
   * @param jobs the jobs
   * @param learned the name of a file with what was learned, which was added to Spark's files
   * @param parts into how many parts they are put, each with a workshop of its own; 1 or more
   * @return a line of JSON for each job
   */
  static JavaRDD<String> of(JavaRDD<Line> jobs, Optional<String> learned, int parts) {
    String file = learned.orElse("");
    return jobs.repartition(parts)
        .mapPartitions(
            part -> {
              FleetDiagnosis diagnosis = new FleetDiagnosis(workshop(file));
              return new Mapped<>(part, diagnosis::line);
            });
  }

  private static Workshop workshop(String learned) {
    Workshop plain = Tool.workshop();
    return learned.isEmpty()
        ? plain
        : plain.in(
            Shop.UNKNOWN.with(Optional.of(LearnedFile.read(Path.of(SparkFiles.get(learned))))));
  }

  private String line(Line line) {
    try {
      byte[] text = line.text().getBytes(StandardCharsets.UTF_8);
      Job job = workshop.read(JsonText.read(text, "", "")).job();
      return JsonText.line(result(job.id(), workshop.open(job)));
    } catch (InputException mistakes) {
      return JsonText.line(refused(line, mistakes));
    }
  }

  private static Json.Obj result(String job, Case machine) {
    Diagnosis diagnosis = machine.diagnosis();
    Map<String, Json> members = begun();
    members.put("job", new Json.Str(job));
    members.put(
        "does-not-conform",
        texts(
            machine.findings().stream()
                .filter(each -> each.verdict() == Verdict.DOES_NOT_CONFORM)
                .map(each -> each.id())
                .toList()));
    members.put("decided", new Json.Bool(diagnosis.basis().conclusion().isDecided()));
    members.put("stays-unplugged", new Json.Bool(diagnosis.basis().staysUnplugged()));
    members.put(
        "faults", new Json.Arr(diagnosis.faults().stream().map(FleetDiagnosis::fault).toList()));
    members.put("nothing-wrong", probability(diagnosis.healthy()));
    members.put("unexplained", probability(diagnosis.unexplained().probability()));
    members.put("action", new Json.Str(diagnosis.basis().conclusion().action()));
    return new Json.Obj(members);
  }

  private static Json fault(Diagnosis.FaultProbability fault) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("fault", new Json.Str(fault.fault().key()));
    members.put("probability", probability(fault.probability()));
    return new Json.Obj(members);
  }

  private static Json.Obj refused(Line line, InputException mistakes) {
    Map<String, Json> members = begun();
    members.put("mistakes", texts(mistakes.problems().stream().map(line::told).toList()));
    return new Json.Obj(members);
  }

  private static Map<String, Json> begun() {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("format", new Json.Str(FORMAT));
    return members;
  }

  private static Json texts(List<String> texts) {
    return new Json.Arr(texts.stream().<Json>map(Json.Str::new).toList());
  }

  private static Json probability(double value) {
    return new Json.Num(Double.toString(value));
  }
}
