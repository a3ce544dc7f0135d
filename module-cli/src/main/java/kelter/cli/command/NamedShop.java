package kelter.cli.command;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.Given;
import kelter.cli.usage.ValueKind;
import kelter.core.file.shop.ShopDocument;
import kelter.core.file.shop.ShopFile;
import kelter.core.file.shop.ShopFolder;
import kelter.core.problem.InputException;

/**
 * The shop that a call goes by: a folder, or a profile alone. Nothing of it is read until it is
 * asked for.
 */
public final class NamedShop {

  /** What names the shop where {@link #OPTION} does not. */
  public static final String VARIABLE = "KELTER_SHOP";

  /** The shop, for the commands that read a job. */
  public static final CommandOption OPTION =
      CommandOption.one(
          "--shop",
          ValueKind.FILE,
          "DIR",
          "the shop's folder, or its profile alone (default: what "
              + VARIABLE
              + " names, else no shop)");

  private final Optional<Path> path;
  private final Optional<ShopFolder> folder;
  private ShopDocument document;

  private NamedShop(Optional<Path> path) {
    this.path = path;
    this.folder = path.flatMap(ShopFolder::at);
  }

  /**
   * The shop of a call.
   *
   * @param given what was given on the command line; its option wins
   * @param variable what the environment names, if anything
   * @return the shop that is named, if any is
   * @throws InputException if the environment names what is not there
   */
  public static NamedShop of(Given given, Optional<String> variable) {
    Optional<Path> named = given.path(OPTION);
    return new NamedShop(named.isPresent() ? named : variable.map(NamedShop::there));
  }

  private static Path there(String named) {
    try {
      Path path = Path.of(named);
      if (Files.exists(path)) {
        return path;
      }
    } catch (InvalidPathException noPath) {
      // Told as what is not there.
    }
    throw new InputException(
        VARIABLE + "=" + named,
        "there is no such folder or profile",
        "correct the variable, or name a shop with --shop");
  }

  /** Its folder, if a folder is named. */
  public Optional<ShopFolder> folder() {
    return folder;
  }

  /** The file of its profile, if a shop is named. */
  public Optional<Path> profile() {
    return folder.isPresent() ? folder.map(ShopFolder::profile) : path;
  }

  /** Its profile, if a shop is named. */
  public Optional<ShopDocument> document() {
    Optional<Path> file = profile();
    if (file.isPresent() && document == null) {
      document = ShopFile.read(file.get());
    }
    return Optional.ofNullable(document);
  }

  /** The plugin folder that its profile names. */
  public Optional<Path> plugins() {
    return document()
        .flatMap(ShopDocument::plugins)
        .map(plugins -> profile().orElseThrow().resolveSibling(plugins));
  }

  /** Whether the folder has a job of an id. */
  public boolean hasJob(String id) {
    return folder.flatMap(each -> each.job(id)).isPresent();
  }

  /**
   * The file of a job: a file that is there, else the job of that id in the folder.
   *
   * @param word a file or an id
   * @throws InputException if there is neither, and the id of a job is near to it
   */
  public Path job(String word) {
    Path file = Path.of(word);
    if (folder.isEmpty() || Files.exists(file)) {
      return file;
    }
    Optional<Path> job = folder.get().job(word);
    Optional<String> near = job.isPresent() ? Optional.empty() : folder.get().jobNear(word);
    if (near.isPresent()) {
      throw new InputException(
          word,
          "there is no such file, and no job of that id in " + folder.get().path(),
          "did you mean '" + near.get() + "'?");
    }
    return job.orElse(file);
  }
}
