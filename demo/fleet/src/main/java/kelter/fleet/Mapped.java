package kelter.fleet;

import java.util.Iterator;
import java.util.function.Function;

/**
 * What is made of each item when it is asked for, so that a part of the data needs no room.
 *
 * @param items the items
 * @param made what is made of one
 */
record Mapped<T, R>(Iterator<T> items, Function<T, R> made) implements Iterator<R> {

  @Override
  public boolean hasNext() {
    return items.hasNext();
  }

  @Override
  public R next() {
    return made.apply(items.next());
  }
}
