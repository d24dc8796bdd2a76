package trimwright.web.bench;

import trimwright.web.page.Theme;

/**
 * What the page's template needs.
 *
 * @param theme ground on which it is shown
 * @param title what a browser shows in its tab
 * @param data JSON that may stand inside a script element as it is
 */
public record BenchPage(Theme theme, String title, String data) {}
