package kelter.core.job;

import java.util.Map;
import java.util.Optional;
import kelter.core.problem.Required;
import kelter.core.quantity.Quantity;
import kelter.core.source.Source;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Ids;

/**
 * A part that can be measured or can fail.
 *
 * @param id its name within the appliance
 * @param kind the kind of component, a word of a module
 * @param nameplate its own nameplate
 * @param figures its service figures by the words of the module
 * @param curves its curves by the words of the module
 * @param source where figures and curves come from
 */
public record Component(
    String id,
    String kind,
    Nameplate nameplate,
    Map<String, Quantity> figures,
    Map<String, Curve> curves,
    Source source) {

  /**
   * Checks that nothing is null.
   *
   * @throws IllegalArgumentException if id or kind is not an id
   */
  public Component {
    Ids.require(Required.value(id, "id of a component"));
    Ids.require(Required.value(kind, "kind of a component"));
    Required.value(nameplate, "nameplate of a component");
    Required.value(source, "source of a component");
    figures = Required.map(figures, "figures of a component");
    curves = Required.map(curves, "curves of a component");
  }

  /**
   * The name of a component as a person reads it.
   *
   * @param id its id, such as {@code thermal-cut-out}
   * @return the words of it, such as "thermal cut-out"
   */
  public static String words(String id) {
    return id.replace('-', ' ').replace("cut out", "cut-out");
  }

  /**
   * A service figure.
   *
   * @param name a word of the module
   * @return the figure, or empty if the job has none
   */
  public Optional<Quantity> figure(String name) {
    return Optional.ofNullable(figures.get(name));
  }

  /**
   * A service figure.
   *
   * @param figure which
   * @return the figure, or empty if the job has none
   */
  public Optional<Quantity> figure(Characteristic figure) {
    return figure(figure.id());
  }

  /**
   * A service figure as a number.
   *
   * @param figure which
   * @return its value in the coherent SI unit; NaN, which is neither above nor below any limit, if
   *     the job has none
   */
  public double si(Characteristic figure) {
    return si(figure, Double.NaN);
  }

  /**
   * A service figure as a number, or what is taken where the job has none.
   *
   * @param figure which
   * @param usual what is taken, in the coherent SI unit
   * @return its value in the coherent SI unit
   */
  public double si(Characteristic figure, double usual) {
    Quantity stated = figures.get(figure.id());
    return stated == null ? usual : stated.si();
  }

  /**
   * A curve.
   *
   * @param curve which
   * @return the curve, or empty if the job has none
   */
  public Optional<Curve> curve(CurveKind curve) {
    return curve(curve.id());
  }

  /**
   * A curve.
   *
   * @param name a word of the module
   * @return the curve, or empty if the job has none
   */
  public Optional<Curve> curve(String name) {
    return Optional.ofNullable(curves.get(name));
  }
}
