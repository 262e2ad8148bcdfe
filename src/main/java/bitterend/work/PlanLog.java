package bitterend.work;

import bitterend.exchange.PlanEvent;
import java.util.List;

/** What happened to the plans of a shop after they were made; events are added and never changed. */
interface PlanLog {
    /** All events, oldest first. */
    List<PlanEvent> events();

    /** Adds an event; what this has returned from is kept. */
    void add(PlanEvent event);
}
