package kelter.cli.json;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import kelter.cli.json.output.JsonOutput;
import kelter.cli.json.output.JsonResult;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.work.Accepted;
import kelter.core.owner.TaxRate;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quote.Bill;
import kelter.core.quote.Invoice;
import kelter.core.quote.Offer;
import kelter.core.quote.Quote;
import kelter.core.quote.RepairForm;
import kelter.core.shop.Repairer;
import kelter.core.vocabulary.Statement;
import kelter.core.workshop.Case;

/** Quotations, data of invoices and data for the repair form as JSON. Money is told as text. */
public final class QuoteJson {

  private QuoteJson() {}

  /**
   * A quotation.
   *
   * @param quote the quotation
   * @param machine its case
   * @return the result
   */
  public static JsonResult of(Quote quote, Case machine) {
    return new JsonResult(
        ResultFormat.QUOTE.id(),
        out -> {
          LockOutJson.write(out, machine.lockOut());
          out.text("job", quote.job());
          out.cautions(machine.cautions());
          out.text("day", quote.day().toString());
          out.text("valid-until", quote.validUntil().toString());
          out.text("market", quote.market().name());
          writeRepairer(out, quote.offering().repairer());
          writeStop(out, quote.stop());
          writeCause(out, quote.cause());
          out.objects("options", quote.offers(), offer -> writeOffer(out, offer));
          if (quote.ifDeclined().isPresent()) {
            writeBill(out, "if-declined", quote.ifDeclined().get());
          }
          out.textOrNull("call-out-credited", quote.credited().map(yes -> yes ? "yes" : "no"));
          out.textOrNull("guarantee", quote.guarantee().map(Quantity::format));
          out.statements("terms", quote.terms());
        });
  }

  /**
   * The data of an invoice.
   *
   * @param invoice the data
   * @param machine its case
   * @return the result
   */
  public static JsonResult of(Invoice invoice, Case machine) {
    return new JsonResult(
        ResultFormat.INVOICE.id(),
        out -> {
          LockOutJson.write(out, machine.lockOut());
          out.text("job", invoice.job());
          out.cautions(machine.cautions());
          out.textOrNull("number", invoice.number());
          out.text("day", invoice.day().toString());
          out.textOrNull("done", invoice.done().map(Object::toString));
          out.text("market", invoice.market().name());
          writeRepairer(out, invoice.offering().repairer());
          writeBill(out, "bill", invoice.bill());
          if (invoice.accepted().isPresent()) {
            out.object("accepted", () -> writeAccepted(out, invoice.accepted().get()));
          }
          out.textOrNull("difference", invoice.difference().map(Money::format));
          out.text("guarantee", invoice.guarantee());
          out.textOrNull("charged", invoice.charged().map(Money::format));
          out.text("call-back", invoice.callBack());
        });
  }

  /**
   * Data for the repair form.
   *
   * @param form the data
   * @param quote the quotation it was made of
   * @param machine its case
   * @return the result
   */
  public static JsonResult of(RepairForm form, Quote quote, Case machine) {
    return new JsonResult(
        ResultFormat.REPAIR_FORM.id(),
        out -> {
          LockOutJson.write(out, machine.lockOut());
          out.text("job", quote.job());
          out.cautions(machine.cautions());
          out.text("day", quote.day().toString());
          out.objects(
              "fields",
              form.fields(),
              field -> {
                out.text("id", field.id());
                out.text("title", field.title());
                out.textOrNull("value", field.value());
                out.word(
                    "missing",
                    field.missing().map(Statement::id).orElse(null),
                    field.missing().map(Statement::text).orElse(""));
              });
        });
  }

  private static void writeRepairer(JsonOutput out, Repairer repairer) throws IOException {
    out.object(
        "repairer",
        () -> {
          out.text("name", repairer.name());
          out.text("address", repairer.address());
          out.text("telephone", repairer.telephone());
          out.text("e-mail", repairer.email());
          out.text("online", repairer.online());
          out.text("vat-number", repairer.vatNumber());
          out.text("register", repairer.register());
        });
  }

  private static void writeStop(JsonOutput out, Quote.Stop stop) throws IOException {
    out.object(
        "stop",
        () -> {
          out.bool("bars-all", stop.all());
          out.bool("only-what-ends-it", stop.only());
          out.statements("first", stop.first());
        });
  }

  private static void writeCause(JsonOutput out, Quote.Cause cause) throws IOException {
    out.object(
        "cause",
        () -> {
          out.bool("decided", cause.decided());
          out.texts("faults", cause.faults());
          out.probability("probability", cause.probability());
          out.word("action", cause.advice().id(), cause.action());
        });
  }

  private static void writeOffer(JsonOutput out, Offer offer) throws IOException {
    out.text("id", offer.id());
    out.text("title", offer.title());
    out.texts("remedies", offer.work().stream().map(Remedy::key).toList());
    out.number("minutes", offer.minutes());
    out.bool("maximum", offer.maximum());
    writeBill(out, "bill", offer.bill());
  }

  private static void writeAccepted(JsonOutput out, Accepted accepted) throws IOException {
    out.number("option", accepted.option());
    out.text("title", accepted.title());
    writeMoney(out, "most", accepted.most());
    out.text("date", accepted.date());
  }

  private static void writeBill(JsonOutput out, String name, Bill bill) throws IOException {
    out.object(
        name,
        () -> {
          out.text("currency", bill.currency().getCurrencyCode());
          out.bool("prices-with-tax", bill.included());
          out.text("tax-rounding", bill.rounding().id());
          out.objects("lines", bill.lines(), line -> writeLine(out, line, bill));
          writeRates(out, bill.rates());
          writeMoney(out, "net", bill.net());
          writeMoney(out, "tax", bill.tax());
          writeMoney(out, "total", bill.total());
          out.texts("open", bill.open());
        });
  }

  private static void writeLine(JsonOutput out, Bill.Line line, Bill bill) throws IOException {
    out.text("title", line.item().title());
    out.text("kind", line.item().kind().id());
    out.text("count", line.item().count().toPlainString());
    out.text("unit", line.item().unit().id());
    writeMoney(out, "price", line.item().price().map(price -> new Money(price, bill.currency())));
    out.textOrNull("tax-rate", line.item().rate().map(TaxRate::format));
    writeMoney(out, "amount", line.amount());
    writeMoney(out, "tax", line.tax());
  }

  private static void writeRates(JsonOutput out, List<Bill.RateSum> rates) throws IOException {
    out.objects(
        "rates",
        rates,
        rate -> {
          out.text("tax-rate", rate.rate().format());
          writeMoney(out, "taxable", Optional.of(rate.taxable()));
          writeMoney(out, "tax", Optional.of(rate.tax()));
        });
  }

  private static void writeMoney(JsonOutput out, String name, Optional<Money> money)
      throws IOException {
    out.textOrNull(name, money.map(Money::format));
  }
}
