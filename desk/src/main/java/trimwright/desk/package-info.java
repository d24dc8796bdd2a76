/**
 * The shop's tasks: a study of a case, of a section, of a wing. The desk is the only place that
 * joins the computation with the files that are read and the documents that are written; faces ask
 * it and show what it gives.
 *
 * <p>Values are SI and radians, as in the computation; ranges may also be given in the shop's
 * units, so that their messages speak the person's language.
 */
package trimwright.desk;
