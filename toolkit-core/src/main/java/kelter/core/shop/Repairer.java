package kelter.core.shop;

import kelter.core.problem.Required;

/**
 * Who offers the work, as a quotation and an invoice tell it. What is not told is empty.
 *
 * @param name the name of the business
 * @param address the address of its establishment
 * @param telephone its telephone number
 * @param email its e-mail address
 * @param online other contact online
 * @param vatNumber its number for value added tax
 * @param register where it is registered, with the number
 */
public record Repairer(
    String name,
    String address,
    String telephone,
    String email,
    String online,
    String vatNumber,
    String register) {

  /** A repairer of whom nothing is told. */
  public static final Repairer UNKNOWN = new Repairer("", "", "", "", "", "", "");

  /** Checks that nothing is null. */
  public Repairer {
    Required.value(name, "name of a repairer");
    Required.value(address, "address of a repairer");
    Required.value(telephone, "telephone number of a repairer");
    Required.value(email, "e-mail address of a repairer");
    Required.value(online, "online contact of a repairer");
    Required.value(vatNumber, "VAT number of a repairer");
    Required.value(register, "register of a repairer");
  }
}
