package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;

/** A command line that is wrong is answered by what to write instead, and nothing typed is swallowed. */
final class MisreadTest {
    private static final String SHOP = "demo-data/eider-shed";

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plan | name the shop folder: bitterend plan SHOP",
                "orders | name the shop folder: bitterend orders SHOP",
                "stock receive SHOP | name the reel, the rope and the length:"
                        + " bitterend stock receive SHOP R-105 LAID-14 \"60 m\"",
                "stock receive SHOP N-1 LAID-14 60 | LENGTH: found \"60\", expected a length with its unit; write \"60 m\"",
                "stock gauge SHOP E9 --gross 12 | --gross: found \"12\", expected a mass with its unit; write \"12 kg\"",
                "stock gauge SHOP E9 --tolerance x | --tolerance: found \"x\", expected whole per cent;"
                        + " write the tolerance as 2 or 2 %",
                "stock receive SHOP N-1 LAID-14 60m --tolerance x | --tolerance: found \"x\", expected a share from 0"
                        + " to 50 %; write the tolerance as 2 or 2 %",
                "plan SHOP --time | --time: its value is missing; such as: --time 10s",
                "plan SHOP --time x | --time: found \"x\", expected a time limit such as 10s, 500ms or 2m, above 0",
                "plan SHOP --seed x | --seed: found \"x\", expected a whole number",
                "plan SHOP --seed 1 --seed 2 | --seed: given twice; give it once",
                "plan SHOP --effort mad | --effort: found \"mad\", expected quick, thorough or reproducible",
                "plan SHOP --foo | plan has no option --foo",
                "plan SHOP extra | \"extra\" is a word too many; expected plan SHOP-WORD",
                "measure SHOP P --passed --spoiled | --passed, --spoiled: only one of these can be; give one",
                "stock undo SHOP x | EVENT: found \"x\", expected a whole number",
                "stock trce | stock has no command trce",
            })
    void wrongWords_areAnsweredByWhatToWrite(String typed, String told) {
        Run run = run(typed);
        assertEquals(2, run.code(), run.err());
        assertEquals(
                "error: "
                        + told.replace("SHOP-WORD", "\u0000")
                                .replace("SHOP", SHOP)
                                .replace("\u0000", "SHOP"),
                run.err().lines().findFirst().orElse(""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "buy SHOP --rope LAID-14 | --rope",
                "buy SHOP --scenarios 20 | --scenarios",
                "buy SHOP --weeks 2 | --weeks",
                "buy SHOP --pictures OUT | --pictures",
                "buy SHOP --share 1/2 --merge a.json | --share",
                "buy SHOP --share 1/2 --html OUT/a.html | --html",
                "buy SHOP --merge a.json --threads 2 | --threads",
                "buy SHOP --from-history --time 3s | --time",
                "buy SHOP --service 95% | --service",
                "plan SHOP --plan 1 | --plan",
                "plan SHOP --shares --time 3s | --time",
                "plan SHOP --shares --withdraw | --withdraw",
                "plan SHOP --paper Letter | --paper",
                "value SHOP --weeks 3 | --weeks",
                "sheet SHOP --paper Letter | --paper",
                "sheet SHOP --label 70x37 | --label",
                "sheet SHOP --who N | --who",
                "sheet SHOP --shop SHOP | --shop",
                "sheet SHOP/plan.json --plan 1 | --plan",
                "measure SHOP E-32/1.1 --passed --how pins | --how",
                "stock gauge SHOP E9 --gross 20kg --tare 2kg --note x | --note",
                "stock gauge SHOP E9 --gross 20kg --tare 2kg --depth 20mm | --depth",
                "stock list SHOP --who N | --who",
                "stock list SHOP --paper A4 | --paper",
                "orders --by due note SHOP | write everything after bitterend orders note",
            })
    void whatChangesNothing_isRefusedWithTheReason(String typed, String option) {
        Run run = run(typed);
        assertEquals(2, run.code(), run.out() + run.err());
        assertTrue(run.err().startsWith("error: " + option), run.err());
        assertEquals("", run.out());
    }

    @Test
    void helpOfWhatIsTypedHalf_isShown() {
        assertEquals(0, run("buy SHOP --rope LAID-14 --help").code());
    }

    /** A sample of every word in capitals, so that no message ends in a word that cannot be typed. */
    @Test
    void everyWordOfACommandLine_hasASample() {
        Set<String> without = new TreeSet<>();
        for (CommandLine command : EveryCommand.byWords().values()) {
            for (ArgSpec argument : command.getCommandSpec().args()) {
                if (argument.arity().max() > 0 && !SampleWords.has(argument.paramLabel())) {
                    without.add(command.getCommandSpec().qualifiedName() + " " + argument.paramLabel());
                }
            }
        }
        assertEquals(Set.of(), without);
    }

    /** The library's own words reach nobody. */
    @Test
    void everyCommand_asksForItsWordsItself() {
        EveryCommand.byWords().keySet().forEach(words -> {
            Run run = Run.of(words.split(" "));
            assertFalse(
                    run.err().matches("(?s).*(Missing required|Invalid value|Unmatched|Unknown option).*"), run.err());
        });
    }

    private Run run(String typed) {
        String[] words =
                typed.replace("SHOP", SHOP).replace("OUT", folder.toString()).split(" ");
        return Run.of(words);
    }
}
