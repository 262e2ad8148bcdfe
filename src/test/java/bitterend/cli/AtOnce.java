package bitterend.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Several people at several terminals who press return at the same moment. */
final class AtOnce {
    private AtOnce() {}

    /** What each of these command lines answered. */
    static List<Run> run(List<List<String>> lines) throws Exception {
        ExecutorService people = Executors.newFixedThreadPool(lines.size());
        CyclicBarrier start = new CyclicBarrier(lines.size());
        try {
            List<Callable<Run>> tasks = new ArrayList<>();
            for (List<String> line : lines) {
                tasks.add(() -> {
                    start.await();
                    return Run.of(line.toArray(String[]::new));
                });
            }
            List<Run> answers = new ArrayList<>();
            for (Future<Run> answer : people.invokeAll(tasks)) {
                answers.add(answer.get());
            }
            return answers;
        } finally {
            people.shutdownNow();
        }
    }

    /** Exit codes, lowest first. */
    static List<Integer> codes(List<Run> answers) {
        return answers.stream().map(Run::code).sorted().toList();
    }
}
