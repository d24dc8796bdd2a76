/**
 * What stands around every page: security headers, permitted hosts, size limits and error pages.
 */
package trimwright.web.system;
