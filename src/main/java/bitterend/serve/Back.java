package bitterend.serve;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;

/** Where a browser goes when something is done: to a screen of this server, named in the form that was sent. */
final class Back {
    private Back() {}

    static void to(Context request) {
        String asked = request.formParam("back");
        to(request, asked == null ? "/" : asked);
    }

    /** A path of our own alone: never a place that somebody else wrote into a form. */
    static void to(Context request, String path) {
        boolean ours = path.matches("/[A-Za-z0-9._~%+/?=&-]*") && !path.startsWith("//");
        request.redirect(ours ? path : "/", HttpStatus.SEE_OTHER);
    }
}
