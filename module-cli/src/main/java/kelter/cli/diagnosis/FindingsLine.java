package kelter.cli.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kelter.cli.terminal.Terminal;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.workshop.Case;

/** The findings of a job in a line: how many, and which of them ask for attention. */
final class FindingsLine {

  private static final int NAMES = 3;

  private final Case machine;
  private final Terminal terminal;

  FindingsLine(Case machine, Terminal terminal) {
    this.machine = machine;
    this.terminal = terminal;
  }

  String line() {
    List<String> told = new ArrayList<>();
    told(Verdict.DOES_NOT_CONFORM, "does not conform", "do not conform", told);
    told(Verdict.UNDECIDED, "undecided", "undecided", told);
    told(Verdict.NOT_MEASURED, "not measured", "not measured", told);
    int good = of(Verdict.CONFORMS).size();
    if (good > 0) {
      told.add(good + (good == 1 ? " conforms" : " conform"));
    }
    List<String> notUsed = notUsed();
    if (!notUsed.isEmpty()) {
      told.add(notUsed.size() + " used by no known fault or limit: " + some(notUsed));
    }
    if (told.isEmpty()) {
      return machine.job().measurements().isEmpty() ? "none yet." : "none that has limits.";
    }
    return String.join("; ", told) + ".";
  }

  /** What neither a fault nor a limit uses. */
  private List<String> notUsed() {
    List<String> held = machine.findings().stream().map(FindingsLine::name).toList();
    return machine.diagnosis().notUsed().stream()
        .map(FindingsLine::name)
        .filter(name -> !held.contains(name))
        .toList();
  }

  private void told(Verdict verdict, String one, String several, List<String> into) {
    List<String> names = of(verdict);
    if (!names.isEmpty()) {
      String said = names.size() + " " + (names.size() == 1 ? one : several) + ": " + some(names);
      into.add(verdict == Verdict.DOES_NOT_CONFORM ? terminal.attention(said) : said);
    }
  }

  /** What was found that forbids to power the machine. */
  List<String> keepingUnplugged() {
    return machine.findings().stream()
        .filter(Finding::keepsUnplugged)
        .map(FindingsLine::name)
        .distinct()
        .toList();
  }

  private List<String> of(Verdict verdict) {
    return machine.findings().stream()
        .filter(finding -> finding.verdict() == verdict)
        .map(FindingsLine::name)
        .toList();
  }

  private static String name(Finding finding) {
    return name(finding.component() + "." + finding.observable());
  }

  private static String name(String key) {
    int dot = key.indexOf('.');
    return key.substring(0, dot) + " " + key.substring(dot + 1).replace('-', ' ');
  }

  /** The first few names, and how many more there are. */
  static String some(List<String> names) {
    String some = names.stream().limit(NAMES).collect(Collectors.joining(", "));
    return names.size() > NAMES ? some + " and " + (names.size() - NAMES) + " more" : some;
  }
}
