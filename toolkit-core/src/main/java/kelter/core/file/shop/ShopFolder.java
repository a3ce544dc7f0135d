package kelter.core.file.shop;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import kelter.core.book.learned.Learned;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.MachineModel;
import kelter.core.catalogue.Models;
import kelter.core.file.book.LearnedFile;
import kelter.core.file.catalogue.KindFile;
import kelter.core.file.catalogue.ModelFile;
import kelter.core.file.disk.DiskFault;
import kelter.core.file.disk.Folder;
import kelter.core.file.disk.TextFile;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.problem.Problem;
import kelter.core.problem.Required;
import kelter.core.quantity.Nearest;
import kelter.core.shop.PriceList;
import kelter.core.shop.Shop;
import kelter.core.shop.StockPart;
import kelter.core.vocabulary.Ids;
import kelter.core.vocabulary.Vocabulary;

/**
 * The folder of a shop. It has a profile, {@code shop.json}; prices, stock, models, kinds and jobs
 * may be missing.
 *
 * @param path the folder
 */
public record ShopFolder(Path path) {

  private static final String PROFILE = "shop.json";
  private static final String PRICES = "prices.json";
  private static final String STOCK = "stock.json";
  private static final String LEARNED = "learned.json";
  private static final String BOOK = "book.db";
  private static final String KINDS = "kinds";
  private static final String MODELS = "models";
  private static final String JOBS = "jobs";
  private static final String JSON = ".json";

  /** So many models are read at every start; own choice. */
  private static final int MOST_MODELS = 1000;

  /** Checks that nothing is null. */
  public ShopFolder {
    Required.value(path, "folder of a shop");
  }

  /**
   * The folder that a path names.
   *
   * @param named a path
   * @return the folder, or empty if it is no folder
   */
  public static Optional<ShopFolder> at(Path named) {
    return Files.isDirectory(named) ? Optional.of(new ShopFolder(named)) : Optional.empty();
  }

  /**
   * Makes what a folder of a shop holds, to be filled in. What is there is kept.
   *
   * @return the names of all that belongs there, with whether it was made, in order
   * @throws InputException if something cannot be made
   */
  public Map<String, Boolean> make() {
    Map<String, Boolean> made = new LinkedHashMap<>();
    Folder.make(path);
    made.put(PROFILE, makeFile(PROFILE, Start.PROFILE));
    made.put(PRICES, makeFile(PRICES, Start.PRICES));
    made.put(STOCK, makeFile(STOCK, Start.STOCK));
    for (String folder : List.of(KINDS, MODELS, JOBS)) {
      made.put(folder + "/", Folder.make(path.resolve(folder)));
    }
    return made;
  }

  private boolean makeFile(String name, String text) {
    Path file = path.resolve(name);
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    TextFile.writeNew(file, text);
    return true;
  }

  /**
   * Its profile.
   *
   * @return the file
   * @throws InputException if there is none
   */
  public Path profile() {
    Path profile = path.resolve(PROFILE);
    if (!Files.exists(profile)) {
      throw new InputException(
          Mistake.FILE,
          path.toString(),
          "is no folder of a shop: there is no " + PROFILE + " in it",
          "make it one with 'kelter shop init " + path + "'");
    }
    return profile;
  }

  /**
   * Its job book.
   *
   * @return where it is, whether it is there or not
   */
  public Path book() {
    return path.resolve(BOOK);
  }

  /**
   * Its prices.
   *
   * @return the file, whether it is there or not
   */
  public Path prices() {
    return path.resolve(PRICES);
  }

  /**
   * Its stock.
   *
   * @return the file, whether it is there or not
   */
  public Path stock() {
    return path.resolve(STOCK);
  }

  /**
   * What its job book taught.
   *
   * @return the file that {@link #complete} reads, whether it is there or not
   */
  public Path learned() {
    return path.resolve(LEARNED);
  }

  /**
   * The shop with all that its folder holds.
   *
   * @param shop the shop as its profile tells it
   * @param vocabulary the words of all modules
   * @return the shop with prices, stock, models, kinds and what its book taught
   * @throws InputException with every mistake of all files
   */
  public Shop complete(Shop shop, Vocabulary vocabulary) {
    List<Problem> problems = new ArrayList<>();
    Shop complete = complete(shop, vocabulary, problems);
    Optional<Learned> learned = read(LEARNED, LearnedFile::read, problems);
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return complete.with(learned);
  }

  /**
   * The shop with all that its folder holds but what its book taught, which is not read.
   *
   * @param shop the shop as its profile tells it
   * @param vocabulary the words of all modules
   * @return the shop with prices, stock, models and kinds
   * @throws InputException with every mistake of all files
   */
  public Shop completeWithoutBook(Shop shop, Vocabulary vocabulary) {
    List<Problem> problems = new ArrayList<>();
    Shop complete = complete(shop, vocabulary, problems);
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return complete;
  }

  private Shop complete(Shop shop, Vocabulary vocabulary, List<Problem> problems) {
    Optional<PriceList> prices = read(PRICES, file -> PriceFile.read(file, vocabulary), problems);
    Optional<List<StockPart>> stock =
        read(STOCK, file -> StockFile.read(file, vocabulary), problems);
    Models models = models(vocabulary, problems);
    List<Kind> kinds = new ArrayList<>();
    for (Path file : list(KINDS)) {
      read(file, each -> KindFile.read(each, vocabulary), problems).ifPresent(kinds::add);
    }
    return shop.with(prices, stock.orElse(List.of()), models, kinds);
  }

  private <T> Optional<T> read(String name, Function<Path, T> reader, List<Problem> problems) {
    Path file = path.resolve(name);
    return Files.exists(file) ? read(file, reader, problems) : Optional.empty();
  }

  private static <T> Optional<T> read(Path file, Function<Path, T> reader, List<Problem> problems) {
    try {
      requireFile(file);
      return Optional.of(reader.apply(file));
    } catch (InputException mistakes) {
      problems.addAll(mistakes.problems());
      return Optional.empty();
    }
  }

  /** What is found in the folder and not named by anybody may be a pipe that never ends. */
  private static void requireFile(Path file) {
    if (!Files.isRegularFile(file)) {
      throw new InputException(
          Mistake.FILE, file.toString(), "is no usual file", "take it out of the folder");
    }
  }

  /** The models, of which no two may be of the same machine. */
  private Models models(Vocabulary vocabulary, List<Problem> problems) {
    Map<Path, MachineModel> models = new LinkedHashMap<>();
    List<Path> files = list(MODELS);
    if (files.size() > MOST_MODELS) {
      problems.add(
          new Problem(
              path.resolve(MODELS).toString(),
              "holds %s models; up to %s are read".formatted(files.size(), MOST_MODELS),
              "take out those of machines that you do not see"));
      return Models.NONE;
    }
    for (Path file : files) {
      Optional<MachineModel> model = read(file, each -> ModelFile.read(each, vocabulary), problems);
      if (model.isPresent()) {
        models.forEach((other, known) -> requireOther(file, model.get(), other, known, problems));
        models.put(file, model.get());
      }
    }
    return new Models(List.copyOf(models.values()));
  }

  private static void requireOther(
      Path file, MachineModel model, Path other, MachineModel known, List<Problem> problems) {
    if (model.meets(known)) {
      problems.add(
          new Problem(
              file.toString(),
              "is of the same machine as %s: %s".formatted(other, model.name()),
              "keep one of them, or give them other names"));
    }
  }

  /**
   * Writes a new model and never over an old one.
   *
   * @param model the model
   * @return the file, named after maker and model
   * @throws InputException if there is a file of that name already, or it cannot be written
   */
  public Path write(MachineModel model) {
    Path models = path.resolve(MODELS);
    Folder.make(models);
    Path file = models.resolve(fileName(model.name()) + JSON);
    ModelFile.writeNew(model, file);
    return file;
  }

  /** A name as an id: letters, digits and hyphens. */
  private static String fileName(String name) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String trimmed = plain.replaceAll("^-|-$", "");
    return trimmed.isEmpty() ? "model" : trimmed.substring(0, Math.min(60, trimmed.length()));
  }

  /**
   * The job of an id.
   *
   * @param id a word that somebody gave; only an id can name a job, so that no word leads out of
   *     the folder
   * @return the file, or empty if there is no such job
   */
  public Optional<Path> job(String id) {
    if (!Ids.isId(id)) {
      return Optional.empty();
    }
    Path file = path.resolve(JOBS).resolve(id + JSON);
    return Files.exists(file) ? Optional.of(file) : Optional.empty();
  }

  /**
   * Where a new job goes.
   *
   * @param id its id
   * @return the file, whose folder is there; whether there is such a file already is not asked
   * @throws InputException if it is no id, or the folder cannot be made
   */
  public Path newJob(String id) {
    if (!Ids.isId(id)) {
      throw new InputException(id, "is no id", "write lower-case letters, digits and hyphens");
    }
    Path jobs = path.resolve(JOBS);
    Folder.make(jobs);
    return jobs.resolve(id + JSON);
  }

  /**
   * An id that no job has.
   *
   * @param start how it starts, an id
   * @return the start with the least number behind it that is free
   */
  public String freeId(String start) {
    int number = 1;
    while (job(start + "-" + number).isPresent()) {
      number++;
    }
    return start + "-" + number;
  }

  /**
   * The id of a job that a word is near to.
   *
   * @param word a word that is no id of a job
   * @return the nearest id, or empty if none is near
   */
  public Optional<String> jobNear(String word) {
    List<String> ids = new ArrayList<>();
    for (Path file : list(JOBS)) {
      String name = file.getFileName().toString();
      ids.add(name.substring(0, name.length() - JSON.length()));
    }
    return Nearest.of(word, ids);
  }

  /** The JSON files of a folder by name; none if there is no such folder. */
  private List<Path> list(String name) {
    Path folder = path.resolve(name);
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    List<Path> files = new ArrayList<>();
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "[!.]*" + JSON)) {
      for (Path file : all) {
        files.add(file);
      }
    } catch (DirectoryIteratorException unreadable) {
      throw DiskFault.unreadable(folder.toString(), unreadable.getCause());
    } catch (IOException unreadable) {
      throw DiskFault.unreadable(folder.toString(), unreadable);
    }
    files.sort(null);
    return files;
  }
}
