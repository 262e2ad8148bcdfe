package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Construction;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.MakeUp;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeKinds;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonTree;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.MoneyText;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Constructions, fibres and make-ups are rows; a shop adds its own and corrects ours. */
final class RopeKindsJsonTest {
    private static final MoneyText EUR = new MoneyText("EUR", 2);
    private static final Settings EIDER =
            ShopFolder.settings(Path.of("demo-data/eider-shed")).orElseThrow();
    private static final String OWN =
            """
            {"format": "bitterend/constructions/1",
             "constructions": [{"name": "32-plait", "strands": 32, "buried": true, "cautions": ["Mind the cover."]},
                               {"name": "webbing", "cautions": ["Ours is tubular."]}],
             "fibres": [{"name": "basalt", "density": "2700 kg/m3"}],
             "makeUps": [{"name": "6x25", "tucked": true}]}
            """;

    @Test
    void shop_addsItsOwnAndCorrectsOurs() {
        RopeKinds kinds = kinds(OWN);
        Construction plait = kinds.constructions().stream()
                .filter(row -> row.word().equals("32-plait"))
                .findFirst()
                .orElseThrow();
        assertTrue(plait.can().buried() && plait.can().knotted() && !plait.can().tucked());
        Construction webbing = kinds.constructions().get(kinds.constructions().indexOf(Kinds.WEBBING));
        assertTrue(webbing.form().flat());
        assertEquals(List.of("Ours is tubular."), webbing.cautions());
        assertEquals(Kinds.constructions().size() + 1, kinds.constructions().size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'constructions': [{'strands': 3}] | name",
                "'constructions': [{'name': 'a', 'strands': 'few'}] | strands",
                "'constructions': [{'name': 'a'}, {'name': 'A'}] | name",
                "'constructions': [{'name': 'a', 'tuckd': true}] | tuckd",
                "'fibres': [{'name': 'a', 'density': '1.38'}] | density",
                "'fibres': [{'name': 'a', 'shrinks': '80 %'}] | shrinks",
                "'fibres': [{'name': '60 %'}] | name",
                "'makeUps': [{'name': '7x7', 'tucked': 'perhaps'}] | tucked",
            })
    void badRow_isToldWithItsPlace(String rows, String field) {
        Findings findings = new Findings();
        new RopeKindsJson(findings)
                .read(new InputFile(
                        "constructions.json",
                        "{'format': 'bitterend/constructions/1', ".replace('\'', '"') + rows.replace('\'', '"') + "}",
                        ""));
        assertTrue(
                findings.sorted().stream()
                        .anyMatch(
                                finding -> finding.isError() && finding.field().equals(field)),
                findings.sorted().toString());
    }

    @Test
    void ropes_areOfTheShopsOwnKinds() {
        Findings findings = new Findings();
        Rope rope = rope("'construction': '32 Plait', 'fibre': 'basalt', 'diameter': '8 mm'", kinds(OWN), findings);
        assertEquals(List.of(), findings.sorted());
        assertEquals("basalt 32-plait", rope.identity().build());
        assertEquals(List.of("Mind the cover."), rope.cautions());
        assertFalse(rope.fibre().floats());
    }

    @Test
    void unknownName_isToldWithAllThereAreAndTheNearest() {
        Findings findings = new Findings();
        rope(
                "'construction': 'hollow brad', 'fibre': 'polyester', 'diameter': '8 mm'",
                RopeKindsJson.builtIn(),
                findings);
        Finding told = findings.sorted().get(0);
        assertEquals("construction", told.field());
        assertTrue(told.expected().startsWith("one of: double braid, "), told.expected());
        assertTrue(told.expected().endsWith("wire; did you mean hollow braid?"), told.expected());
    }

    /** Hand computation: 100 / (60 / 1,380 + 40 / 910) = 1,144 kg/m3, which sinks; 20 to 80 is 977, which floats. */
    @ParameterizedTest
    @CsvSource({
        "polyester 60 % + polypropylene 40 %, 1144, false",
        "polyester 20% + polypropylene 80%, 977, true",
    })
    void blend_hasTheDensityOfItsShares(String text, int density, boolean floats) {
        Fibre blend = fibre(text);
        assertEquals(density, blend.water().density());
        assertEquals(floats, blend.floats());
        assertEquals(blend, fibre(blend.word()));
    }

    @Test
    void blend_isAsCarefulAsTheLeastAbleOfItsFibres() {
        Fibre blend = fibre("manila 50 % + HMPE 50 %");
        assertFalse(blend.nature().hotCut());
        assertFalse(blend.isNatural());
        assertTrue(blend.nature().slippery());
        assertEquals(List.of(Kinds.MANILA, Kinds.HMPE), blend.parts());
    }

    @ParameterizedTest
    @CsvSource({
        "polyester 60 % + polypropylene 30 %",
        "polyester 100 %",
        "polyester 50 % + polyester 50 %",
        "polyester 50 % + steel 50 %",
        "polyester 50 % + wool 50 %",
        "polyester % + nylon 50 %",
    })
    void badShares_areRefused(String text) {
        assertTrue(KindReadings.of(RopeKindsJson.builtIn()).fibre(text).value().isEmpty());
    }

    @Test
    void makeUp_isOfWireAloneAndBringsItsCore() {
        Findings findings = new Findings();
        String wire =
                "'construction': 'wire', 'fibre': 'steel', 'diameter': '6 mm', 'lay': 'right ordinary', 'makeUp': ";
        assertEquals(
                "strand",
                rope(wire + "'1x19'", RopeKindsJson.builtIn(), findings)
                        .identity()
                        .core());
        assertEquals(
                "",
                rope(wire + "'6x36'", RopeKindsJson.builtIn(), findings)
                        .identity()
                        .core());
        assertEquals(List.of(), findings.sorted());
        rope(
                "'construction': '12-strand', 'fibre': 'HMPE', 'diameter': '6 mm', 'makeUp': '7x7'",
                RopeKindsJson.builtIn(),
                findings);
        assertEquals("makeUp", findings.sorted().get(0).field());
    }

    @Test
    void webbing_isAsWideAsItsWidth() {
        Findings findings = new Findings();
        Rope rope = rope(
                "'construction': 'webbing', 'fibre': 'polyester', 'width': '25 mm'", RopeKindsJson.builtIn(), findings);
        assertEquals(List.of(), findings.sorted());
        assertEquals(Diameter.ofMillimetres(25), rope.diameter());
    }

    /** 10 mm cut hot, 40 mm between whippings: the shop's usual losses. */
    @ParameterizedTest
    @CsvSource({
        "cotton, 40",
        "hemp, 40",
        "liquid crystal polymer, 40",
        "polyethylene, 10",
        "manila 10 % + nylon 90 %, 40"
    })
    void cutLoss_isThatOfAHotCutOnlyWhereHeatCuts(String fibre, long loss) {
        Findings findings = new Findings();
        Rope rope = rope(
                "'construction': '4-strand', 'lay': 'right ordinary', 'diameter': '8 mm', 'fibre': '" + fibre + "'",
                RopeKindsJson.builtIn(),
                findings);
        assertEquals(List.of(), findings.sorted());
        assertEquals(new Length(loss), rope.cutting().loss());
    }

    @Test
    void plan_keepsARopeWhoseRowHasGone() {
        Findings findings = new Findings();
        Rope typed = rope(
                "'construction': '32-plait', 'fibre': 'basalt 30 % + HMPE 70 %', 'diameter': '8 mm'",
                kinds(OWN), findings);
        Rope wire = rope(
                "'construction': 'wire', 'fibre': 'steel', 'lay': 'right lang', 'diameter': '8 mm', 'makeUp': '6x25'",
                kinds(OWN),
                findings);
        assertEquals(List.of(), findings.sorted());
        String kept = new JsonTree()
                .with("format", "ropes")
                .with("ropes", List.of(RopeForm.tree(typed, EUR), RopeForm.tree(wire, EUR)))
                .text();
        List<Rope> back = JsonDocument.read(
                        new InputFile("plan", kept, ""), "ropes", findings, root -> new RopesJson(EUR, findings)
                                .ropes(root.objects("ropes")))
                .orElseThrow();
        assertEquals(List.of(), findings.sorted());
        assertEquals(List.of(typed, wire), back);
        assertEquals(MakeUp.named("6x25"), back.get(1).identity().makeUp());
    }

    private static Fibre fibre(String text) {
        return KindReadings.of(RopeKindsJson.builtIn()).fibre(text).value().orElseThrow();
    }

    private static RopeKinds kinds(String text) {
        Findings findings = new Findings();
        RopeKinds kinds = new RopeKindsJson(findings).read(new InputFile("constructions.json", text, ""));
        assertEquals(List.of(), findings.sorted());
        return kinds;
    }

    private static Rope rope(String members, RopeKinds kinds, Findings findings) {
        String text = "{'format': 'ropes', 'ropes': [{'id': 'R', 'price': '1 EUR/m', 'usualReel': '100 m', " + members
                + "}]}";
        return JsonDocument.read(
                        new InputFile("ropes.json", text.replace('\'', '"'), ""),
                        "ropes",
                        findings,
                        root -> new RopesJson(EIDER, kinds, findings)
                                .ropes(root.objects("ropes"))
                                .get(0))
                .orElseThrow();
    }
}
