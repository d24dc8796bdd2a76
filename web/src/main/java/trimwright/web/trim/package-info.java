/**
 * The first page: one case at one speed, with verdict, side view, curves and cause. Nothing about a
 * rider stays on the server: a demo case is named in the address, and the text of a case that was
 * handed in travels with the page's forms.
 */
package trimwright.web.trim;
