package kelter.testkit.ledger;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** That a test holds a calculation against something outside the project. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@Repeatable(OutsideCheck.All.class)
public @interface OutsideCheck {

  /**
   * Which calculation.
   *
   * @return its id
   */
  String of();

  /**
   * Against what.
   *
   * @return document with clause, example or table, library or program with its version
   */
  String against();

  /**
   * What the check is worth.
   *
   * @return {@link Worth#SEEN} unless stated
   */
  Worth worth() default Worth.SEEN;

  /** Several of them. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.METHOD)
  @interface All {

    /**
     * The checks.
     *
     * @return one or more
     */
    OutsideCheck[] value();
  }
}
