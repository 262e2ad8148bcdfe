package bitterend.exchange.workbook;

import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** One part of a workbook, element by element. Declarations of types and entities are refused: no workbook has them. */
final class Xml implements Closeable {
    private static final XMLInputFactory FACTORY = factory();

    private final InputStream in;
    private final String part;
    private final XMLStreamReader reader;

    Xml(InputStream in, String part) throws IOException {
        this.in = in;
        this.part = part;
        try {
            this.reader = FACTORY.createXMLStreamReader(decoded(in));
        } catch (XMLStreamException | CharacterCodingException broken) {
            throw refused(broken);
        }
    }

    /**
     * The letters of a part, which is in UTF-8 or UTF-16 (ECMA-376 part 2). The platform's own decoder would print what it
     * cannot read to the terminal.
     */
    private static Reader decoded(InputStream in) throws IOException {
        BufferedInputStream buffered = new BufferedInputStream(in);
        buffered.mark(2);
        int first = buffered.read();
        int second = buffered.read();
        buffered.reset();
        boolean wide = first == 0 || second == 0 || (first >= 0xfe && second >= 0xfe);
        boolean big = first == 0 || first == 0xfe;
        Charset charset = !wide ? StandardCharsets.UTF_8 : big ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_16LE;
        Reader letters = new BufferedReader(new InputStreamReader(buffered, charset.newDecoder()));
        letters.mark(1);
        if (letters.read() != '\ufeff') {
            letters.reset();
        }
        return letters;
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("nothing outside is read");
        });
        return factory;
    }

    /** Goes on to the next beginning or end of an element; false at the end of the part. */
    boolean next() throws IOException {
        try {
            while (reader.hasNext()) {
                int event = step();
                if (event == XMLStreamConstants.START_ELEMENT || event == XMLStreamConstants.END_ELEMENT) {
                    return true;
                }
            }
            return false;
        } catch (XMLStreamException broken) {
            throw refused(broken);
        }
    }

    private int step() throws XMLStreamException, Refused {
        int event = event();
        if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
            throw new Refused("a declaration of entities in " + part, "a workbook as a spreadsheet program saves it");
        }
        return event;
    }

    /** The parser of the platform throws other things, too, on bytes that are no XML. */
    private int event() throws XMLStreamException {
        try {
            return reader.next();
        } catch (RuntimeException broken) {
            throw new XMLStreamException(broken);
        }
    }

    boolean begins(String name) {
        return reader.isStartElement() && reader.getLocalName().equals(name);
    }

    boolean ends(String name) {
        return reader.isEndElement() && reader.getLocalName().equals(name);
    }

    /** An attribute without a prefix; empty when it is not there. */
    String attribute(String name) {
        String value = reader.getAttributeValue("", name);
        String any = value == null ? reader.getAttributeValue(null, name) : value;
        return any == null ? "" : any;
    }

    boolean is(String attribute) {
        String value = attribute(attribute);
        return value.equals("1") || value.equals("true");
    }

    /** The attribute {@code id} of the namespace of relations, in either of the two that are in use. */
    String relation() {
        for (int at = 0; at < reader.getAttributeCount(); at++) {
            String space = reader.getAttributeNamespace(at);
            if (reader.getAttributeLocalName(at).equals("id") && space != null && !space.isEmpty()) {
                return reader.getAttributeValue(at);
            }
        }
        return "";
    }

    /** The text up to the end of the element that begins here, that of elements inside it included; at most so long. */
    String text(int longest) throws IOException {
        StringBuilder text = new StringBuilder();
        try {
            for (int depth = 1; depth > 0; ) {
                int event = step();
                if (event == XMLStreamConstants.START_ELEMENT) {
                    depth++;
                } else if (event == XMLStreamConstants.END_ELEMENT) {
                    depth--;
                } else if (reader.isCharacters()) {
                    text.append(reader.getTextCharacters(), reader.getTextStart(), reader.getTextLength());
                }
                if (text.length() > longest) {
                    throw new Refused(
                            "a text of more than " + longest + " characters in " + part,
                            "at most " + longest + " characters in one cell");
                }
            }
        } catch (XMLStreamException broken) {
            throw refused(broken);
        }
        return text.toString();
    }

    private Refused refused(Exception broken) {
        if (broken instanceof XMLStreamException around && around.getNestedException() instanceof Refused limit) {
            return limit;
        }
        return Parts.damaged(part);
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
