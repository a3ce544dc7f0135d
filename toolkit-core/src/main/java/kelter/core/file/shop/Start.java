package kelter.core.file.shop;

/** Files of a shop to fill in. */
final class Start {

  static final String PROFILE =
      """
      {
        "format": "kelter-shop/1",
        "note": "Fill in repairer, for quotations: name, address, telephone, e-mail, vat-number.",
        "competent-for-live-work": false,
        "instruments": []
      }
      """;

  static final String PRICES =
      """
      {
        "format": "kelter-prices/1",
        "note": "Fill in: date, labour-per-hour, call-out, tax-rate, parts by component-kind.remedy.",
        "currency": "EUR",
        "parts": {}
      }
      """;

  static final String STOCK =
      """
      {
        "format": "kelter-stock/1",
        "parts": []
      }
      """;

  private Start() {}
}
