package bitterend.packing.search;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.time.Duration;
import java.time.format.DateTimeParseException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/** Looks up every element, class and property that a profile names. */
final class ProfileNames extends DefaultHandler {
    private static final Set<String> OURS = Set.of("solutionClass", "entityClass", "constraintProviderClass");
    private static final Map<String, Set<String>> PROPERTIES = Map.of(
            "constraintProviderCustomProperties",
            Set.of(Profile.SHAPING),
            "moveIteratorFactoryCustomProperties",
            BenchMoves.USUAL.keySet());
    private static final Set<String> DURATIONS = Set.of("spentLimit", "unimprovedSpentLimit");
    private static final Pattern QUOTED = Pattern.compile("'([^']*)'");

    private final String file;
    private final Findings findings;
    private final Deque<String> open = new ArrayDeque<>();
    private final StringBuilder text = new StringBuilder();
    private @Nullable Locator locator;

    ProfileNames(String file, Findings findings) {
        this.file = file;
        this.findings = findings;
    }

    @Override
    public void setDocumentLocator(Locator locator) {
        this.locator = locator;
    }

    @Override
    public void startElement(String uri, String localName, String qName, Attributes attributes) {
        if (localName.equals("property") && !open.isEmpty()) {
            property(open.getFirst(), attributes);
        }
        open.push(localName);
        text.setLength(0);
    }

    private void property(String parent, Attributes attributes) {
        String name = String.valueOf(attributes.getValue("name"));
        String value = String.valueOf(attributes.getValue("value"));
        Set<String> known = PROPERTIES.getOrDefault(parent, Set.of());
        if (!known.contains(name)) {
            error(parent, name, known.isEmpty() ? "no property" : "one of " + String.join(", ", sorted(known)));
        } else if (!value.matches("[0-9]{1,6}")) {
            error(name, value, "a whole number from 0 to 999999");
        }
    }

    private static Set<String> sorted(Set<String> names) {
        return new java.util.TreeSet<>(names);
    }

    @Override
    public void characters(char[] chars, int start, int length) {
        text.append(chars, start, length);
    }

    @Override
    public void endElement(String uri, String localName, String qName) {
        open.pop();
        String value = text.toString().strip();
        text.setLength(0);
        if (OURS.contains(localName)) {
            error(localName, value, "no such element: the program names its own classes");
        } else if (localName.endsWith("Class") && !isClass(value)) {
            error(localName, value, "the full name of a class of this program");
        } else if (DURATIONS.contains(localName) && !isDuration(value)) {
            error(localName, value, "a duration such as PT10S");
        }
    }

    private static boolean isDuration(String text) {
        try {
            return !Duration.parse(text).isNegative();
        } catch (DateTimeParseException e) {
            return false;
        }
    }

    private static boolean isClass(String name) {
        try {
            return name.startsWith("bitterend.")
                    && Class.forName(name, false, ProfileNames.class.getClassLoader()) != null;
        } catch (ClassNotFoundException | LinkageError e) {
            return false;
        }
    }

    /** The schema's own message names the element first and then, in braces, what may stand there. */
    @Override
    public void error(SAXParseException problem) {
        String message = String.valueOf(problem.getMessage());
        if (!message.startsWith("cvc-") || message.startsWith("cvc-type.3.1.3")) {
            return;
        }
        Matcher quoted = QUOTED.matcher(message);
        String found = quoted.find() ? plain(quoted.group(1)) : message;
        String allowed = quoted.find() ? plain(quoted.group(1)) : "";
        error("", found, allowed.isEmpty() ? "a name of a solver profile" : "one of " + allowed);
    }

    @Override
    public void fatalError(SAXParseException problem) throws SAXException {
        error("", String.valueOf(problem.getMessage()), "well-formed XML");
        throw problem;
    }

    /** Leaves out braces and the namespace. */
    private static String plain(String names) {
        return names.replaceAll("\"[^\"]*\":", "").replaceAll("[{}\\[\\]]", "");
    }

    private void error(String field, String found, String expected) {
        int row = locator == null ? 0 : locator.getLineNumber();
        findings.add(Finding.error(file, "row " + row, field, found, expected));
    }
}
