package kelter.fleet;

import java.io.Serializable;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import org.apache.hadoop.io.LongWritable;
import org.apache.hadoop.io.Text;
import org.apache.hadoop.mapreduce.lib.input.FileSplit;
import org.apache.hadoop.mapreduce.lib.input.TextInputFormat;
import org.apache.spark.api.java.JavaNewHadoopRDD;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;

/**
 * A line of a file, with its place.
 *
 * @param file the file
 * @param offset how many bytes of the file are before it
 * @param bytes the line without its end
 */
record Line(String file, long offset, byte[] bytes) implements Serializable {

  /** The longest line, in bytes; as for the import of a book. */
  private static final int LONGEST = 1024 * 1024;

  /** All lines of a file, or of the files of a folder, but for empty ones. */
  static JavaRDD<Line> in(JavaSparkContext spark, String place) {
    var read =
        (JavaNewHadoopRDD<LongWritable, Text>)
            spark.newAPIHadoopFile(
                place,
                TextInputFormat.class,
                LongWritable.class,
                Text.class,
                spark.hadoopConfiguration());
    return read.mapPartitionsWithInputSplit(
            (split, lines) -> {
              String file = ((FileSplit) split).getPath().toString();
              return new Mapped<>(
                  lines, each -> new Line(file, each._1().get(), each._2().copyBytes()));
            },
            true)
        .filter(line -> !line.isBlank());
  }

  private boolean isBlank() {
    for (byte each : bytes) {
      if (each != ' ' && each != '\t' && each != '\r') {
        return false;
      }
    }
    return true;
  }

  /**
   * The line as text.
   *
   * @throws InputException if it is longer than a line may be, or no UTF-8
   */
  String text() {
    if (bytes.length > LONGEST) {
      throw new InputException(
          "",
          "has %d bytes; up to %d are allowed".formatted(bytes.length, LONGEST),
          "write one object on each line");
    }
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException notUtf8) {
      throw new InputException("", "is not UTF-8 text", "save the file as UTF-8");
    }
  }

  /** Where it stands; no job has such an id. */
  String place() {
    return file + ", byte " + offset;
  }

  /** A mistake of this line, with its place. */
  String told(Problem problem) {
    return place() + ": " + problem.display();
  }
}
