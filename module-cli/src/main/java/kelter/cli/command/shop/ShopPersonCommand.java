package kelter.cli.command.shop;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.cli.command.Command;
import kelter.cli.command.Complaints;
import kelter.cli.command.Invocation;
import kelter.cli.command.NamedShop;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.file.person.Persons;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.shop.Person;

/** {@code kelter shop person ID}: whose jobs are whose, apart from the jobs. */
public final class ShopPersonCommand implements Command {

  private static final CommandOption NAME =
      CommandOption.one("--name", ValueKind.TEXT, "NAME", "the name");
  private static final CommandOption ADDRESS =
      CommandOption.many("--address", "LINE", "a line of the address");
  private static final CommandOption TELEPHONE =
      CommandOption.one("--telephone", ValueKind.TEXT, "NUMBER", "the telephone");
  private static final CommandOption EMAIL =
      CommandOption.one("--e-mail", ValueKind.TEXT, "ADDRESS", "the e-mail");
  private static final CommandOption JOB =
      CommandOption.many("--job", "ID", "the id of a job of this person");
  private static final CommandOption NO_JOB =
      CommandOption.many("--no-job", "ID", "the id of a job that is not of this person any more");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
            "shop person",
            "Keep name and address of an owner, apart from all jobs.",
            "They come on quotation and report only, for the jobs that are named here. 'kelter shop"
                + " forget' erases them.",
            List.of(NAME, ADDRESS, TELEPHONE, EMAIL, JOB, NO_JOB, NamedShop.OPTION),
            List.of(
                CommandArgument.one(
                    "PERSON", ValueKind.TEXT, "a word for the person that does not tell the name")),
            List.of("kelter shop person p-17 --name Sample --job washer-3 --shop my-shop"))
        .forPeople();
  }

  @Override
  public void run(Invocation invocation) {
    Persons persons = of(invocation);
    String id = invocation.argument();
    Optional<Person> known = persons.person(id);
    requireSense(id, known, invocation);
    Person person;
    try {
      person = changed(id, known, invocation);
    } catch (IllegalArgumentException refused) {
      throw new InputException(id, refused.getMessage(), "add --name, and jobs by their ids");
    }
    Persons.Written written = persons.write(person);
    Complaints.tell(written.unread(), invocation.terminal());
    Layout layout = new Layout(invocation.terminal());
    layout.line((known.isPresent() ? "Changed: " : "Kept: ") + written.file());
    layout.line(
        person.jobs().isEmpty()
            ? "No job is named yet: --job ID"
            : "Jobs: " + String.join(", ", person.jobs()));
    person.jobs().stream()
        .filter(job -> !invocation.shop().hasJob(job))
        .forEach(job -> layout.hanging("", notThere(job, invocation)));
    invocation.terminal().print(layout.toString());
  }

  private static String notThere(String job, Invocation invocation) {
    Optional<String> near = invocation.shop().folder().flatMap(each -> each.jobNear(job));
    return "There is no job '"
        + job
        + "' in the shop's jobs/ folder"
        + near.map(other -> "; did you mean '" + other + "'?").orElse(" yet.");
  }

  private static void requireSense(String id, Optional<Person> known, Invocation invocation) {
    List<Problem> problems = new ArrayList<>();
    for (String job : invocation.given().list(NO_JOB)) {
      if (invocation.given().list(JOB).contains(job)) {
        problems.add(
            new Problem(NO_JOB.name() + " " + job, "is also given as --job", "give one of both"));
      } else if (known.filter(person -> person.jobs().contains(job)).isEmpty()) {
        problems.add(
            new Problem(
                NO_JOB.name() + " " + job,
                "is no job of " + id,
                known.map(Person::jobs).filter(jobs -> !jobs.isEmpty()).isPresent()
                    ? "the jobs are " + String.join(", ", known.get().jobs())
                    : "no job is named for this person"));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  /** The persons of the shop that is named. */
  static Persons of(Invocation invocation) {
    return invocation
        .shop()
        .folder()
        .map(folder -> new Persons(folder.path()))
        .orElseThrow(
            () ->
                new InputException(
                    "--shop", "no folder of a shop is named", "name it with --shop DIR"));
  }

  private static Person changed(String id, Optional<Person> known, Invocation invocation) {
    Set<String> jobs = new LinkedHashSet<>(known.map(Person::jobs).orElse(List.of()));
    jobs.addAll(invocation.given().list(JOB));
    invocation.given().list(NO_JOB).forEach(jobs::remove);
    List<String> address = invocation.given().list(ADDRESS);
    return new Person(
        id,
        invocation.given().text(NAME).or(() -> known.map(Person::name)).orElse(""),
        address.isEmpty() ? known.map(Person::address).orElse(List.of()) : address,
        invocation.given().text(TELEPHONE).or(() -> known.map(Person::telephone)).orElse(""),
        invocation.given().text(EMAIL).or(() -> known.map(Person::email)).orElse(""),
        new ArrayList<>(jobs));
  }
}
