package bitterend.report.sheet;

import java.io.IOException;
import java.io.StringReader;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * The headings of a page as the bookmarks of its PDF, those of the second rank with those of the third below them. What
 * stands in {@code bookmarks} in a page's head becomes the outline of the PDF; a browser is never shown it.
 */
final class Bookmarks {
    private static final Set<String> RANKS = Set.of("h2", "h3");

    private final Document page;
    private final Element outline;
    private Element chapter;
    private int count;

    private Bookmarks(Document page) {
        this.page = page;
        this.outline = page.createElement("bookmarks");
        this.chapter = outline;
    }

    /** A page, which is well-formed, with its bookmarks in its head. */
    static Document added(String html) {
        Bookmarks bookmarks = new Bookmarks(parsed(html));
        bookmarks.gather(bookmarks.page.getDocumentElement());
        bookmarks.page.getElementsByTagName("head").item(0).appendChild(bookmarks.outline);
        return bookmarks.page;
    }

    private void gather(Element element) {
        if (RANKS.contains(element.getTagName())) {
            add(element);
        }
        NodeList inner = element.getChildNodes();
        for (int i = 0; i < inner.getLength(); i++) {
            if (inner.item(i) instanceof Element child) {
                gather(child);
            }
        }
    }

    private void add(Element heading) {
        count++;
        String id = "heading-" + count;
        heading.setAttribute("id", id);
        Element bookmark = page.createElement("bookmark");
        bookmark.setAttribute(
                "name", heading.getTextContent().replaceAll("\\s+", " ").strip());
        bookmark.setAttribute("href", "#" + id);
        if (heading.getTagName().equals("h2")) {
            outline.appendChild(bookmark);
            chapter = bookmark;
        } else {
            chapter.appendChild(bookmark);
        }
    }

    private static Document parsed(String html) {
        try {
            DocumentBuilderFactory readers = DocumentBuilderFactory.newInstance();
            readers.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            readers.setFeature("http://xml.org/sax/features/external-general-entities", false);
            readers.setNamespaceAware(true);
            return readers.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
        } catch (ParserConfigurationException | SAXException | IOException fault) {
            throw new IllegalStateException("a page of ours is not well formed", fault);
        }
    }
}
