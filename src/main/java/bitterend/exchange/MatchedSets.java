package bitterend.exchange;

import bitterend.demand.Assembly;
import bitterend.demand.Piece;
import bitterend.exchange.form.Codec;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Looks at the matched sets that order lines name: no set of one, one kind of match, a rope for all. */
final class MatchedSets {
    private final Map<String, List<Assembly>> bySet = new TreeMap<>();

    MatchedSets(List<Assembly> assemblies) {
        for (Assembly assembly : assemblies) {
            String set = assembly.terms().matching().set();
            if (!set.isEmpty()) {
                bySet.computeIfAbsent(set, name -> new ArrayList<>()).add(assembly);
            }
        }
    }

    /** Tells every set that cannot be one, at its first line. */
    void check(Findings findings) {
        bySet.forEach((set, lines) -> {
            Assembly first = lines.get(0);
            int pieces =
                    lines.stream().mapToInt(line -> line.ordered().pieces()).sum();
            if (pieces < 2) {
                findings.add(
                        problem(first, "set", set, "a set of at least two pieces: one alone has nothing to match"));
            }
            for (Assembly line : lines) {
                if (bond(line) != bond(first)) {
                    findings.add(problem(
                            line, "match", Codec.word(bond(line)), "the same kind of match on every line of the set"));
                }
            }
            if (commonRopes(lines).isEmpty()) {
                findings.add(problem(first, "set", set, "a rope that every line of the set may be made of"));
            }
        });
    }

    private static Piece.Bond bond(Assembly line) {
        return line.terms().matching().bond();
    }

    private static Set<String> commonRopes(List<Assembly> lines) {
        Set<String> common = new HashSet<>(lines.get(0).ropes());
        lines.forEach(line -> common.retainAll(line.ropes()));
        return common;
    }

    private static Finding problem(Assembly line, String field, String found, String expected) {
        return Finding.error(line.origin().file(), line.origin().place(), field, found, expected);
    }
}
