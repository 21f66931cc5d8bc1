package stokewell.file;

/**
 * Reads a value that people write as words rather than as entries, such as {@code 2 in XPS}.
 *
 * @param <T> what the words become
 */
public interface LeafReader<T> {

    /** The value that a text tells. @throws QuantityFault that says what would be right */
    T read(String text);

    /** How one is written, for messages and the schema. */
    String example();
}
