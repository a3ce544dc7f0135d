package kelter.core.file.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kelter.core.file.json.JsonOutline.Member;
import kelter.core.file.json.JsonOutline.Span;

/**
 * Changes members of an object in its text, so that everything else stays to the byte: items are
 * added to arrays and taken out of them, members are added or get another value. What is new is
 * laid out like what stands beside it.
 */
final class JsonEdit {

  private final String text;
  private final JsonOutline outline;
  private final JsonLayout layout;
  private final StringBuilder edited = new StringBuilder();

  /** How far the text has been taken over. */
  private int done;

  private JsonEdit(String text) {
    this.text = text;
    this.outline = JsonOutline.of(text);
    this.layout = JsonLayout.of(text, outline);
  }

  /**
   * A text with changes.
   *
   * @param text a JSON text that was read before, an object with a member
   * @param wanted what it is to say: its own members in their order, with any values, and new ones
   *     behind them
   * @return the text that says so
   */
  static String edited(String text, Json.Obj wanted) {
    JsonEdit edit = new JsonEdit(text);
    Map<String, Json> old = ((Json.Obj) JsonText.value(text)).members();
    List<Map.Entry<String, Json>> added = new ArrayList<>();
    for (Map.Entry<String, Json> member : wanted.members().entrySet()) {
      Json before = old.get(member.getKey());
      if (before == null) {
        added.add(member);
      } else if (!before.equals(member.getValue())) {
        edit.change(edit.outline.members().get(member.getKey()), before, member.getValue());
      }
    }
    edit.append(added);
    return edit.rest();
  }

  private void keepUntil(int place) {
    edited.append(text, done, place);
    done = place;
  }

  private void dropUntil(int place) {
    done = place;
  }

  private String rest() {
    keepUntil(text.length());
    return edited.toString();
  }

  private void change(Member member, Json before, Json wanted) {
    if (before instanceof Json.Arr old && wanted instanceof Json.Arr items) {
      changeItems(member, old.items(), items.items());
    } else {
      keepUntil(member.value().from());
      edited.append(value(member.name(), wanted));
      dropUntil(member.value().to());
    }
  }

  private void append(List<Map.Entry<String, Json>> added) {
    Member last = outline.last();
    String lead = JsonLayout.lead(text, last.name());
    String line = layout.hasLines() ? layout.newline() + JsonLayout.indent(lead) : lead;
    for (Map.Entry<String, Json> member : added) {
      keepUntil(last.value().to());
      edited.append(',').append(line).append(layout.line(new Json.Str(member.getKey())));
      edited.append(layout.colon()).append(value(last.name(), member.getValue()));
    }
  }

  /** A value of a member that stands like another one. */
  private String value(int name, Json value) {
    return layout.hasLines()
        ? layout.lines(value, JsonLayout.indent(JsonLayout.lead(text, name)))
        : layout.line(value);
  }

  private void changeItems(Member member, List<Json> old, List<Json> wanted) {
    boolean[] kept = new boolean[old.size()];
    int next = 0;
    for (int i = 0; i < kept.length && next < wanted.size(); i++) {
      kept[i] = old.get(i).equals(wanted.get(next));
      next += kept[i] ? 1 : 0;
    }
    if (next == 0) {
      keepUntil(member.value().from());
      edited.append(value(member.name(), new Json.Arr(wanted)));
      dropUntil(member.value().to());
      return;
    }
    takeOut(member.items(), kept);
    keepUntil(member.items().get(kept.length - 1).to());
    for (Json item : wanted.subList(next, wanted.size())) {
      edited.append(',').append(like(member.items(), item));
    }
  }

  /** Takes items out; at least one stays. */
  private void takeOut(List<Span> items, boolean... kept) {
    int first = 0;
    while (!kept[first]) {
      first++;
    }
    if (first > 0) {
      keepUntil(items.get(0).from());
      dropUntil(items.get(first).from());
    }
    for (int i = first + 1; i < kept.length; i++) {
      if (!kept[i]) {
        keepUntil(items.get(i - 1).to());
        dropUntil(items.get(i).to());
      }
    }
  }

  /** An item with the white space before it, like the last one of an array. */
  private String like(List<Span> items, Json item) {
    Span last = items.get(items.size() - 1);
    String lead = JsonLayout.lead(text, last.from());
    String newline = JsonLayout.newline(lead);
    boolean oneLine = JsonLayout.isOneLine(text, last.from(), last.to());
    if (newline.isEmpty()) {
      return (items.size() > 1 ? lead : layout.comma().substring(1)) + layout.line(item);
    }
    String indent = JsonLayout.indent(lead);
    return newline + indent + layout.item(item, indent, oneLine);
  }
}
