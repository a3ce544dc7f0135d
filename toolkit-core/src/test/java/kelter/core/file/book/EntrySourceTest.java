package kelter.core.file.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import kelter.core.book.BookEntry;
import kelter.core.book.Outcome;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files with many entries, good and bad. */
class EntrySourceTest implements EntrySource.Sink {

  private static final String ENTRY =
      "{\"format\":\"kelter-book-entry/1\",\"job\":\"one\",\"closed\":\"2026-03-01\","
          + "\"machine\":{\"kind\":\"kettle\",\"age\":3},\"outcome\":\"cured\"}";

  /**
   * The header of the standard (openrepair/datastandard, standard.rst) and rows of invented makers;
   * the second is as older tables have it.
   */
  private static final String REPAIRS =
      """
      id,data_provider,country,partner_product_category,product_category,product_category_id,brand,year_of_manufacture,product_age_estimate,repair_status,repair_barrier_if_end_of_life,group_identifier,event_date,record_date,problem
      ex_1,Ex,NLD,Kitchen ~ Kettle,Kettle,14,Ostvik,2019,,Fixed,,g,2023-05-06,2023-05-07,"Leaks, ""badly""
      at the lid"
      ex_2,Ex,NLD,Vacuum,Vacuum,34,Tarnwell,,8,End of life,Item too worn out,g,2023-05-06,2023-05-07,no suction
      ex_3,Ex,NLD,Laptop,Laptop,16,Ostvik,,,Mended,,g,2023-05-06,2023-05-07,slow
      ex_4,Ex,NLD,Toaster,Toaster,31,Ostvik,,-1,2,,g,06/05/2023,2023-05-07,'=1+1
      """;

  /**
   * As tables of version 0.1 are written (headers of openrepair/data, 201909 and 202003): the day
   * is 'date', a year that nobody knows '????', and the first row may have columns without a name.
   */
  private static final String OLD_REPAIRS =
      """
      id,data_provider,product_category,brand,year_of_manufacture,repair_status,group_identifier,date,problem,,,
      ex_1,Ex,Toaster,Ostvik,????,Repairable,g,2014-03-08,Pops up at once,,,
      ex_2,Ex,Kettle,Tarnwell,2009,Fixed,g,2014-03-08,Switch,,,
      ex_3,Ex,Kettle,Tarnwell,1009,Fixed,g,2014-03-08,Switch,,,
      ex_4,Ex,Kettle,Tarnwell,2041,????,g,Ex,Switch,,,
      ex_5,Ex,Kettle,Tarnwell,earlier than 1990,Fixed,g,2014-03-08,Switch,,
      """;

  @TempDir private Path folder;

  private final List<BookEntry> entries = new ArrayList<>();
  private final List<Long> lines = new ArrayList<>();
  private final List<String> refused = new ArrayList<>();
  private final List<String> problems = new ArrayList<>();

  @Override
  public void entry(long line, BookEntry entry) {
    lines.add(line);
    entries.add(entry);
  }

  @Override
  public void refused(long line, String text, List<Problem> mistakes) {
    lines.add(line);
    refused.add(text);
    mistakes.forEach(each -> problems.add(each.display()));
  }

  private void read(byte[] content) throws IOException {
    EntrySource.read(Files.write(folder.resolve("f"), content), this);
  }

  private void read(String content) throws IOException {
    read(content.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void aLineIsWrittenAsItWasRead() throws IOException {
    read("\n" + ENTRY + "\r\n\n" + ENTRY.replace("one", "two"));

    assertEquals(List.of(2L, 4L), lines);
    assertEquals(ENTRY, EntryLine.write(entries.get(0)));
    assertEquals(OptionalDouble.of(3), entries.get(0).machine().age());
  }

  @Test
  void everyMistakeOfALineIsToldAndReadingGoesOn() throws IOException {
    read(
        ENTRY.replace("cured", "cuerd").replace("kettle", "Kettle!")
            + "\n{]\n"
            + ENTRY
            + "\n"
            + ENTRY.replace("}}", "").replace("\"job\"", "\"jbo\"")
            + "\n");

    assertEquals(1, entries.size());
    assertEquals(3, refused.size());
    assertTrue(problems.get(0).contains("line 1"), problems.toString());
    assertTrue(problems.toString().contains("did you mean 'cured'?"), problems.toString());
    assertTrue(problems.toString().contains("Kettle!"), problems.toString());
    assertTrue(problems.toString().contains("line 2, column 2: is not JSON"), problems.toString());
    assertTrue(problems.toString().contains("did you mean 'job'?"), problems.toString());
  }

  @Test
  void whatIsNoTextAndWhatIsTooLongIsRefused() throws IOException {
    byte[] bad = (ENTRY + "\n{\"\u00e9\"}\n").getBytes(StandardCharsets.ISO_8859_1);
    read(bad);
    assertEquals(1, refused.size());
    assertTrue(problems.get(0).contains("is not UTF-8"), problems.toString());
    read("{\"x\":\"" + "a".repeat(2_000_000) + "\"}\n" + ENTRY);

    assertEquals(2, refused.size());
    assertTrue(refused.get(1).length() < 1000);
    assertEquals(2, entries.size());
  }

  @Test
  void tablesOfTheFirstVersionAreRead() throws IOException {
    read(OLD_REPAIRS);

    assertEquals(List.of("ex-1", "ex-2"), entries.stream().map(BookEntry::job).toList());
    assertEquals(LocalDate.of(2014, 3, 8), entries.get(0).closed());
    assertEquals(OptionalDouble.empty(), entries.get(0).machine().age());
    assertEquals(OptionalDouble.of(5), entries.get(1).machine().age());
    assertEquals(List.of(2L, 3L, 4L, 5L, 6L), lines);
    String told = problems.toString();
    assertTrue(told.contains("'1009' is 1005 years before the repair; 0 to 200"), told);
    assertTrue(told.contains("'????' is no status"), told);
    assertTrue(told.contains("'Ex' is not a date"), told);
    assertTrue(told.contains("'earlier than 1990' is no number"), told);
    assertTrue(told.contains("has 11 cells; the first row has 12"), told);
  }

  /** As tables of version 0.2.1 are written (openrepair/data, 202009): without an age. */
  @Test
  void tablesOfTheSecondVersionAreRead() throws IOException {
    read(
        """
        id,data_provider,country,partner_product_category,product_category,brand,year_of_manufacture,repair_status,repair_barrier_if_end_of_life,group_identifier,event_date,problem
        ex_1,Ex,DEU,"Kitchen ~ Iron","Iron",Unknown,????,Unknown,,9,2017-02-25,?
        """);

    assertEquals(List.of(), problems);
    assertEquals("iron", entries.get(0).machine().kind());
    assertEquals(Outcome.UNKNOWN, entries.get(0).outcome());
  }

  @Test
  void repairsAreReadAndOddRowsAreTold() throws IOException {
    read("\ufeff" + REPAIRS);

    assertEquals(List.of(2L, 4L, 5L, 6L), lines);
    assertEquals(2, entries.size());
    BookEntry kettle = entries.get(0);
    assertEquals("ex-1", kettle.job());
    assertEquals("kettle", kettle.machine().kind());
    assertEquals(OptionalDouble.of(4), kettle.machine().age());
    assertEquals(Outcome.CURED, kettle.outcome());
    assertEquals("Leaks, \"badly\"\nat the lid", kettle.complaint());
    assertEquals("vacuum-cleaner", entries.get(1).machine().kind());
    assertEquals(Outcome.NOT_REPAIRED, entries.get(1).outcome());
    assertTrue(problems.get(0).contains("'Mended' is no status"), problems.toString());
    assertTrue(problems.toString().contains("'06/05/2023' is not a date"), problems.toString());
    assertTrue(problems.toString().contains("'-1' is no number"), problems.toString());
  }

  @Test
  void aTableOfSomethingElseIsTold() {
    InputException other = assertThrows(InputException.class, () -> read("time,power\n1,2\n"));

    assertEquals(4, other.problems().size());
    assertThrows(InputException.class, () -> read(""));
  }

  @Test
  void aTableThatWasWrittenIsReadAgain() throws IOException {
    read(ENTRY.replace("\"outcome\"", "\"complaint\":\"=cmd|' /C calc'!A0\",\"outcome\""));
    String row = RepairData.row(entries.get(0), "", "NLD");
    assertTrue(row.contains("'=cmd"), row);
    read(RepairData.head() + row);

    assertEquals(entries.get(0).complaint(), entries.get(1).complaint());
    assertEquals("kettle", entries.get(1).machine().kind());
    assertEquals(OptionalDouble.of(3), entries.get(1).machine().age());
  }

  /** OWASP, CSV Injection (from memory): what a cell may not begin with. */
  @Test
  void noCellBeginsAFormula() throws IOException {
    for (String start : List.of("=", "+", "-", "@", "\\t")) {
      read(ENTRY.replace("\"outcome\"", "\"notes\":\"" + start + "1\",\"outcome\""));
    }
    for (BookEntry entry : entries) {
      String row = EntryTable.row(entry);
      assertTrue(row.contains(",'") || row.contains("\"'"), row);
    }
  }
}
