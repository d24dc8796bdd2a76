package trimwright.cache;

/**
 * How a value becomes bytes and bytes the same value again.
 *
 * @param <T> the value
 */
public interface Codec<T> {

  /** The value as bytes. */
  byte[] encode(T value);

  /**
   * The value of these bytes, equal in every bit to the one that was encoded.
   *
   * @param payload bytes whose checksum was right
   * @throws DamagedEntryException if they are not of this form, such as that of an older program
   */
  T decode(byte[] payload) throws DamagedEntryException;
}
