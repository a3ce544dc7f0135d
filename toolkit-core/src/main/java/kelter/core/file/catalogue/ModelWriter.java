package kelter.core.file.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.catalogue.MachineModel;
import kelter.core.file.json.Json;
import kelter.core.job.Component;
import kelter.core.job.Curve;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.quantity.Quantity;
import kelter.core.safety.ProtectionClass;
import kelter.core.source.Source;

/** Writes a model as it stands in a model file. */
final class ModelWriter {

  private ModelWriter() {}

  /** The content of a file that {@link ModelReader} makes the same model of. */
  static Json.Obj content(MachineModel model) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("format", text(ModelReader.FORMAT));
    members.put("kind", text(model.kind()));
    members.put("maker", text(model.maker()));
    members.put("model", text(model.model()));
    members.put("also", array(model.also().stream().map(ModelWriter::text).toList()));
    putIfAny(members, "nameplate", nameplate(model.nameplate()));
    List<Json> components = new ArrayList<>();
    for (Component component : model.components()) {
      components.add(component(component, model.source()));
    }
    members.put("components", array(components));
    List<Json> codes = new ArrayList<>();
    model
        .codes()
        .forEach(
            (code, means) ->
                codes.add(
                    new Json.Obj(Map.of("code", text(code))).with("means", text(means.id()))));
    members.put("codes", array(codes));
    members.put("source", source(model.source()));
    return new Json.Obj(members);
  }

  private static Json component(Component component, Source ofModel) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("id", text(component.id()));
    if (!component.kind().equals(component.id())) {
      members.put("kind", text(component.kind()));
    }
    putIfAny(members, "nameplate", nameplate(component.nameplate()));
    Map<String, Json> figures = new LinkedHashMap<>();
    component.figures().forEach((id, figure) -> figures.put(id, text(figure)));
    putIfAny(members, "figures", figures);
    Map<String, Json> curves = new LinkedHashMap<>();
    component.curves().forEach((id, curve) -> curves.put(id, curve(curve)));
    putIfAny(members, "curves", curves);
    if (!component.source().equals(ofModel)) {
      members.put("source", source(component.source()));
    }
    return new Json.Obj(members);
  }

  private static Json curve(Curve curve) {
    List<Json> points = new ArrayList<>();
    for (Curve.Point point : curve.points()) {
      points.add(array(List.of(text(point.x()), text(point.y()))));
    }
    return array(points);
  }

  private static Map<String, Json> nameplate(Nameplate nameplate) {
    Map<String, Json> members = new LinkedHashMap<>();
    nameplate.voltage().ifPresent(range -> members.put("voltage", text(range)));
    nameplate.frequency().ifPresent(range -> members.put("frequency", text(range)));
    nameplate.power().ifPresent(range -> members.put("power", text(range)));
    nameplate.current().ifPresent(figure -> members.put("current", text(figure)));
    nameplate
        .protectionClass()
        .map(ProtectionClass::name)
        .ifPresent(name -> members.put("protection-class", text(name)));
    return members;
  }

  private static Json source(Source source) {
    return new Json.Obj(Map.of("document", text(source.document())))
        .with("standing", text(source.standing().words()));
  }

  private static void putIfAny(Map<String, Json> members, String name, Map<String, Json> more) {
    if (!more.isEmpty()) {
      members.put(name, new Json.Obj(more));
    }
  }

  private static Json text(RatedRange range) {
    String low = range.low().format();
    return text(range.isRange() ? low + " - " + range.high().format() : low);
  }

  private static Json text(Quantity quantity) {
    return text(quantity.format());
  }

  private static Json text(String text) {
    return new Json.Str(text);
  }

  private static Json array(List<Json> items) {
    return new Json.Arr(items);
  }
}
