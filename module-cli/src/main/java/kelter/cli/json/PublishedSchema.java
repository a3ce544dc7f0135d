package kelter.cli.json;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import kelter.cli.json.output.JsonResult;
import kelter.core.file.book.EntryLine;
import kelter.core.file.book.LearnedFile;
import kelter.core.file.catalogue.KindFile;
import kelter.core.file.catalogue.LockOutFile;
import kelter.core.file.catalogue.ModelFile;
import kelter.core.file.catalogue.WorkStepsFile;
import kelter.core.file.job.JobFile;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.file.person.PersonFile;
import kelter.core.file.shop.PriceFile;
import kelter.core.file.shop.ShopFile;
import kelter.core.file.shop.StockFile;

/**
 * A JSON Schema (2020-12) of a file or a result.
 *
 * @param name the word for it
 * @param text the schema, JSON
 */
public record PublishedSchema(String name, String text) {

  /**
   * The schemas of all files and results.
   *
   * @return the files first
   */
  public static List<PublishedSchema> all() {
    List<PublishedSchema> all = new ArrayList<>();
    all.add(new PublishedSchema("job", JobFile.schema()));
    all.add(new PublishedSchema("job-1", JobFile.schemaOfVersionOne()));
    all.add(new PublishedSchema("shop", ShopFile.schema()));
    all.add(new PublishedSchema("kind", KindFile.schema()));
    all.add(new PublishedSchema("work", WorkStepsFile.schema()));
    all.add(new PublishedSchema("prices", PriceFile.schema()));
    all.add(new PublishedSchema("stock", StockFile.schema()));
    all.add(new PublishedSchema("person", PersonFile.schema()));
    all.add(new PublishedSchema("model", ModelFile.schema()));
    all.add(new PublishedSchema("lock-out", LockOutFile.schema()));
    all.add(new PublishedSchema("book-entry", EntryLine.schema()));
    all.add(new PublishedSchema("learned", LearnedFile.schema()));
    all.add(new PublishedSchema("request", AnswerJson.requestSchema()));
    all.add(new PublishedSchema("answer", AnswerJson.schema()));
    for (ResultFormat format : ResultFormat.values()) {
      all.add(new PublishedSchema(format.word(), format.schema()));
    }
    return all;
  }

  /**
   * What it says of itself.
   *
   * @return its title
   */
  public String title() {
    return member("title");
  }

  /**
   * What other schemas know it by.
   *
   * @return a URN
   */
  public String id() {
    return member("$id");
  }

  private String member(String member) {
    var schema = (Json.Obj) JsonText.read(text.getBytes(StandardCharsets.UTF_8), name, "");
    return ((Json.Str) schema.members().get(member)).text();
  }

  /**
   * Schemas as a result.
   *
   * @param schemas the schemas
   * @return the result
   */
  public static JsonResult list(List<PublishedSchema> schemas) {
    return new JsonResult(
        ResultFormat.SCHEMAS.id(),
        out ->
            out.objects(
                "schemas",
                schemas,
                schema -> {
                  out.text("name", schema.name());
                  out.text("id", schema.id());
                  out.text("title", schema.title());
                }));
  }
}
