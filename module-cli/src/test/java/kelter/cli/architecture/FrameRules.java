package kelter.cli.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** How a room is furnished: laws below, parts above, and every idea in its one frame. */
final class FrameRules {

  private static final List<String> ROOMS = List.of("hydraulics", "electrical", "costing");
  private static final String CORE = "kelter.core.";
  private static final String PART = CORE + "module.Part";
  private static final String MODEL = CORE + "diagnosis.model.";
  private static final String SOLVER = MODEL + "Circumstances$Solver";
  private static final String CIRCUMSTANCES = MODEL + "Circumstances";

  private static final Set<String> WORDS_OF_FAULTS =
      Set.of(
          MODEL + "FaultRow",
          MODEL + "Work",
          MODEL + "Effect",
          MODEL + "PartModel",
          CORE + "diagnosis.Fault",
          CORE + "diagnosis.Remedy");

  private final String root;

  FrameRules(String root) {
    this.root = root;
  }

  Map<String, ArchRule> all() {
    Map<String, ArchRule> rules = new LinkedHashMap<>();
    rules.put("laws know no part", lawsKnowNoPart());
    rules.put("physics knows no fault", physicsKnowsNoFault());
    rules.put("faults are rows of a part's model", faultsAreRows());
    rules.put("limits are rows of checks", limitsAreRows());
    return rules;
  }

  private ArchRule lawsKnowNoPart() {
    return noClasses()
        .that(inRooms().and(DescribedPredicate.not(inPartPackage())).and(notTheList()))
        .should()
        .dependOnClassesThat(inRooms().and(inPartPackage()))
        .allowEmptyShould(true);
  }

  private ArchRule physicsKnowsNoFault() {
    return noClasses()
        .that(inRooms().and(solves()))
        .should()
        .dependOnClassesThat(
            describe("speak of faults", type -> WORDS_OF_FAULTS.contains(type.getName())))
        .allowEmptyShould(true);
  }

  private ArchRule faultsAreRows() {
    return noClasses()
        .that(inRooms())
        .should()
        .dependOnClassesThat(
            describe("forecast", type -> type.getName().equals(CORE + "diagnosis.Forecaster")))
        .orShould()
        .beAssignableTo(CORE + "diagnosis.FaultModel")
        .allowEmptyShould(true);
  }

  /** A sign that is there or not has no limits; a check of its own may say so. */
  private ArchRule limitsAreRows() {
    return noClasses()
        .that(inRooms())
        .should()
        .callMethodWhere(
            describe(
                "judges a figure",
                call ->
                    call.getTargetOwner().getName().equals(CORE + "check.Judgement")
                        && call.getTarget().getName().equals("of")))
        .allowEmptyShould(true);
  }

  private DescribedPredicate<JavaClass> inRooms() {
    return describe(
        "in a room", type -> ROOMS.stream().anyMatch(room -> isUnder(type.getPackageName(), room)));
  }

  private boolean isUnder(String name, String room) {
    return (name + ".").startsWith(root + "." + room + ".");
  }

  /** The class of the module itself lists both. */
  private DescribedPredicate<JavaClass> notTheList() {
    return describe(
        "not the list of the room",
        type -> ROOMS.stream().noneMatch(room -> type.getPackageName().equals(root + "." + room)));
  }

  private static DescribedPredicate<JavaClass> inPartPackage() {
    return describe(
        "of a part",
        type ->
            type.getPackage().getClasses().stream().anyMatch(each -> each.isAssignableTo(PART)));
  }

  private static DescribedPredicate<JavaClass> solves() {
    return describe(
        "that solves states",
        type ->
            type.isAssignableTo(SOLVER)
                || type.isAssignableTo(CIRCUMSTANCES)
                || type.getMethods().stream()
                    .anyMatch(method -> method.getRawReturnType().isAssignableTo(SOLVER)));
  }
}
