package bitterend.bench;

import bitterend.packing.patterns.Item;
import bitterend.packing.patterns.PatternProblem;
import bitterend.packing.patterns.ReelKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * One published problem.
 *
 * @param name of the problem
 * @param problem to solve
 * @param lower proven bound on the cost
 * @param upper best known cost
 */
public record Instance(String name, PatternProblem problem, long lower, long upper) {
    /** Reads a tab separated file: name, capacity or {@code length/cost[/supply] ...}, bounds, {@code length:demand ...}. */
    public static List<Instance> read(Path file) throws IOException {
        List<Instance> instances = new ArrayList<>();
        for (String line : Files.readAllLines(file)) {
            if (!line.isBlank() && !line.startsWith("#")) {
                instances.add(of(line));
            }
        }
        return instances;
    }

    /** One line of such a file. */
    public static Instance of(String line) {
        String[] fields = line.strip().split("\t", 2);
        if (fields.length < 2) {
            throw new IllegalArgumentException("tab separated fields expected: " + line);
        }
        List<String> tokens = List.of(fields[1].strip().split("[\\s,]+"));
        int pieces = 0;
        while (pieces < tokens.size() && !tokens.get(pieces).contains(":")) {
            pieces++;
        }
        if (pieces < 3 || pieces == tokens.size()) {
            throw new IllegalArgumentException("stock, two bounds and length:demand expected: " + line);
        }
        List<Long> lengths = new ArrayList<>();
        List<Item> items = new ArrayList<>();
        for (String piece : tokens.subList(pieces, tokens.size())) {
            String[] parts = piece.split(":");
            lengths.add(Long.parseLong(parts[0]));
            items.add(Item.must(Integer.parseInt(parts[1])));
        }
        List<ReelKind> reels = new ArrayList<>();
        for (String stock : tokens.subList(0, pieces - 2)) {
            reels.add(reel(stock, List.copyOf(lengths)));
        }
        return new Instance(
                fields[0],
                new PatternProblem(items, reels),
                Long.parseLong(tokens.get(pieces - 2)),
                Long.parseLong(tokens.get(pieces - 1)));
    }

    private static ReelKind reel(String stock, List<Long> lengths) {
        String[] parts = stock.split("/");
        long cost = parts.length > 1 ? Long.parseLong(parts[1]) : 1;
        int supply = parts.length > 2 ? Integer.parseInt(parts[2]) : ReelKind.UNLIMITED;
        return ReelKind.whole(Long.parseLong(parts[0]), cost, supply, lengths);
    }
}
