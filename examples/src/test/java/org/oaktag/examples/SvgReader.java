package org.oaktag.examples;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.oaktag.export.drawing.Font;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/**
 * Reads SVG back with nothing of the library that wrote it: the JDK's own XML parser, path data taken apart here, and
 * shapes of {@code java.awt.geom}. Only the widths of lettering come from the library, and are tested elsewhere.
 */
final class SvgReader {

    private static final Pattern TRANSFORM = Pattern.compile("(translate|rotate)\\(([^)]*)\\)");
    private static final Pattern TOKEN = Pattern.compile("[A-Za-z]|-?[0-9]+(?:\\.[0-9]+)?");

    private final Element root;

    private SvgReader(Element root) {
        this.root = root;
    }

    /** Fails if the text is not well-formed. */
    static SvgReader read(String text) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new Strict());
            return new SvgReader(
                    builder.parse(new InputSource(new StringReader(text))).getDocumentElement());
        } catch (Exception e) {
            throw new AssertionError("not well-formed: " + e.getMessage(), e);
        }
    }

    /** A drawn path, in the millimetres of the sheet. */
    record Drawn(String id, String group, String data, String colour, double width, Path2D shape, double length) {}

    /** A line of lettering and the room that it takes. */
    record Lettering(String text, String group, double size, Path2D box) {
        boolean overlaps(Lettering other) {
            Area common = new Area(box);
            common.intersect(new Area(other.box));
            return !common.isEmpty();
        }
    }

    String attribute(String name) {
        return root.getAttribute(name);
    }

    String title() {
        return elements("title").get(0).getTextContent();
    }

    List<Drawn> paths() {
        return elements("path").stream()
                .filter(path -> groupOf(path).isPresent())
                .map(SvgReader::drawn)
                .toList();
    }

    List<Lettering> lettering() {
        return elements("text").stream().map(SvgReader::lettering).toList();
    }

    /** Returns the value of every transform attribute above or on any path. */
    List<String> transformsAbovePaths() {
        List<String> transforms = new ArrayList<>();
        for (Element path : elements("path")) {
            for (Node node = path; node instanceof Element element; node = node.getParentNode()) {
                if (element.hasAttribute("transform")) {
                    transforms.add(element.getAttribute("transform"));
                }
            }
        }
        return transforms;
    }

    private List<Element> elements(String name) {
        NodeList nodes = root.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    private static Optional<String> groupOf(Element element) {
        for (Node node = element.getParentNode(); node instanceof Element parent; node = node.getParentNode()) {
            if (parent.getTagName().equals("g")) {
                return Optional.of(parent.getAttribute("id"));
            }
        }
        return Optional.empty();
    }

    private static Drawn drawn(Element path) {
        String data = path.getAttribute("d");
        AffineTransform onSheet = transform(path);
        String width = path.getAttribute("stroke-width");
        return new Drawn(
                path.getAttribute("id"),
                groupOf(path).orElse(""),
                data,
                path.getAttribute("stroke"),
                width.isEmpty() ? 0 : Double.parseDouble(width),
                (Path2D) onSheet.createTransformedShape(shape(data)),
                path.hasAttribute("data-length-mm") ? Double.parseDouble(path.getAttribute("data-length-mm")) : -1);
    }

    private static Lettering lettering(Element text) {
        String content = text.getTextContent();
        Font font = new Font(
                Double.parseDouble(text.getAttribute("font-size")),
                text.getAttribute("font-weight").equals("bold"));
        double width = font.width(content);
        double x = Double.parseDouble(text.getAttribute("x"));
        double y = Double.parseDouble(text.getAttribute("y"));
        double left = switch (text.getAttribute("text-anchor")) {
            case "middle" -> x - width / 2;
            case "end" -> x - width;
            default -> x;
        };
        // Capitals and ascenders of Liberation Sans rise to 0.73 of its size, descenders fall to 0.21.
        double top = y - 0.73 * font.size();
        double bottom = y + 0.21 * font.size();
        Path2D box = new Path2D.Double();
        box.moveTo(left, top);
        box.lineTo(left + width, top);
        box.lineTo(left + width, bottom);
        box.lineTo(left, bottom);
        box.closePath();
        return new Lettering(content, groupOf(text).orElse(""), font.size(), (Path2D)
                transform(text).createTransformedShape(box));
    }

    private static AffineTransform transform(Element element) {
        AffineTransform sum = new AffineTransform();
        for (Node node = element; node instanceof Element each; node = node.getParentNode()) {
            Matcher matcher = TRANSFORM.matcher(each.getAttribute("transform"));
            if (matcher.find()) {
                double[] numbers = Arrays.stream(matcher.group(2).trim().split("[ ,]+"))
                        .mapToDouble(Double::parseDouble)
                        .toArray();
                AffineTransform own = matcher.group(1).equals("translate")
                        ? AffineTransform.getTranslateInstance(numbers[0], numbers[1])
                        : AffineTransform.getRotateInstance(Math.toRadians(numbers[0]), numbers[1], numbers[2]);
                sum.preConcatenate(own);
            }
        }
        return sum;
    }

    /** Takes path data of absolute M, L, C and Z apart; anything else fails. */
    static Path2D shape(String data) {
        Path2D shape = new Path2D.Double();
        Matcher tokens = TOKEN.matcher(data);
        while (tokens.find()) {
            switch (tokens.group()) {
                case "M" -> shape.moveTo(next(tokens), next(tokens));
                case "L" -> shape.lineTo(next(tokens), next(tokens));
                case "C" ->
                    shape.curveTo(next(tokens), next(tokens), next(tokens), next(tokens), next(tokens), next(tokens));
                case "Z" -> shape.closePath();
                default -> throw new AssertionError("unexpected '" + tokens.group() + "' in path data " + data);
            }
        }
        return shape;
    }

    private static double next(Matcher tokens) {
        if (!tokens.find()) {
            throw new AssertionError("path data ends early");
        }
        return Double.parseDouble(tokens.group());
    }

    static Point2D start(Path2D shape) {
        double[] point = new double[6];
        shape.getPathIterator(null).currentSegment(point);
        return new Point2D.Double(point[0], point[1]);
    }

    private static final class Strict implements ErrorHandler {
        @Override
        public void warning(SAXParseException e) throws SAXParseException {
            throw e;
        }

        @Override
        public void error(SAXParseException e) throws SAXParseException {
            throw e;
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXParseException {
            throw e;
        }
    }
}
