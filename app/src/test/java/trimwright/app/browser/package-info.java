/**
 * The pages in a real browser: layout, keyboard, accessibility, and pictures of the pages for the
 * documents.
 */
package trimwright.app.browser;
