package kelter.cli.json.output;

/**
 * A result that can be written as JSON.
 *
 * @param format what its member {@code format} says
 * @param document writes all other members but who made it
 */
public record JsonResult(String format, JsonOutput.Document document) {

  /**
   * The result as a text.
   *
   * @param by who made it
   * @return JSON
   */
  public String text(MadeBy by) {
    return JsonOutput.text(this, by, false);
  }

  /**
   * The result on one line.
   *
   * @param by who made it
   * @return JSON with a line end
   */
  public String line(MadeBy by) {
    return JsonOutput.text(this, by, true);
  }
}
