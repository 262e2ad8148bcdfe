package bitterend.serve;

/**
 * Begins what is worked out behind a page. What goes wrong there is written down as what goes wrong on a page is, and said where
 * the run is looked at.
 *
 * @param faults where a line is written
 */
record Runs(Faults faults) {
    /**
     * Begins it, on a thread of its own.
     *
     * @param name what it is, in the line of a fault
     */
    <T> Run<T> begin(String name, Run.Work<T> work) {
        Run<T> run = new Run<>();
        Thread worker = new Thread(() -> run.work(work, wrong -> faults.noted(name, wrong)), name);
        worker.setDaemon(true);
        worker.start();
        return run;
    }
}
