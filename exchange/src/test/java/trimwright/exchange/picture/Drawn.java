package trimwright.exchange.picture;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A picture read back as XML. */
final class Drawn {
  private final Document document;

  private Drawn(Document document) {
    this.document = document;
  }

  static Drawn of(String svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      return new Drawn(factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg))));
    } catch (Exception e) {
      throw new AssertionError("not well-formed: " + svg, e);
    }
  }

  Element root() {
    return document.getDocumentElement();
  }

  List<Element> all() {
    List<Element> elements = new ArrayList<>();
    NodeList nodes = document.getElementsByTagName("*");
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  List<Element> kind(String kind) {
    return all().stream().filter(e -> e.getAttribute("class").equals("pic-" + kind)).toList();
  }

  Element one(String kind) {
    return kind(kind).get(0);
  }

  static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  double size() {
    return number(root(), "font-size");
  }

  List<Dot> points(String kind) {
    List<Dot> dots = new ArrayList<>();
    for (String pair : one(kind).getAttribute("points").split(" ")) {
      String[] xy = pair.split(",");
      dots.add(new Dot(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])));
    }
    return dots;
  }

  /** Texts with their boxes, by the widths that the picture itself reckons with. */
  record Text(String text, Box box) {}

  List<Text> texts() {
    List<Text> texts = new ArrayList<>();
    for (Element e : all()) {
      if (e.getTagName().equals("text")) {
        // A unit is set apart by a shift, which the text content does not show.
        boolean unit = e.getElementsByTagName("tspan").getLength() > 0;
        double width = TextSize.width(e.getTextContent() + (unit ? " " : ""), size());
        double top = number(e, "y") - TextSize.BASE * size();
        texts.add(
            new Text(
                e.getTextContent(), new Box(number(e, "x"), top, width, TextSize.LINE * size())));
      }
    }
    return texts;
  }

  /** The first two texts that overlap, or an empty text. */
  String overlap() {
    List<Text> texts = texts();
    for (int i = 0; i < texts.size(); i++) {
      for (int j = i + 1; j < texts.size(); j++) {
        // Boxes are written with two decimals.
        if (texts.get(i).box().grown(-0.02).overlaps(texts.get(j).box().grown(-0.02))) {
          return texts.get(i) + " on " + texts.get(j);
        }
      }
    }
    return "";
  }

  /** The first text that leaves the picture, or an empty text. */
  String outside() {
    Box picture = new Box(0, 0, number(root(), "width"), number(root(), "height")).grown(0.02);
    return texts().stream()
        .filter(t -> !picture.holds(t.box()))
        .map(Text::toString)
        .findFirst()
        .orElse("");
  }
}
