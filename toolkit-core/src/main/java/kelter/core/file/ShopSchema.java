package kelter.core.file;

/** The JSON Schema (2020-12) of shop profiles, for editors and other programs. */
public final class ShopSchema {

  private static final String RESOURCE = "kelter-shop-1.schema.json";

  private ShopSchema() {}

  /**
   * The text of the schema.
   *
   * @return JSON
   */
  public static String text() {
    return JobSchema.resource(RESOURCE);
  }
}
