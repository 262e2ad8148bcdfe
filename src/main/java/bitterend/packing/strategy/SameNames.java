package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.packing.Eligibility;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceKind;
import bitterend.packing.Pin;
import bitterend.packing.RunId;
import bitterend.stock.Reel;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.TreeMap;

/**
 * Names in a packing handed out anew, so that as few pieces as can be leave their reel of an earlier plan for nothing: first
 * reels exchange their names with reels that are alike, then pieces their places with pieces that are alike. What is cut off
 * what kind of reel does not change.
 */
final class SameNames {
    private final PackingProblem problem;
    private final List<List<Reel>> reels;
    private final List<List<Piece>> pieces;

    SameNames(PackingProblem problem) {
        this.problem = problem;
        reels = severals(alikeReels());
        pieces = severals(alikePieces());
    }

    private static <K, T> List<List<T>> severals(Map<K, List<T>> groups) {
        return groups.values().stream().filter(group -> group.size() > 1).toList();
    }

    /** Reels that differ by their id and their place alone, by id; none that a piece is pinned to. */
    private Map<Reel, List<Reel>> alikeReels() {
        Set<String> pinned = new HashSet<>();
        problem.pins().stream().map(Pin::reel).forEach(pinned::add);
        Map<Reel, List<Reel>> groups = new HashMap<>();
        problem.reels().stream()
                .filter(reel -> !pinned.contains(reel.id()))
                .sorted(Comparator.comparing(Reel::id, NaturalOrder.IDS))
                .forEach(reel -> groups.computeIfAbsent(nameless(reel), any -> new ArrayList<>())
                        .add(reel));
        return groups;
    }

    private static Reel nameless(Reel reel) {
        return new Reel(
                "",
                reel.rope(),
                reel.lot(),
                reel.contents().worked(),
                reel.flaws(),
                reel.papers(),
                reel.custody(),
                reel.full(),
                Reel.Where.UNKNOWN);
    }

    private Map<PieceKind, List<Piece>> alikePieces() {
        Eligibility rules = new Eligibility(problem);
        Map<PieceKind, List<Piece>> groups = new HashMap<>();
        problem.pieces().stream()
                .filter(piece -> !piece.isMatched() && !rules.kindOf(piece).isPinned())
                .sorted(Comparator.comparing(Piece::id, NaturalOrder.IDS))
                .forEach(piece -> groups.computeIfAbsent(rules.kindOf(piece), any -> new ArrayList<>())
                        .add(piece));
        return groups;
    }

    /** The packing with its names handed out anew. */
    Packing of(Packing packing) {
        Map<String, RunId> places = new TreeMap<>(packing.places());
        reels.forEach(group -> rename(group, places));
        pieces.forEach(group -> exchange(group, places));
        return new Packing(places);
    }

    /** A reel that lends its name to another, and how many pieces then are where they were. */
    private record Match(String now, String was, int stay) {}

    /** The pairs on which most pieces stay come first; who is left keeps a name that is left. */
    private void rename(List<Reel> group, Map<String, RunId> places) {
        Map<String, String> names = new HashMap<>();
        Set<String> given = new HashSet<>();
        for (Match match : matches(group, places)) {
            if (!names.containsKey(match.now()) && given.add(match.was())) {
                names.put(match.now(), match.was());
            }
        }
        Queue<String> free = new ArrayDeque<>();
        group.stream().map(Reel::id).filter(id -> !given.contains(id)).forEach(free::add);
        for (Reel reel : group) {
            if (!names.containsKey(reel.id()) && free.remove(reel.id())) {
                names.put(reel.id(), reel.id());
            }
        }
        group.forEach(reel -> names.computeIfAbsent(reel.id(), any -> free.remove()));
        places.replaceAll((piece, place) -> new RunId(names.getOrDefault(place.reel(), place.reel()), place.run()));
    }

    private List<Match> matches(List<Reel> group, Map<String, RunId> places) {
        Set<String> ids = new HashSet<>();
        group.forEach(reel -> ids.add(reel.id()));
        Map<List<String>, Integer> stay = new HashMap<>();
        places.forEach((piece, place) -> {
            String was = problem.earlier().getOrDefault(piece, "");
            if (ids.contains(place.reel()) && ids.contains(was)) {
                stay.merge(List.of(place.reel(), was), 1, Integer::sum);
            }
        });
        return stay.entrySet().stream()
                .map(each -> new Match(each.getKey().get(0), each.getKey().get(1), each.getValue()))
                .sorted(Comparator.comparingInt((Match match) -> -match.stay())
                        .thenComparing(match -> !match.now().equals(match.was()))
                        .thenComparing(Match::now, NaturalOrder.IDS)
                        .thenComparing(Match::was, NaturalOrder.IDS))
                .toList();
    }

    /** A place to a piece that was on its reel, as long as there is one; the others keep theirs where they can. */
    private void exchange(List<Piece> group, Map<String, RunId> places) {
        Map<String, RunId> open = new LinkedHashMap<>();
        Map<String, Deque<String>> wereOn = new HashMap<>();
        for (Piece piece : group) {
            RunId place = places.get(piece.id());
            if (place != null) {
                open.put(piece.id(), place);
                wereOn.computeIfAbsent(problem.earlier().getOrDefault(piece.id(), ""), any -> new ArrayDeque<>())
                        .add(piece.id());
            }
        }
        List<String> left = new ArrayList<>(open.keySet());
        List<RunId> free = new ArrayList<>();
        open.forEach((piece, place) -> {
            Deque<String> there = wereOn.getOrDefault(place.reel(), new ArrayDeque<>());
            String stays = there.remove(piece) ? piece : there.poll();
            if (stays == null) {
                free.add(place);
            } else {
                places.put(stays, place);
                left.remove(stays);
            }
        });
        Iterator<RunId> next = moved(left, open, free).iterator();
        left.forEach(piece -> places.put(piece, next.next()));
    }

    /** The free places in the order of the pieces that are left: its own to each that can keep it. */
    private static List<RunId> moved(List<String> left, Map<String, RunId> own, List<RunId> free) {
        List<Optional<RunId>> kept = left.stream()
                .map(piece -> Optional.ofNullable(own.get(piece)).filter(free::remove))
                .toList();
        Iterator<RunId> rest = free.iterator();
        return kept.stream().map(place -> place.orElseGet(rest::next)).toList();
    }
}
