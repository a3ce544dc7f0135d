package kelter.core.shop;

import java.util.ArrayList;
import java.util.List;
import kelter.core.problem.Required;
import kelter.core.vocabulary.Ids;

/**
 * An owner of machines. What is told of persons stands here and nowhere else.
 *
 * @param id the word by which the shop knows the person; it should not tell the name
 * @param name the name
 * @param address the lines of the address
 * @param telephone may be empty
 * @param email may be empty
 * @param jobs the ids of the person's jobs, each once
 */
public record Person(
    String id,
    String name,
    List<String> address,
    String telephone,
    String email,
    List<String> jobs) {

  /**
   * Checks the ids.
   *
   * @throws IllegalArgumentException if one is not an id, or there is no name
   */
  public Person {
    Ids.require(Required.value(id, "id of a person"));
    Required.value(name, "name of a person");
    address = Required.list(address, "address of a person");
    Required.value(telephone, "telephone of a person");
    Required.value(email, "e-mail of a person");
    jobs = Required.list(jobs, "jobs of a person");
    jobs.forEach(Ids::require);
    if (name.isBlank()) {
      throw new IllegalArgumentException("a person has a name");
    }
  }

  /**
   * The same person with a job.
   *
   * @param job the id of a job
   * @return the person, whose jobs name it once
   * @throws IllegalArgumentException if it is no id
   */
  public Person with(String job) {
    List<String> all = new ArrayList<>(jobs);
    if (!all.contains(job)) {
      all.add(job);
    }
    return new Person(id, name, address, telephone, email, all);
  }

  /**
   * The person as it stands on a page.
   *
   * @return name and address, a line each
   */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(name);
    lines.addAll(address);
    return lines;
  }
}
