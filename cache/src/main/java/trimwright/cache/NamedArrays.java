package trimwright.cache;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * A table as arrays with names: what most entries are. Arrays are copied in and out. Immutable.
 *
 * <p>As bytes, all numbers with the lowest byte first: version of this form (4 bytes, 1), number of
 * arrays (4 bytes), then for each the sort (1 byte: 1 doubles, 2 ints, 3 text), the name's length
 * in UTF-8 (2 bytes), the name, the number of elements (4 bytes; bytes of UTF-8 for a text), the
 * elements (8 bytes each for doubles, 4 for ints). Nothing follows.
 */
public final class NamedArrays {
  private static final int VERSION = 1;
  private static final byte DOUBLES = 1;
  private static final byte INTS = 2;
  private static final byte TEXT = 3;

  /** To and from bytes. */
  public static final Codec<NamedArrays> CODEC =
      new Codec<>() {
        @Override
        public byte[] encode(NamedArrays value) {
          return value.encode();
        }

        @Override
        public NamedArrays decode(byte[] payload) throws DamagedEntryException {
          return NamedArrays.decode(payload);
        }
      };

  /** Values are double[], int[] or String. */
  private final Map<String, Object> arrays;

  private NamedArrays(Map<String, Object> arrays) {
    this.arrays = arrays;
  }

  /** Starts with none. */
  public static Maker maker() {
    return new Maker();
  }

  /** Gathers arrays; each name once. For one thread. */
  public static final class Maker {
    private final Map<String, Object> arrays = new LinkedHashMap<>();

    private Maker() {}

    /**
     * Numbers, kept bit for bit.
     *
     * @throws IllegalArgumentException if the name is taken or longer than 65 535 bytes
     */
    public Maker doubles(String name, double... values) {
      return put(name, values.clone());
    }

    /**
     * Whole numbers.
     *
     * @throws IllegalArgumentException as {@link #doubles} does
     */
    public Maker ints(String name, int... values) {
      return put(name, values.clone());
    }

    /**
     * A text.
     *
     * @throws IllegalArgumentException as {@link #doubles} does
     */
    public Maker text(String name, String value) {
      return put(name, value);
    }

    /** All that was gathered. */
    public NamedArrays arrays() {
      return new NamedArrays(new LinkedHashMap<>(arrays));
    }

    private Maker put(String name, Object value) {
      if (name.getBytes(StandardCharsets.UTF_8).length > 0xFFFF) {
        throw new IllegalArgumentException("an array's name must have at most 65535 bytes");
      }
      if (arrays.putIfAbsent(name, value) != null) {
        throw new IllegalArgumentException("an array named " + name + " is there already");
      }
      return this;
    }
  }

  /** The names, in the order in which they were gathered. */
  public Set<String> names() {
    return Collections.unmodifiableSet(arrays.keySet());
  }

  /**
   * The numbers of a name.
   *
   * @throws DamagedEntryException if there are none
   */
  public double[] doubles(String name) throws DamagedEntryException {
    return get(name, double[].class).clone();
  }

  /**
   * The whole numbers of a name.
   *
   * @throws DamagedEntryException if there are none
   */
  public int[] ints(String name) throws DamagedEntryException {
    return get(name, int[].class).clone();
  }

  /**
   * The text of a name.
   *
   * @throws DamagedEntryException if there is none
   */
  public String text(String name) throws DamagedEntryException {
    return get(name, String.class);
  }

  private <A> A get(String name, Class<A> sort) throws DamagedEntryException {
    Object value = arrays.get(name);
    if (!sort.isInstance(value)) {
      throw new DamagedEntryException("the entry has no " + name);
    }
    return sort.cast(value);
  }

  private byte[] encode() {
    long size = 2L * Integer.BYTES;
    for (Map.Entry<String, Object> named : arrays.entrySet()) {
      size +=
          1 + Short.BYTES + utf8(named.getKey()).length + Integer.BYTES + size(named.getValue());
    }
    ByteBuffer out =
        ByteBuffer.allocate(Math.toIntExact(size))
            .order(ByteOrder.LITTLE_ENDIAN)
            .putInt(VERSION)
            .putInt(arrays.size());
    arrays.forEach((name, value) -> write(out, utf8(name), value));
    return out.array();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static long size(Object value) {
    if (value instanceof double[] doubles) {
      return (long) Double.BYTES * doubles.length;
    }
    if (value instanceof int[] ints) {
      return (long) Integer.BYTES * ints.length;
    }
    return utf8((String) value).length;
  }

  private static void write(ByteBuffer out, byte[] name, Object value) {
    byte sort = value instanceof double[] ? DOUBLES : value instanceof int[] ? INTS : TEXT;
    out.put(sort).putShort((short) name.length).put(name);
    if (value instanceof double[] doubles) {
      out.putInt(doubles.length);
      for (double number : doubles) {
        out.putLong(Double.doubleToRawLongBits(number));
      }
    } else if (value instanceof int[] ints) {
      out.putInt(ints.length);
      for (int number : ints) {
        out.putInt(number);
      }
    } else {
      byte[] text = utf8((String) value);
      out.putInt(text.length).put(text);
    }
  }

  private static NamedArrays decode(byte[] payload) throws DamagedEntryException {
    ByteBuffer in = ByteBuffer.wrap(payload).order(ByteOrder.LITTLE_ENDIAN);
    try {
      if (in.getInt() != VERSION) {
        throw new DamagedEntryException("the arrays are of another form");
      }
      int count = in.getInt();
      Map<String, Object> arrays = new LinkedHashMap<>();
      for (int i = 0; i < count; i++) {
        byte sort = in.get();
        String name = text(in, Short.toUnsignedInt(in.getShort()));
        if (arrays.put(name, value(in, sort)) != null) {
          throw new DamagedEntryException("the array " + name + " comes twice");
        }
      }
      if (count < 0 || in.hasRemaining()) {
        throw new DamagedEntryException("the arrays are followed by something else");
      }
      return new NamedArrays(arrays);
    } catch (BufferUnderflowException e) {
      throw new DamagedEntryException("the arrays are cut off");
    }
  }

  private static Object value(ByteBuffer in, byte sort) throws DamagedEntryException {
    int count = in.getInt();
    switch (sort) {
      case DOUBLES -> {
        double[] doubles = new double[room(in, count, Double.BYTES)];
        for (int i = 0; i < count; i++) {
          doubles[i] = Double.longBitsToDouble(in.getLong());
        }
        return doubles;
      }
      case INTS -> {
        int[] ints = new int[room(in, count, Integer.BYTES)];
        for (int i = 0; i < count; i++) {
          ints[i] = in.getInt();
        }
        return ints;
      }
      case TEXT -> {
        return text(in, count);
      }
      default -> throw new DamagedEntryException("an array is of an unknown sort");
    }
  }

  private static String text(ByteBuffer in, int length) throws DamagedEntryException {
    byte[] bytes = new byte[room(in, length, 1)];
    in.get(bytes);
    return new String(bytes, StandardCharsets.UTF_8);
  }

  /** Refuses a count that the remaining bytes cannot hold, before room is made for it. */
  private static int room(ByteBuffer in, int count, int each) throws DamagedEntryException {
    if (count < 0 || (long) count * each > in.remaining()) {
      throw new DamagedEntryException("an array is cut off");
    }
    return count;
  }
}
