package kelter.cli.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What exported packages say of how long programs may count on them. */
final class StabilityRules {

  private static final Pattern LINE =
      Pattern.compile("^ \\* <p>Stability: (.+)\\.$", Pattern.MULTILINE);
  private static final Set<String> WORDS = Set.of("stable", "may change", "internal");

  private StabilityRules() {}

  /**
   * The words that the description of a package has for its stability.
   *
   * @param description the text of a {@code package-info.java}
   * @return as many as it has; one is right
   */
  static List<String> stated(String description) {
    return LINE.matcher(description).results().map(line -> line.group(1)).toList();
  }

  /**
   * What is wrong with what a package states.
   *
   * @param name its name
   * @param exported whether its part exports it
   * @param stated what it states
   * @return the breaches
   */
  static List<String> breaches(String name, boolean exported, List<String> stated) {
    if (!exported) {
      return stated.isEmpty()
          ? List.of()
          : List.of(name + " is not exported and promises something");
    }
    if (stated.size() == 1 && WORDS.contains(stated.get(0))) {
      return List.of();
    }
    return List.of(name + " states " + stated + ", not one of " + new TreeSet<>(WORDS));
  }

  /**
   * Where stable packages hand out what is not: whoever uses the one uses the other.
   *
   * @param stable the names of the stable packages
   * @param classes the classes of the house
   * @return the breaches
   */
  static List<String> leaks(Set<String> stable, JavaClasses classes) {
    Set<String> leaks = new TreeSet<>();
    for (JavaClass type : classes) {
      if (stable.contains(type.getPackageName()) && isSeen(type)) {
        handedOut(type)
            .flatMap(each -> each.getAllInvolvedRawTypes().stream())
            .map(JavaClass::getPackageName)
            .filter(name -> name.startsWith("kelter.") && !stable.contains(name))
            .forEach(name -> leaks.add(type.getName() + " hands out " + name));
      }
    }
    return new ArrayList<>(leaks);
  }

  private static boolean isSeen(JavaClass type) {
    return type.getModifiers().contains(JavaModifier.PUBLIC)
        && type.getEnclosingClass().map(StabilityRules::isSeen).orElse(true);
  }

  private static Stream<JavaType> handedOut(JavaClass type) {
    Stream<JavaType> above =
        Stream.concat(type.getSuperclass().stream(), type.getInterfaces().stream());
    Stream<JavaType> members =
        type.getMembers().stream().filter(StabilityRules::isSeen).flatMap(StabilityRules::types);
    return Stream.concat(above, members);
  }

  private static boolean isSeen(JavaMember member) {
    Set<JavaModifier> modifiers = member.getModifiers();
    return (modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED))
        && !modifiers.contains(JavaModifier.SYNTHETIC);
  }

  private static Stream<JavaType> types(JavaMember member) {
    if (member instanceof JavaCodeUnit unit) {
      return Stream.concat(Stream.of(unit.getReturnType()), unit.getParameterTypes().stream());
    }
    return member.getAllInvolvedRawTypes().stream().map(JavaType.class::cast);
  }
}
