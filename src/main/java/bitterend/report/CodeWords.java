package bitterend.report;

import bitterend.demand.CodeInForce;
import bitterend.demand.Demanded;
import bitterend.demand.SpliceCard;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which code of a region the lines for slings and lifting are made under, in sentences. */
public final class CodeWords {
    private final Map<String, List<String>> linesOf = new LinkedHashMap<>();

    /** Adds a line; nothing where nothing is lifted. */
    public void add(String line, Demanded demanded) {
        demanded.findCard()
                .flatMap(SpliceCard::findCode)
                .map(CodeInForce::words)
                .ifPresent(code ->
                        linesOf.computeIfAbsent(code, any -> new ArrayList<>()).add(line));
    }

    /** A sentence for each code: {@code Slings and lifting, code en (G-1/1, G-1/2).} */
    public List<String> sentences() {
        return linesOf.entrySet().stream()
                .map(each ->
                        "Slings and lifting, code " + each.getKey() + " (" + String.join(", ", each.getValue()) + ").")
                .toList();
    }
}
