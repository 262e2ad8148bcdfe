package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.Members;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.packing.proof.Holder;
import bitterend.packing.proof.PriceList;
import bitterend.packing.proof.PriceList.PiecePrice;
import bitterend.packing.proof.PriceList.Touch;
import bitterend.packing.proof.ProofNode;
import bitterend.packing.proof.ProofNode.Branch;
import bitterend.packing.proof.ProofNode.Leaf;
import bitterend.packing.proof.ProofTree;
import bitterend.packing.proof.RunOfReel;
import bitterend.packing.proof.Statement;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** A proof by cases in a plan file and out of it again. */
final class ProofFormTest {
    private static final RunOfReel RUN = new RunOfReel("R 7", 2);
    private static final Holder LOT = new Holder.Lot("white", "L 1");
    private static final Holder REEL = new Holder.OneReel("R 7");

    @Test
    void proof_comesBackAsItWas() throws JsonProcessingException {
        Findings findings = new Findings();
        assertEquals(proof(), read(json(), findings));
        assertEquals(List.of(), findings.sorted());
    }

    @Test
    void deepProof_comesBackToo() throws JsonProcessingException {
        ProofTree deep = deep(450);
        Findings findings = new Findings();
        JsonNode json =
                new JsonMapper().readTree(Members.tree(ProofForm::proof, deep).text());
        assertEquals(deep, read(json, findings));
        assertEquals(List.of(), findings.sorted());
    }

    @Test
    void tooDeepProof_isTold() throws JsonProcessingException {
        Findings findings = new Findings();
        read(new JsonMapper().readTree(Members.tree(ProofForm::proof, deep(550)).text()), findings);
        assertEquals(List.of("tree"), fields(findings));
    }

    @Test
    void unknownKindOfNode_isRefused() throws JsonProcessingException {
        assertEquals(List.of("case"), fields(told(json -> node(json, 0).put("case", "phase of the moon"))));
    }

    @Test
    void missingChild_isRefused() throws JsonProcessingException {
        assertEquals(List.of("tree"), fields(told(json -> nodes(json)
                .remove(nodes(json).size() - 1))));
        assertEquals(List.of("tree"), fields(told(json -> nodes(json)
                .add(node(json, nodes(json).size() - 1).deepCopy()))));
        assertEquals(List.of("tree"), fields(told(json -> nodes(json).removeAll())));
    }

    @Test
    void wrongNumbers_areTold() throws JsonProcessingException {
        assertTrue(fields(told(json -> node(json, 0).put("mm", -1))).contains("mm"));
        assertTrue(fields(told(json -> node(json, 0).put("mm", "many"))).contains("mm"));
        for (String scale : List.of("1 2", "0", "-1", "00")) {
            assertTrue(fields(told(json -> json.put("scale", scale))).contains("scale"), scale);
        }
        assertTrue(fields(told(json -> json.put("answer", 42))).contains("answer"));
    }

    static ProofTree proof() {
        PriceList plain = new PriceList(
                List.of(new PiecePrice(0, Holder.RACK, 12), new PiecePrice(1, Holder.RACK, -3)),
                List.of(),
                List.of(),
                List.of(0L, 5L, 0L, 0L, 7L));
        PriceList rich = new PriceList(
                List.of(
                        new PiecePrice(0, Holder.RACK, 1L << 50),
                        new PiecePrice(0, LOT, 5),
                        new PiecePrice(1, REEL, -8)),
                List.of(new Touch("A 1", RUN, 9)),
                List.of(new Touch("S/1", RUN, 10)),
                List.of());
        ProofNode root = new Branch(
                new Statement.LoadAtMost(RUN, 12_000),
                new Branch(
                        new Statement.SetOn("S/1", LOT),
                        new Leaf(0),
                        new Branch(new Statement.OrderTakes("A 1", REEL), ProofNode.EMPTY, new Leaf(1))),
                new Branch(
                        new Statement.CopiesAtMost(1, RUN, 3),
                        new Branch(new Statement.UndoneAtMost(0, 2), new Leaf(1), new Leaf(0)),
                        new Branch(new Statement.ReelUsed("R 7"), new Leaf(0), ProofNode.EMPTY)));
        return new ProofTree(
                List.of(new ProofTree.Line(List.of("A 1/1.1", "A 1/1.2")), new ProofTree.Line(List.of("A 1/2.1"))),
                1_000,
                List.of(plain, rich),
                root);
    }

    private static ProofTree deep(int depth) {
        ProofNode root = new Leaf(0);
        for (int i = 0; i < depth; i++) {
            root = new Branch(new Statement.ReelUsed("R" + i), new Leaf(0), root);
        }
        return new ProofTree(List.of(), 1, List.of(), root);
    }

    private static Findings told(Consumer<ObjectNode> change) throws JsonProcessingException {
        ObjectNode json = (ObjectNode) json();
        change.accept(json);
        Findings findings = new Findings();
        read(json, findings);
        return findings;
    }

    private static List<String> fields(Findings findings) {
        return findings.sorted().stream().map(Finding::field).toList();
    }

    private static ArrayNode nodes(ObjectNode json) {
        return (ArrayNode) json.get("tree");
    }

    private static ObjectNode node(ObjectNode json, int at) {
        return (ObjectNode) nodes(json).get(at);
    }

    private static JsonNode json() throws JsonProcessingException {
        return new JsonMapper().readTree(Members.tree(ProofForm::proof, proof()).text());
    }

    private static ProofTree read(JsonNode json, Findings findings) {
        InputFile file = new InputFile(
                "plan.json", ((ObjectNode) json).put("format", "proof").toString(), "");
        return JsonDocument.read(file, "proof", findings, object -> Members.read(ProofForm::proof, object))
                .orElseThrow();
    }
}
