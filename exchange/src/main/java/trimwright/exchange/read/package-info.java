/**
 * Text becomes values: case files, wing files and coordinates files, read safely and checked
 * against the schema, with every problem found at once.
 *
 * <p>A case file is YAML 1.2 (JSON is a part of it) without anchors, aliases, tags and second
 * documents. The ranges of all inputs stand in {@code case.schema.json} alone; checks that join
 * several keys stand in this package.
 */
package trimwright.exchange.read;
