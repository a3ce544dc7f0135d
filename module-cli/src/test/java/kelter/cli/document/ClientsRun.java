package kelter.cli.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What programs of others do with the built tool: the clients of the demo, and a strict validator
 * (Ajv 8, <a href="https://ajv.js.org/strict-mode.html">strict mode</a>). It takes Node, Python and
 * the registry of npm, so that {@code mvn -Dclients} runs it alone; what is not there is skipped
 * with a word.
 */
class ClientsRun {

  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
  private static final Path TOOL = Path.of("target", "kelter", "bin", "kelter").toAbsolutePath();

  /** Compiles each schema, then holds the jobs of the demo against both schemas of jobs. */
  private static final String VALIDATE =
      """
      const Ajv = require("ajv/dist/2020");
      const { execFileSync } = require("child_process");
      const fs = require("fs");
      const [kelter, jobs] = process.argv.slice(2);
      const tell = (...words) => JSON.parse(execFileSync(kelter, words, { maxBuffer: 1 << 26 }));
      const compiled = (schema) => new Ajv({ strict: true, allErrors: true }).compile(schema);
      let schemas = 0;
      for (const each of tell("schema", "--format", "json").schemas) {
        try {
          compiled(tell("schema", each.name));
          schemas++;
        } catch (refused) {
          console.log("REFUSED " + each.name + ": " + refused.message);
        }
      }
      for (const schema of [tell("schema", "job"), tell("schema", "--strict", "job")]) {
        const valid = compiled(schema);
        for (const file of fs.readdirSync(jobs)) {
          if (!valid(JSON.parse(fs.readFileSync(jobs + "/" + file, "utf8")))) {
            console.log("REFUSED " + file + ": " + JSON.stringify(valid.errors.slice(0, 3)));
          }
        }
      }
      console.log(schemas + " schemas");
      """;

  private record Run(int code, String said) {}

  @BeforeAll
  static void theToolIsBuilt() {
    assertTrue(Files.exists(TOOL), "build the tool first: mvn -B package -DskipTests");
  }

  private static Run run(Path folder, String... command) throws IOException, InterruptedException {
    Path said = Files.createTempFile("said", ".txt");
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    try {
      assertTrue(process.waitFor(5, TimeUnit.MINUTES), "it does not end: " + command[0]);
      return new Run(process.exitValue(), Files.readString(said, StandardCharsets.UTF_8));
    } finally {
      process.destroyForcibly();
      Files.delete(said);
    }
  }

  private static void assumeThere(String program) throws InterruptedException {
    boolean there;
    try {
      there = run(ROOT, program, "--version").code() == 0;
    } catch (IOException missing) {
      there = false;
    }
    if (!there) {
      System.out.println(program + " is not there; what needs it was not run.");
    }
    assumeTrue(there, program + " is not there");
  }

  @Test
  void theClientsSayTheSame() throws IOException, InterruptedException {
    assumeThere("node");
    assumeThere("python3");
    for (String job : new String[] {"tumble-dryer", "washer-extractor", "healthy-washer"}) {
      String file = "demo/jobs/" + job + ".json";
      Run node = run(ROOT, "node", "demo/clients/client.mjs", TOOL.toString(), file);
      Run python = run(ROOT, "python3", "demo/clients/client.py", TOOL.toString(), file);
      assertEquals(0, node.code(), node.said());
      assertEquals(node, python);
      assertTrue(node.said().startsWith("next: "), node.said());
    }
  }

  @Test
  void aStrictValidatorTakesAllSchemas() throws IOException, InterruptedException {
    assumeThere("node");
    assumeThere("npm");
    Path folder = Files.createDirectories(Path.of("target", "clients").toAbsolutePath());
    Run fetched = run(folder, "npm", "install", "--no-audit", "--no-fund", "ajv@8");
    assertEquals(0, fetched.code(), fetched.said());
    Files.writeString(folder.resolve("validate.js"), VALIDATE);
    Run run =
        run(folder, "node", "validate.js", TOOL.toString(), ROOT.resolve("demo/jobs").toString());
    assertEquals(0, run.code(), run.said());
    assertFalse(run.said().contains("REFUSED"), run.said());
    assertTrue(run.said().matches("(?s).*\\d\\d schemas\\s*"), run.said());
  }
}
