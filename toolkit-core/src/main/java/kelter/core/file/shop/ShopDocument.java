package kelter.core.file.shop;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.shop.LogColumn;
import kelter.core.shop.Shop;

/**
 * A shop profile together with the content of its file, so that it can be written back without
 * loss.
 *
 * @param shop the shop
 * @param content the content of the file
 */
public record ShopDocument(Shop shop, Json.Obj content) {

  private static final String COLUMNS = "columns";

  /**
   * The text of the file.
   *
   * @return JSON, two blanks a level
   */
  public String text() {
    return JsonText.write(content);
  }

  /**
   * The plugin folder that it names.
   *
   * @return a path, from the folder of the profile unless it is absolute; empty if there is none
   */
  public Optional<String> plugins() {
    return content.members().get("plugins") instanceof Json.Str folder
        ? Optional.of(folder.text())
        : Optional.empty();
  }

  /**
   * The same profile, with what columns of the logs hold.
   *
   * @param columns the columns; they take the place of all that was known of columns with their
   *     headings
   * @return a new document
   */
  public ShopDocument with(List<LogColumn> columns) {
    Set<String> headings = new HashSet<>();
    columns.forEach(column -> headings.add(column.column()));
    Json.Arr kept = new Json.Arr(List.of());
    if (content.members().get(COLUMNS) instanceof Json.Arr known) {
      for (Json item : known.items()) {
        kept = headings.contains(heading(item)) ? kept : kept.plus(item);
      }
    }
    for (LogColumn column : columns) {
      kept = kept.plus(ShopReader.content(column));
    }
    return ShopReader.read(content.with(COLUMNS, kept));
  }

  private static String heading(Json item) {
    return item instanceof Json.Obj object
            && object.members().get("column") instanceof Json.Str heading
        ? heading.text()
        : "";
  }
}
