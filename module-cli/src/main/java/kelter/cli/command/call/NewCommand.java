package kelter.cli.command.call;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.command.KindWords;
import kelter.cli.command.entry.Entry;
import kelter.cli.template.ShortJob;
import kelter.cli.template.Template;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.Given;
import kelter.cli.usage.ValueKind;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindBuild;
import kelter.core.catalogue.KindPart;
import kelter.core.file.job.JobDocument;
import kelter.core.file.job.JobFile;
import kelter.core.file.job.MarkedEdit;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.problem.InputException;
import kelter.core.quantity.Nearest;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Vocabulary;
import kelter.core.workshop.Workshop;

/** {@code kelter new KIND}: a job file that tells what is known. */
public final class NewCommand implements Command {

  private static final CommandOption OUTPUT =
      CommandOption.one(
              "--output",
              ValueKind.FILE,
              "FILE",
              "where to write; an existing file is kept (default: jobs/ of the shop, else the terminal)")
          .or("-o");
  private static final CommandOption SYMPTOM =
      new CommandOption(
          "-s",
          "--symptom",
          ValueKind.SYMPTOM,
          "WORDS",
          true,
          "what the machine does, by any of its words; WORDS=no if it was asked and is not so,"
              + " WORDS=sometimes");
  private static final CommandOption DISPLAY =
      CommandOption.many(
          "--display",
          "MEANING",
          "what a lamp or code of the machine means: heat, fill, drain, ...");
  private static final CommandOption SAID =
      CommandOption.one("--said", ValueKind.TEXT, "TEXT", "what the owner says, word for word");
  private static final CommandOption AGE =
      CommandOption.one(
          "--age", ValueKind.TEXT, "AGE", "the age of the machine, in years or such as '9 a'");
  private static final CommandOption MARKET =
      CommandOption.one("--market", ValueKind.TEXT, "MARKET", "where it stands: EU, UK or NA");
  private static final CommandOption MAKE =
      CommandOption.one("--make", ValueKind.TEXT, "NAME", "the maker");
  private static final CommandOption MODEL =
      CommandOption.one("--model", ValueKind.TEXT, "NAME", "the model");
  private static final CommandOption SERIAL =
      CommandOption.one("--serial", ValueKind.TEXT, "NUMBER", "the serial number");
  private static final CommandOption PLATE =
      CommandOption.many(
          "--plate",
          "WORD=VALUE",
          "what stands on the nameplate: voltage, frequency, power, current, protection-class;"
              + " PART.WORD=VALUE for a part");
  private static final CommandOption LACKS =
      CommandOption.many("--lacks", "PART", Entry.LACKS_HELP);
  private static final CommandOption ID =
      CommandOption.one(
          "--id", ValueKind.TEXT, "ID", "the name of the job (default: KIND with a number)");
  private static final CommandOption INSPECTION =
      CommandOption.flag("--inspection", "nobody complains: a routine check");
  private static final CommandOption ALL =
      CommandOption.flag("--all", "the long form, with all that can be told and measured");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "new",
        "Write a job file that tells what is known.",
        "The kind of machine is found by any of its words. The kind 'other' makes a job without"
            + " parts.",
        List.of(
            SYMPTOM,
            DISPLAY,
            SAID,
            AGE,
            MARKET,
            MAKE,
            MODEL,
            SERIAL,
            PLATE,
            LACKS,
            ID,
            INSPECTION,
            ALL,
            OUTPUT,
            Invocation.SHOP),
        List.of(
            new CommandArgument(
                "KIND", ValueKind.KIND, false, true, "the kind of machine, in some words")),
        List.of(
            "kelter new washing-machine -s cold -s leaks=no --age 9a -o job.json",
            "kelter new dryer -s stops --display too-hot -o job.json",
            "kelter new heat pump dryer -s does-not-dry",
            "kelter new other"));
  }

  @Override
  public void run(Invocation invocation) {
    Workshop workshop = invocation.workshop();
    String words = String.join(" ", invocation.given().arguments());
    Optional<Kind> kind = KindWords.kind(words, workshop.kinds());
    String date = LocalDate.now(invocation.clock()).toString();
    if (invocation.given().has(ALL)) {
      write(longForm(kind, date, workshop.vocabulary()), invocation);
      return;
    }
    String word = kind.map(Kind::id).orElse(KindWords.OTHER);
    ShortJob job = new ShortJob(word, date, workshop.vocabulary(), symptoms(kind));
    invocation.shop().folder().ifPresent(shop -> job.job("id", Optional.of(shop.freeId(word))));
    Json.Obj content = shortForm(job, invocation.given()).content();
    Optional<KindBuild> build = kind.flatMap(known -> known.build(words));
    List<String> lacks = new ArrayList<>(build.map(KindBuild::lacks).orElse(List.of()));
    for (String part : invocation.given().list(LACKS)) {
      requirePart(part, kind);
      lacks.add(part);
    }
    for (String part : lacks) {
      content = MarkedEdit.lacking(content, part);
    }
    write(JsonText.write(MarkedEdit.withKinds(content, workshop.kinds())), invocation);
    if (build.isPresent()) {
      invocation.terminal().complain(taken(build.get()));
    } else if (lacks.isEmpty() && kind.isPresent()) {
      kind.get()
          .buildsIn(invocation.given().text(SAID).orElse(""))
          .forEach(spoken -> invocation.terminal().complain(offered(spoken)));
    }
    for (ShortJob.Taken taken : job.taken()) {
      invocation.terminal().complain(taken.line());
    }
    for (Symptom symptom : job.toAsk()) {
      invocation
          .terminal()
          .complain("Ask the owner: " + symptom.question() + " (" + symptom.id() + ")");
    }
  }

  private static String taken(KindBuild build) {
    return "Understood '%s': it has no %s. If it has one, take that out of \"lacks\" in the job."
        .formatted(build.title(), String.join(", ", build.lacks()));
  }

  private static String offered(KindBuild build) {
    return "If it is a %s: kelter enter JOB --lacks %s"
        .formatted(build.title(), String.join(" --lacks ", build.lacks()));
  }

  private static void requirePart(String part, Optional<Kind> kind) {
    List<String> parts =
        kind.map(Kind::parts).orElse(List.of()).stream().map(KindPart::id).toList();
    if (!parts.contains(part)) {
      throw new InputException(
          "--lacks " + part,
          "is no part of such machines",
          Nearest.of(part, parts)
              .map(near -> "did you mean '" + near + "'?")
              .orElse("known: " + String.join(", ", parts)));
    }
  }

  private static Set<String> symptoms(Optional<Kind> kind) {
    return kind.map(Kind::symptoms).orElse(Set.of());
  }

  /** An age without a unit is one in years. */
  private static String years(String age) {
    return age.matches("[0-9]+([.,][0-9]+)?") ? age + " a" : age;
  }

  private static ShortJob shortForm(ShortJob job, Given given) {
    job.job("id", given.text(ID))
        .job("market", given.text(MARKET))
        .job("reason", given.has(INSPECTION) ? Optional.of("inspection") : Optional.empty())
        .machine("maker", given.text(MAKE))
        .machine("model", given.text(MODEL))
        .machine("serial", given.text(SERIAL))
        .machine("age", given.text(AGE).map(NewCommand::years))
        .said(given.text(SAID));
    given.list(PLATE).forEach(job::plate);
    given.list(SYMPTOM).forEach(job::symptom);
    given.list(DISPLAY).forEach(job::displayed);
    return job;
  }

  private static String longForm(Optional<Kind> kind, String date, Vocabulary vocabulary) {
    Map<String, ComponentKind> parts = new LinkedHashMap<>();
    for (KindPart part : kind.map(Kind::parts).orElse(List.of())) {
      vocabulary.kind(part.kind()).ifPresent(known -> parts.put(part.id(), known));
    }
    return Template.of(
        kind.map(Kind::id).orElse(KindWords.OTHER),
        parts,
        kind.map(Kind::asked).orElse(List.of()),
        date,
        vocabulary);
  }

  /** Reads back what was made, so that every mistake in it is told, and writes it. */
  private static void write(String text, Invocation invocation) {
    Json content = JsonText.read(text.getBytes(StandardCharsets.UTF_8), "job", "");
    JobDocument document = invocation.workshop().read(content);
    Optional<Path> named = invocation.given().path(OUTPUT);
    Optional<Path> file =
        named.or(() -> invocation.shop().folder().map(shop -> shop.newJob(document.job().id())));
    if (file.isPresent()) {
      JobFile.writeNew(document, file.get());
      String word = named.isPresent() ? file.get().toString() : document.job().id();
      invocation.terminal().complain("Written: " + file.get() + ". Next: kelter diagnose " + word);
    }
    if (file.isEmpty() || invocation.isJson()) {
      invocation.terminal().printJson(text);
    }
  }
}
