package trimwright.web.bench;

import trimwright.exchange.read.CaseFile;

/**
 * A case that can be opened.
 *
 * @param id its name in addresses
 * @param title name of the case
 * @param story what it is about, may be empty
 * @param kind {@code demo} for a made-up case, {@code saved} for one of the shop's own
 * @param caseFile the case
 */
record CaseOnShelf(String id, String title, String story, String kind, CaseFile caseFile) {}
