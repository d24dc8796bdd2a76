package trimwright.exchange.demo;

/**
 * A made-up case.
 *
 * @param id short name for commands and addresses
 * @param title what people choose from
 * @param story one or two sentences on who rides what where
 * @param text the case file
 */
public record DemoCase(String id, String title, String story, String text) {}
