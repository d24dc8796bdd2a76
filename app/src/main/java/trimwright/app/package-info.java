/**
 * Where the program starts, and nothing else: it joins the command line and the shop in the
 * browser, which do not know of each other.
 */
package trimwright.app;
