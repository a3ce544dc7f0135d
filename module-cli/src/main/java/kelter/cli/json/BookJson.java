package kelter.cli.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.cli.json.output.JsonResult;
import kelter.core.book.BookEntry;
import kelter.core.book.Similar;
import kelter.core.book.SimilarCauses;
import kelter.core.file.book.EntryLine;
import kelter.core.file.json.Json;

/** Results of the job book. */
public final class BookJson {

  private BookJson() {}

  /**
   * What became of entries that were to be added.
   *
   * @param added how many are in the book now that were not before
   * @param known how many were there already
   * @param other how many jobs are in the book with another content
   * @param refused how many cannot be used
   */
  public record Counts(int added, int known, int other, int refused) {}

  /**
   * What was added.
   *
   * @param counts how many
   * @return the result
   */
  public static JsonResult added(Counts counts) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("added", number(counts.added()));
    members.put("known", number(counts.known()));
    members.put("other", number(counts.other()));
    members.put("refused", number(counts.refused()));
    return result(ResultFormat.BOOK_ADDED, members);
  }

  /**
   * Some entries.
   *
   * @param entries the entries
   * @return the result
   */
  public static JsonResult entries(List<BookEntry> entries) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("entries", new Json.Arr(entries.stream().map(BookJson::entry).toList()));
    return result(ResultFormat.BOOK_ENTRIES, members);
  }

  private static Json entry(BookEntry entry) {
    return EntryLine.json(entry);
  }

  /**
   * Jobs like one.
   *
   * @param job what was looked for
   * @param found the jobs, the likest first
   * @param cameBack by the id of a job its call-backs
   * @return the result
   */
  public static JsonResult similar(
      String job, List<Similar> found, Map<String, List<String>> cameBack) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("job", new Json.Str(job));
    members.put(
        "causes", new Json.Arr(SimilarCauses.of(found).stream().map(BookJson::cause).toList()));
    members.put(
        "similar",
        new Json.Arr(
            found.stream()
                .map(each -> similar(each, cameBack.getOrDefault(each.entry().job(), List.of())))
                .toList()));
    return result(ResultFormat.BOOK_SIMILAR, members);
  }

  private static Json cause(SimilarCauses cause) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("cause", new Json.Str(cause.cause()));
    members.put("share", number(cause.share()));
    members.put("jobs", number(cause.jobs()));
    cause.minutes().ifPresent(minutes -> members.put("minutes", number(minutes)));
    return new Json.Obj(members);
  }

  private static Json similar(Similar each, List<String> cameBack) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("points", number(each.points()));
    members.put("entry", entry(each.entry()));
    members.put(
        "came-back-as",
        new Json.Arr(cameBack.stream().map(job -> (Json) new Json.Str(job)).toList()));
    return new Json.Obj(members);
  }

  /**
   * A copy that was made.
   *
   * @param file where it is
   * @param jobs how many jobs are in it
   * @return the result
   */
  public static JsonResult backup(String file, long jobs) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("file", new Json.Str(file));
    members.put("jobs", number(jobs));
    return result(ResultFormat.BOOK_BACKUP, members);
  }

  /**
   * Whether a book is sound.
   *
   * @param jobs how many jobs are in it; 0 where it is not
   * @param wrong what is wrong
   * @return the result
   */
  public static JsonResult check(long jobs, List<String> wrong) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("sound", new Json.Bool(wrong.isEmpty()));
    members.put("jobs", number(jobs));
    members.put(
        "wrong", new Json.Arr(wrong.stream().map(each -> (Json) new Json.Str(each)).toList()));
    return result(ResultFormat.BOOK_CHECK, members);
  }

  private static Json number(long value) {
    return new Json.Num(Long.toString(value));
  }

  private static Json number(double value) {
    return new Json.Num(Double.toString(value));
  }

  private static JsonResult result(ResultFormat format, Map<String, Json> members) {
    return new JsonResult(
        format.id(),
        out -> {
          for (Map.Entry<String, Json> member : members.entrySet()) {
            out.json(member.getKey(), member.getValue());
          }
        });
  }
}
