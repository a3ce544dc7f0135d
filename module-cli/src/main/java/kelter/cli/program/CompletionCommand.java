package kelter.cli.program;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.command.KindWords;
import kelter.cli.completion.Completion;
import kelter.cli.json.PublishedSchema;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.module.Calculation;
import kelter.core.vocabulary.Symptom;
import kelter.core.workshop.Workshop;

/** {@code kelter completion SHELL}: a script that completes what is typed. */
final class CompletionCommand implements Command {

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
            "completion",
            "Print a script with which a shell completes what you type.",
            "Write it into a file: 'kelter completion bash > FILE'. For bash, load it in ~/.bashrc with 'source FILE'. For zsh, call it"
                + " _kelter and put it into a folder of fpath. For fish, put it into"
                + " ~/.config/fish/completions/kelter.fish. It proposes the kinds of machines and the"
                + " symptoms known when it was made.",
            List.of(Invocation.SHOP),
            List.of(CommandArgument.one("SHELL", ValueKind.SHELL, "the shell: bash, zsh or fish")),
            List.of("kelter completion bash", "kelter completion zsh", "kelter completion fish"))
        .forPeople();
  }

  @Override
  public void run(Invocation invocation) {
    Completion completion = new Completion(Commands.usages(), words(invocation.workshop()));
    invocation.terminal().print(completion.script(invocation.argument()));
  }

  private static Map<ValueKind, List<String>> words(Workshop workshop) {
    List<String> kinds = new ArrayList<>(workshop.kinds().ids());
    kinds.add(KindWords.OTHER);
    Map<ValueKind, List<String>> words = new EnumMap<>(ValueKind.class);
    words.put(ValueKind.KIND, kinds);
    words.put(
        ValueKind.SYMPTOM, workshop.vocabulary().symptoms().stream().map(Symptom::id).toList());
    words.put(
        ValueKind.CALCULATION, workshop.calculations().stream().map(Calculation::id).toList());
    words.put(ValueKind.SCHEMA, PublishedSchema.all().stream().map(PublishedSchema::name).toList());
    words.put(
        ValueKind.COMMAND,
        Commands.NAMES.stream().flatMap(name -> List.of(name.split(" ")).stream()).toList());
    return words;
  }
}
