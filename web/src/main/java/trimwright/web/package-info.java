/**
 * The shop in the browser: starts the server on the loopback address and joins the pages. Pages
 * live in packages by subject; none of them computes anything.
 */
package trimwright.web;
