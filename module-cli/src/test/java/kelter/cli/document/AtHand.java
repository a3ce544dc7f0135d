package kelter.cli.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import kelter.cli.wiring.LampPlugin;
import kelter.cli.wiring.PluginJar;

/**
 * A clean folder with the demo and the built tool in the places that documents name, and what a
 * reader has by then: a job with a dear heater, the log of a meter, a shop with a job book.
 *
 * @param folder the folder
 */
record AtHand(Path folder) {

  private static final Path TOOL = Path.of("target", "kelter").toAbsolutePath();
  private static final Path DEMO = Path.of("..", "demo").toAbsolutePath();

  private static final int MOST_TOLD = 1000;

  /** What a command printed, on both outputs, and its exit code. */
  record Run(int code, String said) {}

  /** The demo and the tool, and nothing else. */
  static AtHand bare(Path folder) throws IOException {
    copy(DEMO.resolve("jobs"), folder.resolve("demo").resolve("jobs"));
    copy(DEMO.resolve("logs"), folder.resolve("demo").resolve("logs"));
    copy(DEMO.resolve("clients"), folder.resolve("demo").resolve("clients"));
    for (String script : List.of("run", "carry")) {
      Files.copy(DEMO.resolve(script), folder.resolve("demo").resolve(script));
      assertTrue(folder.resolve("demo").resolve(script).toFile().setExecutable(true));
    }
    for (String program : List.of("bin/kelter", "runtime/bin/java")) {
      Path script = folder.resolve("module-cli/target/kelter").resolve(program);
      Files.createDirectories(script.getParent());
      Files.writeString(script, "#!/bin/sh\nexec '" + TOOL.resolve(program) + "' \"$@\"\n");
      assertTrue(script.toFile().setExecutable(true));
    }
    return new AtHand(folder);
  }

  /** All of it. */
  static AtHand all(Path folder) throws IOException, InterruptedException {
    AtHand made = bare(folder);
    made.job("dear-heater", "job.json", "job");
    Path plugins = Files.createDirectory(folder.resolve("my-plugins"));
    PluginJar.compile(plugins.resolve("lamp.jar"), new LampPlugin().sources());
    made.done("kelter shop init my-shop");
    made.job("washer-extractor", "my-shop/jobs/marrowby-0412.json", "marrowby-0412");
    made.job("healthy-washer", "my-shop/jobs/washer-3.json", "washer-3");
    made.job("dear-heater", "my-shop/jobs/my-job.json", "my-job");
    made.done("kelter done --shop my-shop my-job heater.renew-heater --found heater.open");
    made.done("kelter prove --shop my-shop my-job --saw stays-cold=no");
    made.job("tumble-dryer", "my-shop/jobs/next-job.json", "next-job");
    made.job("glasswasher", "closed.json", "closed");
    made.done(
        "kelter close --shop my-shop marrowby-0412 --outcome left"
            + " --cause drain-pump.passages-blocked --note 'the seal leaks'");
    made.done("kelter close closed.json --outcome left");
    made.done("kelter book add --book old.db closed.json");
    made.done("kelter book export --book old.db >closed.jsonl");
    made.done("kelter book export --book old.db >old-book.jsonl");
    made.done("kelter book export --book old.db --as ords --country NLD >repairs.csv");
    made.done("kelter shop person p-17 --name Sample --job washer-3 --shop my-shop");
    return made;
  }

  private void job(String demo, String file, String id) throws IOException {
    String job = Files.readString(DEMO.resolve("jobs").resolve(demo + ".json"));
    Files.writeString(
        folder.resolve(file), job.replaceFirst("\"id\": \"[^\"]*\"", "\"id\": \"" + id + "\""));
  }

  /** The same in another folder. */
  AtHand copied(Path other) throws IOException {
    copy(folder, other);
    return new AtHand(other);
  }

  /** Runs a command that has to end well. */
  String done(String command) throws IOException, InterruptedException {
    return done(command, "");
  }

  /** The same with what is typed while it runs. */
  String done(String command, String typed) throws IOException, InterruptedException {
    Run run = run(command, typed);
    assertEquals(0, run.code(), () -> command + "\n" + end(run.said()));
    return run.said();
  }

  private static String end(String said) {
    return said.substring(Math.max(0, said.length() - MOST_TOLD));
  }

  private Run run(String command, String typed) throws IOException, InterruptedException {
    Path said = Files.createTempFile("said", ".txt");
    Path in = Files.writeString(Files.createTempFile("typed", ".txt"), typed);
    ProcessBuilder builder =
        new ProcessBuilder("sh", "-eu", "-c", command)
            .directory(folder.toFile())
            .redirectInput(in.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile());
    var environment = builder.environment();
    environment.put("PATH", TOOL.resolve("bin") + ":" + environment.get("PATH"));
    environment.put("HOME", folder.toString());
    environment.put("KELTER_SHOP", "");
    environment.put("LC_ALL", "C.UTF-8");
    Process process = builder.start();
    try {
      assertTrue(process.waitFor(2, TimeUnit.MINUTES), () -> "it does not end: " + command);
      return new Run(process.exitValue(), Files.readString(said, StandardCharsets.UTF_8));
    } finally {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
      Files.delete(said);
      Files.delete(in);
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path each : all.toList()) {
        Path target = to.resolve(from.relativize(each).toString());
        if (Files.isDirectory(each)) {
          Files.createDirectories(target);
        } else {
          Files.copy(each, target, StandardCopyOption.COPY_ATTRIBUTES);
        }
      }
    }
  }
}
