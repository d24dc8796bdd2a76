/**
 * What every page shares: theme, addresses of static files, the way from a template to a response.
 */
package trimwright.web.page;
