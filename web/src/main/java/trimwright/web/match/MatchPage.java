package trimwright.web.match;

import trimwright.web.page.Theme;

/**
 * What the page's template needs.
 *
 * @param theme ground on which it is shown
 * @param data JSON that may stand inside a script element as it is
 */
public record MatchPage(Theme theme, String data) {}
