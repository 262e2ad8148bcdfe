package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.BenchTools;
import bitterend.catalogue.Grade;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Term;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.What;
import bitterend.catalogue.Yardstick;
import bitterend.catalogue.Yardsticks;
import bitterend.catalogue.Yardsticks.Counted;
import bitterend.exchange.form.InputFile;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Ratio;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A shop adds to the built-in ends, or changes them, with rows of data. */
final class SplicesJsonTest {

    @Test
    void shopRow_addsATerminationWithoutCode() {
        SpliceBook book = read(
                """
                {"format": "bitterend/splices/1", "terminations": [
                  {"id": "loft-eye", "name": "our eye", "kind": "eye", "constructions": ["8-strand"],
                   "allowances": {"tail": {"is": "2 fids - 1/2 diameters + 30 mm"}, "trim": {"is": "1 in"}}}]}
                """);
        Termination row = row(book, "loft-eye");
        assertEquals(
                List.of(
                        new Term.Multiple(Ratio.of(2), Yardstick.FID),
                        new Term.Multiple(new Ratio(-1, 2), Yardstick.DIAMETER),
                        new Term.Fixed(FineLength.ofMillimetres(30))),
                row.allowance(What.TAIL).terms());
        assertEquals(Grade.SHOP, row.allowance(What.TRIM).provenance().grade());
        assertFalse(row.isVerified());
        assertEquals(504 - 6 + 30, loftEyeTail(book));
        assertEquals(
                SplicesJson.builtIn().terminations().size() + 1,
                book.terminations().size());
    }

    /** Millimetres of tail on 12 mm rope: two fids less half a diameter and 30 mm. */
    private static long loftEyeTail(SpliceBook book) {
        Diameter rope = Diameter.ofMillimetres(12);
        Yardsticks sticks =
                new Yardsticks(rope, book.fids().fid(rope), FineLength.ZERO, Counted.NOTHING, Yardsticks.Eye.NONE);
        return row(book, "loft-eye")
                .allowance(What.TAIL)
                .length(sticks)
                .roundedUp()
                .mm();
    }

    @Test
    void shopRow_changesOnlyWhatItStates() {
        SpliceBook book = read(
                """
                {"format": "bitterend/splices/1", "terminations": [
                  {"id": "double-braid-eye", "minutes": 25,
                   "allowances": {"takeUp": {"is": "0.62 fids", "source": "14 measured", "verified": true}}}]}
                """);
        Termination changed = row(book, "double-braid-eye");
        Termination builtIn = row(SplicesJson.builtIn(), "double-braid-eye");
        Allowance takeUp = changed.allowance(What.TAKE_UP);
        assertEquals(List.of(new Term.Multiple(new Ratio(62, 100), Yardstick.FID)), takeUp.terms());
        assertEquals("14 measured", takeUp.provenance().source());
        assertTrue(takeUp.provenance().verified());
        assertEquals(25, changed.work().minutes());
        assertEquals(builtIn.allowance(What.TAIL), changed.allowance(What.TAIL));
        assertEquals(builtIn.suits(), changed.suits());
        assertEquals(builtIn.name(), changed.name());
    }

    @Test
    void shopFids_takeThePlaceOfTheBuiltInOnes() {
        SpliceBook book = read(
                """
                {"format": "bitterend/splices/1",
                 "fids": {"diameters": "22", "shortSections": [{"part": "1/4"}]}}
                """);
        assertEquals(Ratio.of(22), book.fids().rule().diameters().get(BenchTools.METRIC));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{'id': 'a'} | kind | nothing",
                "{'id': 'a b', 'name': 'x', 'kind': 'bare'} | id | a b",
                "{'id': 'a', 'name': 'x', 'kind': 'knob'} | kind | knob",
                "{'id': 'a', 'name': 'x', 'kind': 'bare', 'constructions': ['5-strand']} | constructions | nothing",
                "{'id': 'a', 'name': 'x', 'kind': 'bare', 'fibres': ['wool']} | fibres | nothing",
                "{'id': 'a', 'name': 'x', 'kind': 'eye', 'allowances': {'tail': {'is': '24'}}} | is | 24",
                "{'id': 'a', 'name': 'x', 'kind': 'eye', 'allowances': {'tail': {'is': '24 elephants'}}} | is | 24 elephants",
                "{'id': 'a', 'name': 'x', 'kind': 'eye', 'allowances': {'tail': {'is': '1 fid +'}}} | is | 1 fid +",
                "{'id': 'a', 'name': 'x', 'kind': 'eye', 'allowances': {'tail': {}}} | is | nothing",
                "{'id': 'a', 'name': 'x', 'kind': 'eye', 'allowances': {'tale': {'is': '1 fid'}}} | tale | tale",
                "{'id': 'a', 'name': 'x', 'kind': 'eye', 'tucks': {'natural': 3}} | other | nothing",
                "{'id': 'a', 'name': 'x', 'kind': 'eye', 'minutes': 'soon'} | minutes | soon",
                "{'id': 'a', 'name': 'x', 'kind': 'eye', 'grade': 'Z'} | grade | Z",
                "{'id': 'a', 'name': 'x', 'kind': 'eye', 'strenght': '90 %'} | strenght | strenght",
                "{'id': 'plain', 'minutes': -1} | minutes | -1",
            })
    void badRow_isToldWithItsPlace(String row, String field, String found) {
        Findings findings = new Findings();
        read("{\"format\": \"bitterend/splices/1\", \"terminations\": [" + row.replace('\'', '"') + "]}", findings);
        List<Finding> all = findings.sorted();
        assertTrue(
                all.stream()
                        .anyMatch(finding -> finding.isError()
                                && finding.file().equals("splices.json")
                                && finding.place().startsWith("/terminations/0")
                                && finding.field().equals(field)
                                && (found.equals("nothing") || finding.found().equals(found))),
                all::toString);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{'format': 'bitterend/splices/2'}",
                "{'format': 'bitterend/splices/1', 'fids': {'diameters': 'long'}}",
                "{'format': 'bitterend/splices/1', 'fids': {'shortSections': [{'upTo': '1 in', 'part': '1/4'}]}}",
                "{'format': 'bitterend/splices/1', 'terminations': {}}",
                "{'format': 'bitterend/splices/1', 'terminations': [{'id': 'plain'}, {'id': 'plain'}]}",
                "{'format': 'bitterend/splices/1', 'beforeTheCut': [{'count': 2}]}",
                "{'format': 'bitterend/splices/1', 'clearRope': [{'length': {'is': 'some'}}]}",
                "{'format': 'bitterend/splices/1', 'layTurns': [{'construction': 'wire'}]}",
                "{'format': 'bitterend/splices/1', 'layTurns': [{'construction': 'wire', 'diameters': '0'}]}",
                "{'format': 'bitterend/splices/1', 'splices': []}",
                "[]",
                "{",
            })
    void badFile_isTold(String text) {
        Findings findings = new Findings();
        read(text.replace('\'', '"'), findings);
        assertTrue(findings.hasErrors());
    }

    private static SpliceBook read(String text) {
        Findings findings = new Findings();
        SpliceBook book = read(text, findings);
        assertEquals(List.of(), findings.sorted());
        return book;
    }

    private static SpliceBook read(String text, Findings findings) {
        return new SplicesJson(findings, RopeKindsJson.builtIn())
                .read(new InputFile("splices.json", text, ""), SplicesJson.builtIn());
    }

    private static Termination row(SpliceBook book, String id) {
        return book.terminations().stream()
                .filter(row -> row.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
