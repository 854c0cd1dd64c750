package org.honorsdue.workbench;

import io.javalin.config.JavalinConfig;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The style sheet, the scripts and the faces: only the files listed here are served, from inside the program. */
final class Assets {
    private static final Map<String, String> TYPES = Map.of(
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "svg", "image/svg+xml",
            "woff2", "font/woff2",
            "txt", "text/plain; charset=utf-8");

    private final Map<String, byte[]> read = new ConcurrentHashMap<>();

    void install(JavalinConfig config) {
        config.routes.get("/assets/{name}", request -> {
            String name = request.pathParam("name");
            request.header("Cache-Control", "max-age=3600")
                    .contentType(type(name))
                    .result(bytes(name));
        });
        config.routes.get("/assets/fonts/{name}", request -> {
            String name = request.pathParam("name");
            request.header("Cache-Control", "max-age=604800")
                    .contentType(type(name))
                    .result(bytes("fonts/" + name));
        });
    }

    private static String type(String name) {
        return Optional.ofNullable(TYPES.get(name.substring(name.lastIndexOf('.') + 1)))
                .orElseThrow(() -> new NotFoundResponse("No such file."));
    }

    private byte[] bytes(String name) {
        if (name.contains("..") || name.contains("\\")) {
            throw new NotFoundResponse("No such file.");
        }
        return read.computeIfAbsent(name, Assets::load);
    }

    private static byte[] load(String name) {
        try (InputStream file = Assets.class.getResourceAsStream("assets/" + name)) {
            if (file == null) {
                throw new NotFoundResponse("No such file.");
            }
            return file.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("A file inside the program could not be read: " + name, e);
        }
    }
}
