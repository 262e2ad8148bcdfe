package bitterend.bench.peers;

import bitterend.bench.peers.GeneralSolver.Limits;
import java.io.BufferedOutputStream;
import java.io.BufferedReader;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * SCIP of OR-Tools, in a process of its own: it tells of better plans nowhere but in what it prints. {@code double} as it
 * takes nothing else; values are rounded and priced again.
 */
final class Scip {
    /** Its prices are in the smallest coin. */
    static final double UNIT = 1_000;

    /** Of what it calls proven this may be its rounding. */
    private static final double ROUNDING = 1e-9;

    private final List<Outcome.Step> steps = new ArrayList<>();
    private int primal = -1;
    private long[] values = new long[0];
    private long bound = Long.MIN_VALUE;

    private Scip() {}

    static Outcome solve(DayModel model, Limits limits) {
        Scip scip = new Scip();
        try {
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-Xmx1g",
                            "-cp",
                            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                            ScipProcess.class.getName())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            try (DataOutputStream to = new DataOutputStream(new BufferedOutputStream(process.getOutputStream()))) {
                write(model, limits, to);
            }
            scip.read(new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8)));
            if (process.waitFor() != 0) {
                throw new IllegalStateException("the solver's process ended with " + process.exitValue());
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped", stopped);
        }
        return new Outcome(scip.values, scip.bound, scip.steps);
    }

    private static void write(DayModel model, Limits limits, DataOutputStream to) throws IOException {
        LinearModel program = model.program();
        to.writeDouble(limits.seconds());
        to.writeInt(limits.threads());
        to.writeInt(program.variables().size());
        for (LinearModel.Variable variable : program.variables()) {
            to.writeLong(variable.most());
            to.writeLong(variable.price());
        }
        to.writeInt(program.rows().size());
        for (LinearModel.Row row : program.rows()) {
            to.writeLong(row.least());
            to.writeLong(row.most());
            int[] variables = row.variables();
            long[] factors = row.factors();
            to.writeInt(variables.length);
            for (int t = 0; t < variables.length; t++) {
                to.writeInt(variables[t]);
                to.writeLong(factors[t]);
            }
        }
        long[] start = model.start();
        to.writeInt(start.length);
        for (long value : start) {
            to.writeLong(value);
        }
    }

    private void read(BufferedReader lines) throws IOException {
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            if (line.startsWith(ScipProcess.VALUES)) {
                values = Arrays.stream(
                                line.substring(ScipProcess.VALUES.length()).split(" "))
                        .mapToLong(Long::parseLong)
                        .toArray();
            } else if (line.startsWith(ScipProcess.BOUND)) {
                double proven = Double.parseDouble(line.substring(ScipProcess.BOUND.length()));
                bound = Math.abs(proven) < 1e14
                        ? (long) Math.floor(UNIT * (proven - ROUNDING * Math.abs(proven)))
                        : Long.MIN_VALUE;
            } else {
                hear(line.split("\\|"));
            }
        }
    }

    /** A line of its table: seconds in the first cell, the best plan in one that the head names. */
    private void hear(String[] cells) {
        for (int cell = 0; cell < cells.length; cell++) {
            if (cells[cell].strip().equals("primalbound")) {
                primal = cell;
                return;
            }
        }
        if (primal < 0 || cells.length <= primal) {
            return;
        }
        try {
            double cost = Double.parseDouble(cells[primal].strip());
            double seconds = Double.parseDouble(cells[0].replaceAll("[^0-9.]", ""));
            long millis = Math.round(cost * UNIT);
            if (cost < 1e15
                    && (steps.isEmpty() || millis < steps.get(steps.size() - 1).cost())) {
                steps.add(new Outcome.Step(seconds, millis));
            }
        } catch (NumberFormatException noNumber) {
            return;
        }
    }
}
