package org.honorsdue.workbench;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import java.net.URI;
import java.util.Set;

/**
 * Keeps other sites out. A page of another site may not be able to read our answers, but it could post to us; so every
 * changing request must come from our own pages (its {@code Origin}, or {@code Sec-Fetch-Site}), and must carry the name
 * of this host, which also defeats a foreign name that is made to point to this machine.
 */
final class Guard {
    private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD);

    private final Set<String> hosts;

    /** @param hosts host names by which this server may be called, without port */
    Guard(Set<String> hosts) {
        this.hosts = hosts;
    }

    void install(JavalinConfig config) {
        config.routes.before(this::check);
        config.routes.after(Guard::headers);
    }

    private void check(Context request) {
        String host = request.host();
        if (host == null || !hosts.contains(nameOf(host))) {
            throw new ForbiddenResponse(
                    "This reading room answers only by its own name. Open it with the address it printed at its start.");
        }
        if (READING.contains(request.method())) {
            return;
        }
        String origin = request.header("Origin");
        String site = request.header("Sec-Fetch-Site");
        boolean ours = origin != null ? sameOrigin(origin, host) : "same-origin".equals(site) || fromProgram(request);
        if (!ours) {
            throw new ForbiddenResponse("Only pages of this reading room may change anything here.");
        }
    }

    /** A program, not a browser: it names its purpose in a header that no foreign page can set without asking us. */
    private static boolean fromProgram(Context request) {
        return "program".equals(request.header("X-Honors-Client"));
    }

    private static boolean sameOrigin(String origin, String host) {
        try {
            return host.equals(URI.create(origin).getRawAuthority());
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private static String nameOf(String host) {
        int colon = host.lastIndexOf(':');
        return colon > 0 && host.indexOf(']') < colon ? host.substring(0, colon) : host;
    }

    private static void headers(Context answer) {
        answer.header(
                "Content-Security-Policy",
                "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:;"
                        + " font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none';"
                        + " frame-ancestors 'none'");
        answer.header("X-Content-Type-Options", "nosniff");
        answer.header("Referrer-Policy", "same-origin");
        answer.header("Cross-Origin-Opener-Policy", "same-origin");
        answer.header("Cross-Origin-Resource-Policy", "same-origin");
        answer.header("Permissions-Policy", "camera=(), microphone=(), geolocation=()");
    }
}
