package trimwright.exchange.read.internal;

import java.util.OptionalInt;

/**
 * One thing that is wrong with a text, before it is handed out as a problem: this package knows
 * nothing of the one it serves.
 *
 * @param key path of the key; empty for the text as a whole
 * @param line where it stands, counted from 1
 * @param message a whole sentence that names the key, the value and what is permitted
 */
public record Finding(String key, OptionalInt line, String message) {}
