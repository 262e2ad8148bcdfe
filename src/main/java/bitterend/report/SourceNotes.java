package bitterend.report;

import bitterend.catalogue.Grade;
import bitterend.catalogue.Provenance;
import java.util.ArrayList;
import java.util.List;

/** Numbers the sources of a derivation, so that its lines stay short and every source is told once below them. */
public final class SourceNotes {
    private final List<String> sources = new ArrayList<>();

    /** What stands beside a line: {@code order}, {@code arithmetic}, {@code [1]}, {@code [2], unverified}. */
    public String mark(Provenance provenance) {
        return name(provenance) + (provenance.verified() ? "" : ", unverified");
    }

    private String name(Provenance provenance) {
        if (provenance.source().isEmpty() && provenance.grade() == Grade.ORDER) {
            return "order";
        }
        if (provenance.source().isEmpty() && provenance.grade() == Grade.DERIVED) {
            return "arithmetic";
        }
        String words = words(provenance);
        if (!sources.contains(words)) {
            sources.add(words);
        }
        return "[" + (sources.indexOf(words) + 1) + "]";
    }

    private static String words(Provenance provenance) {
        String grade = provenance.grade().words();
        boolean saysItself =
                provenance.source().isEmpty() || provenance.source().equals(grade);
        return saysItself ? grade : provenance.source() + " (" + grade + ")";
    }

    /** The sources, numbered. */
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        for (int i = 0; i < sources.size(); i++) {
            notes.add("[" + (i + 1) + "] " + sources.get(i));
        }
        return notes;
    }
}
