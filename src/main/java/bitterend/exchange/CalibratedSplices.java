package bitterend.exchange;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.RopeKinds;
import bitterend.catalogue.Term;
import bitterend.catalogue.Termination.What;
import bitterend.demand.calibration.TakeUpFit;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonTree;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.LengthText;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Writes calibrated take-up into a shop's {@code splices.json}, all or nothing, and keeps the file as it was. */
public final class CalibratedSplices {
    /** Where the file as it was is kept. */
    public static final String KEPT = "splices.json.old";

    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.USE_BIG_INTEGER_FOR_INTS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private CalibratedSplices() {}

    /** Adds the fits to the file of a shop folder, or writes a new one; findings when the old one cannot be read. */
    public static List<Finding> write(Path folder, List<TakeUpFit> fits) {
        Findings findings = new Findings();
        Optional<InputFile> old = InputFile.find(folder, SplicesJson.NAME, findings);
        String text = old.map(InputFile::text).orElse("{\"format\": \"bitterend/splices/1\"}");
        ObjectNode root = read(text, findings);
        if (findings.hasErrors()) {
            return findings.sorted();
        }
        fits.forEach(fit -> add(root, fit));
        String changed = JsonTree.text(root);
        RopeKinds kinds = InputFile.find(folder, RopeKindsJson.NAME, findings)
                .map(new RopeKindsJson(findings)::read)
                .orElseGet(RopeKindsJson::builtIn);
        new SplicesJson(findings, kinds).read(new InputFile(SplicesJson.NAME, changed, ""), SplicesJson.builtIn());
        if (!findings.hasErrors()) {
            old.ifPresent(file -> WholeFile.write(folder.resolve(KEPT), file.text()));
            WholeFile.write(folder.resolve(SplicesJson.NAME), changed);
        }
        return findings.sorted();
    }

    private static ObjectNode read(String text, Findings findings) {
        try {
            if (JSON.readTree(text) instanceof ObjectNode root) {
                return root;
            }
        } catch (JsonProcessingException malformed) {
            findings.add(Finding.error(SplicesJson.NAME, "", "", malformed.getOriginalMessage(), "well-formed JSON"));
            return JSON.createObjectNode();
        }
        findings.add(Finding.error(SplicesJson.NAME, "", "", "", "one JSON object, in { and }"));
        return JSON.createObjectNode();
    }

    private static void add(ObjectNode root, TakeUpFit fit) {
        ObjectNode row = row(root.withArray("terminations"), fit.termination());
        ObjectNode onRope = object(object(row, "onRope"), fit.rope());
        onRope.set("takeUp", node(allowance(fit, What.TAKE_UP)));
        onRope.set("margin", node(allowance(fit, What.MARGIN)));
        onRope.set("marginOfTwo", node(allowance(fit, What.MARGIN_OF_TWO)));
        onRope.set("takeUpSpread", node(allowance(fit, What.TAKE_UP_SPREAD)));
    }

    private static Allowance allowance(TakeUpFit fit, What what) {
        return Optional.ofNullable(fit.allowances().get(what)).orElseThrow();
    }

    private static ObjectNode row(ArrayNode rows, String id) {
        for (JsonNode row : rows) {
            if (row instanceof ObjectNode object && row.path("id").asText().equals(id)) {
                return object;
            }
        }
        return rows.addObject().put("id", id);
    }

    private static ObjectNode object(ObjectNode parent, String name) {
        return parent.get(name) instanceof ObjectNode inner ? inner : parent.putObject(name);
    }

    private static ObjectNode node(Allowance allowance) {
        Term.Fixed fixed = (Term.Fixed) allowance.terms().get(0);
        return JSON.createObjectNode()
                .put("is", LengthText.exact(fixed.length()))
                .put("source", allowance.provenance().source())
                .put("grade", allowance.provenance().grade().letter())
                .put("verified", allowance.provenance().verified());
    }
}
