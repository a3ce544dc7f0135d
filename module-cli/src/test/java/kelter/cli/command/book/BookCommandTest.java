package kelter.cli.command.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import kelter.cli.program.Console;
import kelter.core.book.BookEntry;
import kelter.core.file.book.EntryLine;
import kelter.core.file.book.LearnedFile;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The job book on the command line. */
class BookCommandTest {

  private static final String JOB =
      """
      {
        "format": "kelter-job/2",
        "id": "quay-17",
        "date": "2026-03-01",
        "appliance": { "kind": "washing-machine", "maker": "Ostvik", "model": "W-1", "age": "7 a" },
        "symptoms": { "stays-cold": "yes" }
      }
      """;

  @TempDir private Path temporary;
  private Path shop;

  @BeforeEach
  void makeShop() {
    shop = temporary.resolve("shop");
    assertEquals(0, Console.run("shop", "init", shop.toString()).code());
  }

  private Console book(String command, String... rest) {
    List<String> words = new ArrayList<>(List.of("book", command, "--shop", shop.toString()));
    words.addAll(List.of(rest));
    return Console.run(words.toArray(String[]::new));
  }

  private Path lines(String name, List<BookEntry> entries) throws IOException {
    return Files.write(temporary.resolve(name), entries.stream().map(EntryLine::write).toList());
  }

  private void fill(int jobs, String cause) throws IOException {
    List<BookEntry> entries = new ArrayList<>();
    for (int i = 0; i < jobs; i++) {
      entries.add(Booked.washer("job-" + i, cause, Booked.DAY.plusDays(i % 50), ""));
    }
    Console added = book("add", lines("jobs.jsonl", entries).toString());
    assertEquals(0, added.code(), added.err());
  }

  @Test
  void whatIsAddedIsListedFoundAndShown() throws IOException {
    Path file =
        lines(
            "one.jsonl",
            List.of(Booked.full("first"), Booked.washer("second", "brushes.worn", Booked.DAY, "")));

    assertTrue(book("add", file.toString()).out().contains("Added: 2."));
    assertTrue(book("add", file.toString()).out().contains("In the book already: 2."));
    assertTrue(book("list").out().contains("second"));
    assertTrue(book("list", "--kind", "washing machine").out().contains("brushes.worn"));
    assertTrue(book("list", "--from", "2026-04-01").out().contains("No job"));
    assertTrue(book("search", "t9-04").out().contains("first"));
    assertTrue(book("show", "first").out().contains("38.50 EUR"));
    assertTrue(book("similar", "first").out().contains("brushes.worn"));
    Console unknown = book("show", "frist");
    assertEquals(1, unknown.code());
    assertTrue(unknown.err().contains("is no job in the book"), unknown.err());
  }

  @Test
  void addTakesAllOrNone() throws IOException {
    String good = EntryLine.write(Booked.full("first"));
    Path file =
        Files.writeString(
            temporary.resolve("bad.jsonl"),
            good
                + "\n"
                + good.replace("first", "second").replace("cured\",\"causes", "x\",\"causes"));
    Console console = book("add", file.toString());

    assertEquals(1, console.code());
    assertTrue(console.err().contains("line 2"), console.err());
    assertFalse(Files.exists(shop.resolve("book.db")));
  }

  @Test
  void importKeepsBadRowsAsideAndGoesOn() throws IOException {
    String good = EntryLine.write(Booked.full("first"));
    Path file =
        Files.writeString(
            temporary.resolve("some.jsonl"),
            good + "\n{\"job\":\n" + good.replace("first", "second") + "\n");
    Console console = book("import", file.toString());

    assertEquals(1, console.code());
    assertTrue(console.out().contains("Added: 2."), console.out());
    assertTrue(console.err().contains("line 2"), console.err());
    assertEquals("{\"job\":\n", Files.readString(temporary.resolve("some.jsonl.refused")));
    Console again = book("import", file.toString());
    assertTrue(again.out().contains("Added: 0. In the book already: 2."), again.out());
    assertTrue(Files.exists(temporary.resolve("some.jsonl.refused-2")));
  }

  @Test
  void anotherContentOfTheSameJobIsTold() throws IOException {
    book("add", lines("one.jsonl", List.of(Booked.full("first"))).toString());
    Path other =
        lines("two.jsonl", List.of(Booked.washer("first", "brushes.worn", Booked.DAY, "")));
    for (String command : List.of("add", "import")) {
      Console console = book(command, other.toString());
      assertEquals(1, console.code());
      assertTrue(console.err().contains("with other content"), console.err());
    }
    assertTrue(book("show", "first").out().contains("heater.open"));
  }

  /** Two vans count their jobs alike. */
  @Test
  void aPrefixKeepsTheJobsOfTwoVansApart() throws IOException {
    book("add", lines("one.jsonl", List.of(Booked.full("first"))).toString());
    Path other =
        lines("two.jsonl", List.of(Booked.washer("first", "brushes.worn", Booked.DAY, "")));

    Console first = book("import", "--prefix", "van-2-", other.toString());
    Console again = book("import", "--prefix", "van-2-", other.toString());

    assertTrue(first.out().contains("Added: 1."), first.out());
    assertTrue(again.out().contains("Added: 0. In the book already: 1."), again.out());
    assertTrue(book("show", "van-2-first").out().contains("brushes.worn"));
    assertTrue(book("show", "first").out().contains("heater.open"));
    Console wrong = book("import", "--prefix", "Van 2", other.toString());
    assertEquals(1, wrong.code());
    assertTrue(wrong.err().contains("'Van 2' cannot begin an id"), wrong.err());
  }

  @Test
  void whatWasLearnedReachesTheDiagnosisAndCanBeLeftOut() throws IOException {
    Path job = Files.writeString(temporary.resolve("job.json"), JOB);
    String[] plain = {"diagnose", "--full", "--shop", shop.toString(), job.toString()};
    String before = Console.run(plain).out();
    fill(60, "thermal-cut-out.open");
    Console learned = book("learn");

    assertEquals(0, learned.code(), learned.err());
    assertTrue(learned.out().contains("Learned from 60 jobs"), learned.out());
    Console after = Console.run(plain);
    assertEquals(0, after.code(), after.err());
    String told = after.out().replaceAll("\\s+", " ");
    assertTrue(told.contains("from 60 jobs of the shop's book"), told);
    assertTrue(told.contains("confirmed in"), told);
    assertNotEquals(before, after.out());
    Console without =
        Console.run(
            Stream.concat(Stream.of(plain), Stream.of("--without-book")).toArray(String[]::new));
    assertEquals(before, without.out());
  }

  /** Times, cures and call-backs that were learned are told, and left out with the book. */
  @Test
  void workThatWasLearnedReachesTheDiagnosisAndIsTold() throws IOException {
    Path job = Files.writeString(temporary.resolve("job.json"), JOB);
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      lines.add(
          EntryLine.write(Booked.washer("job-" + i, "heater.open", Booked.DAY.plusDays(i % 50), ""))
              .replace("\"renew\"", "\"renew-heater\"")
              .replace("\"minutes\":42", "\"minutes\":95"));
    }
    assertEquals(0, book("add", Files.write(temporary.resolve("m"), lines).toString()).code());
    assertEquals(0, book("learn").code());
    String[] full = {"diagnose", "--full", "--shop", shop.toString(), job.toString()};

    String told = Console.run(full).out().replaceAll("\\s+", " ");

    assertTrue(
        told.matches(".*heater\\.renew-heater: \\d+ min \\(module \\d+\\), from the book.*"), told);
    assertTrue(told.contains("Of cured complaints"), told);
    String without =
        Console.run(
                "diagnose", "--full", "--without-book", "--shop", shop.toString(), job.toString())
            .out();
    assertFalse(without.contains("from the book"), without);
  }

  @Test
  void livesThatWereLearnedReachTheWeighing() throws IOException {
    assertEquals(0, book("add", Files.write(temporary.resolve("m"), aged()).toString()).code());
    assertEquals(0, book("learn").code());
    String job = Path.of("..", "demo", "jobs", "dear-heater.json").toString();

    Console weighed = Console.run("weigh", "--full", "--shop", shop.toString(), job);
    Console without =
        Console.run("weigh", "--full", "--without-book", "--shop", shop.toString(), job);

    assertEquals(0, weighed.code(), weighed.err());
    String told = weighed.out().replaceAll("\\s+", " ");
    assertTrue(told.contains("was learned: from the shop's book, 30 failures, 30 that"), told);
    assertFalse(without.out().contains("was learned"), without.out());
  }

  /** Washing machines of all ages, of which every other had its heater open. */
  private static List<String> aged() {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      String cause = i % 2 == 0 ? "heater.open" : "brushes.worn";
      lines.add(
          EntryLine.write(Booked.washer("aged-" + i, cause, Booked.DAY, ""))
              .replace("\"age\":7.5", "\"age\":" + (2 + i / 5)));
    }
    return lines;
  }

  /** The wildest share that a file could tell, and a broken one, which can be learned anew. */
  @Test
  void aBrokenFileOfWhatWasLearnedIsToldAndMended() throws IOException {
    fill(30, "brushes.worn");
    book("learn");
    Path learned = shop.resolve("learned.json");
    Path job = Files.writeString(temporary.resolve("job.json"), JOB);
    Files.writeString(learned, Files.readString(learned).replace("\"share\" : 0", "\"share\" : 7"));
    Files.writeString(learned, Files.readString(learned).replace("\"share\": 0", "\"share\": 7"));
    Console broken = Console.run("diagnose", "--shop", shop.toString(), job.toString());

    assertEquals(1, broken.code());
    assertTrue(broken.err().contains("0 to 1 is allowed"), broken.err());
    assertEquals(0, book("learn").code());
    assertEquals(0, Console.run("diagnose", "--shop", shop.toString(), job.toString()).code());
  }

  @Test
  void similarTakesAJobFileToo() throws IOException {
    fill(8, "heater.open");
    Path job = Files.writeString(temporary.resolve("job.json"), JOB);
    Console console = book("similar", job.toString());

    assertEquals(0, console.code(), console.err());
    assertTrue(console.out().contains("heater.open, 8 jobs, about 42 min"), console.out());
  }

  @Test
  void whatIsExportedNamesNoSerialAndIsImportedAgain() throws IOException {
    book("add", lines("one.jsonl", List.of(Booked.full("first"))).toString());
    Console plain = book("export");
    Console csv = book("export", "--as", "csv");
    Console ords = book("export", "--as", "ords", "--country", "NLD", "--provider", "Quay");

    for (Console each : List.of(plain, csv, ords)) {
      assertEquals(0, each.code(), each.err());
      assertFalse(each.out().contains("T9-0412"), each.out());
    }
    assertTrue(book("export", "--serials").out().contains("T9-0412"));
    assertTrue(csv.out().contains(",'=Stays cold,"), csv.out());
    assertTrue(ords.out().contains("first,Quay,NLD,washing-machine,"), ords.out());
    Path table = Files.writeString(temporary.resolve("ords.csv"), ords.out());
    String other = temporary.resolve("other.db").toString();
    Console imported = Console.run("book", "import", "--book", other, table.toString());
    assertEquals(0, imported.code(), imported.err());
    assertTrue(Console.run("book", "show", "--book", other, "first").out().contains("Stays cold"));
    assertEquals(1, book("export", "--as", "xml").code());
    assertEquals(1, book("export", "--as", "ords", "--country", "Dutch").code());
  }

  @Test
  void whatIsExportedIsInTheBookAlready() throws IOException {
    book(
        "add",
        lines("jobs.jsonl", List.of(Booked.full("first"), Booked.full("second"))).toString());
    for (String[] form : new String[][] {{}, {"--serials"}}) {
      Path exported =
          Files.writeString(temporary.resolve("again.jsonl"), book("export", form).out());
      for (String command : List.of("add", "import")) {
        Console again = book(command, exported.toString());

        assertEquals(0, again.code(), again.err());
        assertTrue(again.out().contains("Added: 0. In the book already: 2."), again.out());
      }
    }
    assertTrue(book("show", "first").out().contains("T9-0412"));
  }

  @Test
  void statsTellFromHowMany() throws IOException {
    fill(12, "heater.open");
    Console stats = book("stats");

    assertEquals(0, stats.code(), stats.err());
    assertTrue(stats.out().contains("12 jobs"), stats.out());
    assertTrue(stats.out().contains("heater.renew"), stats.out());
    assertTrue(stats.out().contains("ohmmeter"), stats.out());
    assertTrue(stats.widest() <= 80, stats.out());
  }

  @Test
  void whatIsWrittenIsAsItsSchemaSays() throws IOException {
    book("add", lines("one.jsonl", List.of(Booked.full("first"))).toString());
    fill(10, "brushes.worn");
    book("learn");
    var registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    var entry = registry.getSchema(EntryLine.schema(), InputFormat.JSON);
    var learned = registry.getSchema(LearnedFile.schema(), InputFormat.JSON);

    String result = book("show", "--format", "json", "first").out();
    var shownOf = (Json.Obj) JsonText.read(result.getBytes(StandardCharsets.UTF_8), "shown", "");
    String shown = JsonText.write(((Json.Arr) shownOf.members().get("entries")).items().get(0));
    assertEquals(List.of(), entry.validate(shown, InputFormat.JSON));
    assertFalse(entry.validate(shown.replace("cured", "curde"), InputFormat.JSON).isEmpty());
    String file = Files.readString(shop.resolve("learned.json"));
    assertEquals(List.of(), learned.validate(file, InputFormat.JSON));
    assertFalse(learned.validate(file.replace("as-of", "as-for"), InputFormat.JSON).isEmpty());
    assertEquals(LearnedFile.text(LearnedFile.read(shop.resolve("learned.json"))), file);
  }

  @Test
  void whereNoBookIsNamedThatIsTold() {
    for (String command : List.of("list", "learn", "stats", "export", "check")) {
      Console console = Console.run("book", command);
      assertEquals(1, console.code(), command);
      assertTrue(console.err().contains("name the shop's folder with --shop"), console.err());
      Console empty = book(command);
      assertEquals(1, empty.code(), command);
      assertTrue(empty.err().contains("there is no job book"), empty.err());
    }
  }

  @Test
  void learningNeedsAPlaceToWriteTo() throws IOException {
    fill(3, "brushes.worn");
    String book = shop.resolve("book.db").toString();
    Console console = Console.run("book", "learn", "--book", book);
    assertEquals(1, console.code());
    assertTrue(console.err().contains("a file with --output"), console.err());
    String file = temporary.resolve("learned.json").toString();
    assertEquals(0, Console.run("book", "learn", "--book", book, "-o", file).code());
    assertEquals(3, LearnedFile.read(Path.of(file)).jobs());
  }

  @Test
  void statsAnswerWhatAShopAsks() throws IOException {
    assertEquals(
        0, book("add", Files.write(temporary.resolve("m"), Booked.many()).toString()).code());
    Files.writeString(
        shop.resolve("stock.json"),
        """
        { "format": "kelter-stock/1",
          "parts": [{ "part": "Heater", "for": "heater.renew", "number": 4 }] }
        """);

    Console stats = book("stats", "--hour-costs", "38 EUR");

    assertEquals(0, stats.code(), stats.err());
    // 83 uses since the first of March; the price is the median of the book.
    assertTrue(stats.out().matches("(?s).*heater: renew\\s+83 .* 4 +38\\.50 .*"), stats.out());
    // Three of 83 came back, each of 47 min and 38.50 EUR: 68.27 EUR, 2.47 EUR with each job.
    assertTrue(stats.out().contains("47 (3)"), stats.out());
    assertTrue(stats.out().contains("68.27"), stats.out());
    assertTrue(stats.out().contains("2.47 ("), stats.out());
    assertTrue(stats.out().contains("77 "), stats.out());
    assertTrue(stats.widest() <= 80, stats.out());
    Console few = book("stats", "--hour-costs", "-3 EUR");
    assertEquals(1, few.code());
    assertTrue(few.err().contains("more than 0"), few.err());
    assertEquals(1, book("stats", "--service", "1.5").code());
  }

  @Test
  void aBookOfTodayTellsNoUseAYear() throws IOException {
    book(
        "add",
        lines("today.jsonl", List.of(Booked.washer("first", "heater.open", LocalDate.now(), "")))
            .toString());

    String told = book("stats").out().replaceAll("\\s+", " ");

    assertTrue(told.contains("cannot be told of a book of less than a day"), told);
  }

  @Test
  void aBookOfOneJobSaysThatItIsTooFew() throws IOException {
    fill(1, "heater.open");

    String told = book("stats").out();

    assertTrue(told.contains("too few"), told);
    assertTrue(told.contains("fewer than 10 jobs, which tell nothing yet: 1."), told);
  }

  @Test
  void statsWriteAPageAndOnlyAPage() throws IOException {
    fill(3, "heater.open");
    Path page = temporary.resolve("book.html");

    assertEquals(0, book("stats", "-o", page.toString()).code());
    assertTrue(Files.readString(page).contains("What the job book answers"));
    Console refused = book("stats", "-o", temporary.resolve("book.db").toString());
    assertEquals(1, refused.code());
    assertFalse(Files.exists(temporary.resolve("book.db")));
  }

  @Test
  void aBackupIsKeptAndAChangedRowIsTold() throws IOException {
    fill(5, "brushes.worn");
    Path copy = temporary.resolve("copy.db");

    assertTrue(book("backup", copy.toString()).out().contains("5 jobs"));
    assertEquals(1, book("backup", copy.toString()).code());
    assertTrue(book("check").out().contains("sound: 5 jobs"));
  }
}
