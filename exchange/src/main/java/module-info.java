/**
 * The one place where text becomes values and values become text: case and wing files, coordinates
 * files, units, and the documents and pictures that the faces show.
 */
module trimwright.exchange {
  requires transitive trimwright.kernel;

  exports trimwright.exchange.read;
  exports trimwright.exchange.unit;
}
