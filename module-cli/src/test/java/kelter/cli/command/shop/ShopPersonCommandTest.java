package kelter.cli.command.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import kelter.cli.program.Console;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whose jobs are whose: kept, changed, erased. */
class ShopPersonCommandTest {

  private static final Path WASHER = Path.of("..", "demo", "jobs", "washer-extractor.json");

  @TempDir private Path folder;
  private String shop;
  private Path washer;

  @BeforeEach
  void make() throws IOException {
    shop = folder.resolve("shop").toString();
    run(0, "shop", "init", shop);
    washer = folder.resolve("shop/jobs/marrowby-0412.json");
    Files.copy(WASHER, washer);
  }

  private Console run(int code, String... words) {
    Console console = Console.run(words);
    assertEquals(code, console.code(), console.err() + console.out());
    return console;
  }

  private Console person(int code, String... words) {
    return run(
        code,
        Stream.of(Stream.of("shop", "person"), Stream.of(words), Stream.of("--shop", shop))
            .flatMap(each -> each)
            .toArray(String[]::new));
  }

  private Path file(String id) {
    return folder.resolve("shop/persons/" + id + ".json");
  }

  private static String told(Console console) {
    return (console.err() + console.out()).replaceAll("\\s+", " ");
  }

  @Test
  void whatAFileHoldsBesideThePersonStays() throws IOException {
    person(0, "p-1", "--name", "A. Sample", "--telephone", "0 555 01 20");
    Path file = file("p-1");
    String written = Files.readString(file);
    String own =
        written.replaceFirst("\\{", "{\n  \"note\": \"rings twice\",\n  \"x-key\": [1,  2],");
    Files.writeString(file, own);
    person(0, "p-1", "--telephone", "0 555 01 21");

    assertEquals(own.replace("01 20", "01 21"), Files.readString(file));
    person(0, "p-1", "--job", "marrowby-0412");
    assertTrue(Files.readString(file).contains("\"x-key\": [1,  2],"));
    assertTrue(Files.readString(file).contains("marrowby-0412"));
  }

  @Test
  void aMistakeInTheFileOfAnotherIsToldAndDoesNotHinder() throws IOException {
    person(0, "p-1", "--name", "A. Sample", "--job", "marrowby-0412");
    Files.writeString(file("p-2"), "{\n  \"format\": \"kelter-person/1\",\n  \"id\": \"p-2\"\n}");
    Console changed = person(0, "p-1", "--telephone", "0 555 01 20");

    assertTrue(Files.readString(file("p-1")).contains("0 555 01 20"));
    assertTrue(changed.err().contains("p-2.json"), changed.err());
    assertTrue(changed.err().contains("name"), changed.err());
    assertTrue(told(person(1, "p-3", "--name", "B", "--job", "marrowby-0412")).contains("of p-1"));
  }

  @Test
  void aFileWithAMistakeCanBeForgotten() throws IOException {
    for (String content : new String[] {"{\"name\": 3, \"jobs\": [", "{\"nme\": \"A. Sample\"}"}) {
      Files.createDirectories(file("p-1").getParent());
      Files.writeString(file("p-1"), content);
      Console forgotten = run(0, "shop", "forget", "p-1", "--shop", shop);

      assertFalse(Files.exists(file("p-1")));
      assertTrue(told(forgotten).contains("unknown: the file could not be read"), told(forgotten));
      run(1, "shop", "forget", "p-1", "--shop", shop);
    }
  }

  @Test
  void aJobIsOfOnePerson() {
    person(0, "p-1", "--name", "A. Sample", "--job", "marrowby-0412");
    Console refused = person(1, "p-2", "--name", "B. Sample", "--job", "marrowby-0412");

    assertTrue(told(refused).contains("marrowby-0412: is a job of p-1"), told(refused));
    assertFalse(told(refused).contains("A. Sample"));
    assertFalse(Files.exists(file("p-2")));
    person(0, "p-1", "--no-job", "marrowby-0412");
    person(0, "p-2", "--name", "B. Sample", "--job", "marrowby-0412");
  }

  @Test
  void aJobThatTheShopDoesNotHaveIsTold() {
    Console kept =
        person(0, "p-1", "--name", "A. Sample", "--job", "marrowby-0413", "--job", "later");

    assertTrue(told(kept).contains("There is no job 'marrowby-0413'"), told(kept));
    assertTrue(told(kept).contains("did you mean 'marrowby-0412'?"), told(kept));
    assertTrue(told(kept).contains("There is no job 'later' in the shop's jobs/ folder yet."));
    Console right = person(0, "p-2", "--name", "B. Sample", "--job", "marrowby-0412");
    assertFalse(told(right).contains("There is no job"), told(right));
  }

  @Test
  void allThatIsWrongWithJobsTakenOffIsToldAtOnce() {
    person(0, "p-1", "--name", "A. Sample", "--job", "one", "--job", "two");
    Console refused = person(1, "p-1", "--no-job", "three", "--no-job", "two", "--job", "two");

    assertTrue(told(refused).contains("--no-job three: is no job of p-1"), told(refused));
    assertTrue(told(refused).contains("--no-job two: is also given as --job"), told(refused));
    Console taken = person(0, "p-1", "--no-job", "two");
    assertTrue(told(taken).contains("Jobs: one "), told(taken));
  }

  @Test
  void aCallBackIsOfThePersonOfTheFirst() throws IOException {
    person(0, "p-1", "--name", "A. Sample", "--job", "marrowby-0412");
    run(0, "close", washer.toString(), "--outcome", "left");
    Console begun = run(0, "reopen", "marrowby-0412", "--shop", shop);

    assertTrue(told(begun).contains("It is named for p-1"), told(begun));
    assertTrue(Files.readString(file("p-1")).contains("\"marrowby-0412-again\""));
    run(
        0,
        "report",
        "marrowby-0412-again",
        "--shop",
        shop,
        "-o",
        folder.resolve("again.html").toString());
    assertTrue(Files.readString(folder.resolve("again.html")).contains("A. Sample"));
  }

  @Test
  void aCallBackThatIsSomebodyElsesIsNotBegun() {
    person(0, "p-1", "--name", "A. Sample", "--job", "marrowby-0412");
    person(0, "p-2", "--name", "B. Sample", "--job", "marrowby-0412-again");
    run(0, "close", washer.toString(), "--outcome", "left");
    Console refused = run(1, "reopen", "marrowby-0412", "--shop", shop);

    assertTrue(told(refused).contains("marrowby-0412-again: is a job of p-2"), told(refused));
    assertFalse(Files.exists(washer.resolveSibling("marrowby-0412-again.json")));
  }
}
