package kelter.cli.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Only the commands of the job book come to a database, so that a diagnosis loads none of it. */
class DatabaseStaysAsideTest {

  private static final String STORE = "kelter.cli.book..";

  private static JavaClasses house;

  @BeforeAll
  static void find() {
    house = House.classes();
  }

  @Test
  void onlyTheStoreKnowsJdbc() {
    outside(STORE).check(house);
    assertThrows(AssertionError.class, () -> outside("kelter.cli.elsewhere..").check(house));
  }

  private static ArchRule outside(String store) {
    return noClasses()
        .that()
        .resideInAPackage("kelter..")
        .and()
        .resideOutsideOfPackage(store)
        .should()
        .dependOnClassesThat(resideInAnyPackage("java.sql..", "org.sqlite..", "org.postgresql.."));
  }

  @Test
  void onlyTheCommandsOfTheBookKnowTheStore() {
    outsideCommands("kelter.cli.command.book").check(house);
    assertThrows(
        AssertionError.class, () -> outsideCommands("kelter.cli.command.work").check(house));
  }

  private static ArchRule outsideCommands(String commands) {
    return noClasses()
        .that()
        .resideInAPackage("kelter..")
        .and()
        .resideOutsideOfPackages(STORE, commands)
        .should()
        .dependOnClassesThat(resideInAPackage(STORE));
  }
}
