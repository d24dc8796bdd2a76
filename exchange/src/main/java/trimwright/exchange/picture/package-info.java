/**
 * Results as pictures: SVG text without outside resources, ids, style sheets or scripts, so that a
 * picture can stand in a page, in a file and on paper, and any number of them in one page.
 *
 * <p>Colours are presentation attributes: either fixed (light, dark, sun) or custom properties that
 * a page sets, so that a theme switches without drawing again. Behind each picture stands a table
 * of the same numbers ({@link trimwright.exchange.picture.PictureTable}).
 *
 * <p>Labels are placed by measured boxes and never overlap. The widths of letters are estimated
 * from above, as the face that will draw them is not known here.
 */
package trimwright.exchange.picture;
