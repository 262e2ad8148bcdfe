package bitterend.serve;

import io.javalin.config.JavalinConfig;

/** A part of the page with ways of its own. */
interface Screen {
    void serve(JavalinConfig config);
}
