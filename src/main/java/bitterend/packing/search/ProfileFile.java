package bitterend.packing.search;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.solver.SolverConfig;
import org.xml.sax.SAXException;

/**
 * Reads a profile from XML in the solver's own form. The solver takes an unknown class for none and says nothing, so every
 * name is looked up first, with the row it stands in.
 */
final class ProfileFile {
    private final String name;
    private final Path file;
    private final Findings findings;

    private ProfileFile(Path file, Findings findings) {
        name = file.toString();
        this.file = file;
        this.findings = findings;
    }

    static Optional<SolverConfig> read(Path file, Findings findings) {
        return new ProfileFile(file, findings).read();
    }

    private Optional<SolverConfig> read() {
        int before = findings.size();
        look();
        return findings.size() > before ? Optional.empty() : build();
    }

    /** Tells everything that is wrong with the names in the file. */
    private void look() {
        if (!Files.isRegularFile(file)) {
            findings.add(Finding.error(name, "", "", "no file that can be read", "a solver profile in XML"));
            return;
        }
        try (InputStream in = Files.newInputStream(file)) {
            SAXParserFactory parsers = SAXParserFactory.newInstance();
            parsers.setNamespaceAware(true);
            parsers.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            parsers.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            parsers.setSchema(schema());
            parsers.newSAXParser().parse(in, new ProfileNames(name, findings));
        } catch (IOException e) {
            findings.add(Finding.error(name, "", "", "no file that can be read", "a solver profile in XML"));
        } catch (SAXException e) {
            if (findings.size() == 0) {
                findings.add(Finding.error(name, "", "", String.valueOf(e.getMessage()), "a solver profile in XML"));
            }
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Schema schema() throws SAXException {
        URL schema = Objects.requireNonNull(SolverConfig.class.getResource("/solver.xsd"));
        return SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI).newSchema(schema);
    }

    /** Lets the solver read and build it once, for what only the solver knows. */
    private Optional<SolverConfig> build() {
        try {
            SolverConfig config = SolverConfig.createFromXmlFile(file.toFile());
            Profile profile = new Profile(config);
            SolverFactory.create(Search.onTheBench(profile.config())).buildSolver();
            return Optional.of(config);
        } catch (IllegalArgumentException | IllegalStateException e) {
            String message = String.valueOf(e.getMessage()).lines().findFirst().orElse("");
            findings.add(Finding.error(name, "", "", message, "a profile the constraint solver can run"));
            return Optional.empty();
        }
    }
}
