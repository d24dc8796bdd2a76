package trimwright.sheet;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A picture taken apart for print: its shapes stay SVG, its texts become text of the page. Printed
 * as part of the SVG they would turn into outlines, in whichever face the machine has, and nobody
 * could search or hear them.
 *
 * @param svg the shapes, as wide and high as printed; empty for a room without a picture
 * @param alternative what the picture shows, for a screen reader
 * @param width [mm]
 * @param height [mm]
 * @param labels its texts
 */
public record PrintedPicture(
    String svg, String alternative, double width, double height, List<Label> labels) {
  /** Copies the list. */
  public PrintedPicture {
    labels = List.copyOf(labels);
  }

  /** Above the base line, in letters' sizes: where a line of the sheet's height 1 begins. */
  private static final double ASCENT = 0.81;

  /** Room of the ground kept behind a text, in letters' sizes. */
  private static final double RIM = 0.12;

  /**
   * A text in a picture.
   *
   * @param style place, size, weight and colour, for the page's style attribute
   * @param text what it says
   * @param unit follows in muted ink; may be empty
   * @param unitColour of the unit
   */
  public record Label(String style, String text, String unit, String unitColour) {}

  /**
   * The room of a picture that is not drawn.
   *
   * @param width [mm]
   * @param height [mm]
   * @return an empty picture
   */
  static PrintedPicture room(double width, double height) {
    return new PrintedPicture("", "", width, height, List.of());
  }

  /**
   * Takes a picture apart.
   *
   * @param picture SVG text with a view box, as {@code exchange.picture} writes it
   * @param width to print it at [mm]
   * @return its parts
   */
  static PrintedPicture of(String picture, double width) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setNamespaceAware(true);
      Document document =
          factory.newDocumentBuilder().parse(new InputSource(new StringReader(picture)));
      Element root = document.getDocumentElement();
      double pixels = number(root, "width", 1);
      double scale = width / pixels;
      double height = number(root, "height", 1) * scale;
      double size = number(root, "font-size", 14);
      String alternative = text(take(root, "title")) + ". " + text(take(root, "desc"));
      List<Label> labels = new ArrayList<>();
      for (Element element : take(root, "text")) {
        labels.add(label(document, root, element, size, scale));
      }
      root.setAttribute("alt", alternative.strip());
      root.setAttribute("width", millimetres(width));
      root.setAttribute("height", millimetres(height));
      root.removeAttribute("font-family");
      root.removeAttribute("role");
      return new PrintedPicture(written(document), alternative, width, height, labels);
    } catch (ParserConfigurationException | SAXException | IOException | TransformerException e) {
      throw new IllegalStateException("a picture of our own cannot be read", e);
    }
  }

  private static String written(Document document) throws TransformerException {
    Transformer writer = TransformerFactory.newInstance().newTransformer();
    writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
    StringWriter out = new StringWriter();
    writer.transform(new DOMSource(document), new StreamResult(out));
    return out.toString();
  }

  /** Removes the elements of a name from the picture and hands them out. */
  private static List<Element> take(Element root, String name) {
    NodeList found = root.getElementsByTagNameNS("*", name);
    List<Element> all = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      all.add((Element) found.item(i));
    }
    if (!name.equals("text")) {
      all.forEach(element -> element.getParentNode().removeChild(element));
    }
    return all;
  }

  private static String text(List<Element> elements) {
    return elements.isEmpty() ? "" : elements.get(0).getTextContent().strip();
  }

  /** Puts a rim of the ground where the text was, and says where the text goes on the page. */
  private static Label label(
      Document document, Element root, Element text, double inherited, double scale) {
    double size = number(text, "font-size", inherited);
    boolean bold = text.getAttribute("font-weight").equals("700");
    String unit = "";
    String unitColour = "";
    for (Node child = text.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element span) {
        unit = span.getTextContent();
        unitColour = span.getAttribute("fill");
      }
    }
    String whole = text.getTextContent();
    String words = SheetFont.printable(whole.substring(0, whole.length() - unit.length())).text();
    SheetFont face = bold ? SheetFont.BOLD : SheetFont.REGULAR;
    boolean close = unit.equals("°");
    double wide = size * face.width(words + (unit.isEmpty() ? "" : (close ? "" : "\u00a0") + unit));
    double x = number(text, "x", 0);
    double left =
        switch (text.getAttribute("text-anchor")) {
          case "end" -> x - wide;
          case "middle" -> x - wide / 2;
          default -> x;
        };
    double top = number(text, "y", 0) - ASCENT * size;
    Element rim = document.createElementNS(root.getNamespaceURI(), "rect");
    rim.setAttribute("x", plain(left - RIM * size));
    rim.setAttribute("y", plain(top));
    rim.setAttribute("width", plain(wide + 2 * RIM * size));
    rim.setAttribute("height", plain(size));
    rim.setAttribute("fill", "#FFFFFF");
    rim.setAttribute("fill-opacity", "0.8");
    text.getParentNode().replaceChild(rim, text);
    String style =
        "left:"
            + millimetres(left * scale)
            + ";top:"
            + millimetres(top * scale)
            + ";font-size:"
            + millimetres(size * scale)
            + ";color:"
            + text.getAttribute("fill")
            + (bold ? ";font-weight:bold" : "");
    return new Label(
        style, words, close ? unit : unit.isEmpty() ? "" : "\u00a0" + unit, unitColour);
  }

  private static double number(Element element, String attribute, double otherwise) {
    String text = element.getAttribute(attribute);
    return text.isEmpty() ? otherwise : Double.parseDouble(text);
  }

  private static String millimetres(double value) {
    return String.format(Locale.ROOT, "%.3fmm", value);
  }

  private static String plain(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
