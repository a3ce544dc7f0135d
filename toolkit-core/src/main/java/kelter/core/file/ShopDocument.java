package kelter.core.file;

import java.util.List;
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
   * The same profile, with what a column of the logs holds.
   *
   * @param column the column; it takes the place of what was known of a column of that heading
   * @return a new document
   */
  public ShopDocument with(LogColumn column) {
    Json.Arr kept = new Json.Arr(List.of());
    if (content.members().get(COLUMNS) instanceof Json.Arr known) {
      for (Json item : known.items()) {
        kept = isOf(item, column.column()) ? kept : kept.plus(item);
      }
    }
    return ShopReader.read(content.with(COLUMNS, kept.plus(ShopReader.content(column))));
  }

  private static boolean isOf(Json item, String heading) {
    return item instanceof Json.Obj object
        && object.members().get("column") instanceof Json.Str name
        && name.text().equals(heading);
  }
}
