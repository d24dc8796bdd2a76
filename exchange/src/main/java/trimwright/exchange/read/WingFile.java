package trimwright.exchange.read;

import trimwright.kernel.section.Finish;
import trimwright.kernel.surface.WingShape;

/**
 * A wing file that was accepted: one wing alone.
 *
 * @param name what people call the wing; "unnamed wing" where the file has no name
 * @param digest SHA-256 of the canonical form in lower-case hexadecimal
 * @param shape the wing's geometry
 * @param finish state of its surface
 */
public record WingFile(String name, String digest, WingShape shape, Finish finish) {}
