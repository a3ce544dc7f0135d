package kelter.testkit.ledger;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** That nothing outside the project was found against which a test could hold a calculation. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@Repeatable(NoOutsideCheck.All.class)
public @interface NoOutsideCheck {

  /**
   * Which calculation.
   *
   * @return its id
   */
  String of();

  /**
   * Why there is none.
   *
   * @return the reason, and what the test does instead
   */
  String because();

  /** Several of them. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.METHOD)
  @interface All {

    /**
     * The reasons.
     *
     * @return one or more
     */
    NoOutsideCheck[] value();
  }
}
