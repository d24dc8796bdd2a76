package trimwright.cache;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.zip.CRC32C;

/**
 * The bytes of an entry, all numbers with the lowest byte first:
 *
 * <pre>
 * offset  bytes  what
 *      0      8  the letters TWCACHE and a line feed
 *      8      4  version of this format, 1
 *     12     32  the key
 *     44      8  length of the payload
 *     52      n  the payload
 *   52+n      4  CRC-32C of everything before
 * </pre>
 *
 * The checksum finds every change within four neighbouring bytes, and any other but for one in four
 * thousand million.
 */
final class EntryFile {
  private static final byte[] MAGIC = {'T', 'W', 'C', 'A', 'C', 'H', 'E', '\n'};
  private static final int VERSION = 1;
  private static final int KEY_BYTES = 32;
  private static final int HEADER = 8 + Integer.BYTES + KEY_BYTES + Long.BYTES;

  /** What an entry has beside its payload [byte]. */
  static final int OVERHEAD = HEADER + Integer.BYTES;

  private EntryFile() {}

  static byte[] encode(CacheKey key, byte[] payload) {
    ByteBuffer bytes =
        ByteBuffer.allocate(Math.addExact(OVERHEAD, payload.length))
            .order(ByteOrder.LITTLE_ENDIAN)
            .put(MAGIC)
            .putInt(VERSION)
            .put(key.bytes())
            .putLong(payload.length)
            .put(payload);
    return bytes.putInt(checksum(bytes.array(), bytes.position())).array();
  }

  /**
   * The payload of an entry.
   *
   * @throws DamagedEntryException if any byte is not as it was written for this key
   */
  static byte[] decode(CacheKey key, byte[] entry) throws DamagedEntryException {
    if (entry.length < OVERHEAD) {
      throw new DamagedEntryException("the entry is cut off");
    }
    ByteBuffer bytes = ByteBuffer.wrap(entry).order(ByteOrder.LITTLE_ENDIAN);
    byte[] magic = new byte[MAGIC.length];
    bytes.get(magic);
    if (!Arrays.equals(magic, MAGIC) || bytes.getInt() != VERSION) {
      throw new DamagedEntryException("the file is no entry of this form");
    }
    byte[] ownKey = new byte[KEY_BYTES];
    bytes.get(ownKey);
    long length = bytes.getLong();
    int end = entry.length - Integer.BYTES;
    if (length != end - HEADER) {
      throw new DamagedEntryException("the entry is cut off, or longer than it says");
    }
    if (bytes.getInt(end) != checksum(entry, end)) {
      throw new DamagedEntryException("the entry's checksum is wrong");
    }
    if (!Arrays.equals(ownKey, key.bytes())) {
      throw new DamagedEntryException("the entry belongs to another key");
    }
    return Arrays.copyOfRange(entry, HEADER, end);
  }

  private static int checksum(byte[] bytes, int length) {
    CRC32C crc = new CRC32C();
    crc.update(bytes, 0, length);
    return (int) crc.getValue();
  }
}
