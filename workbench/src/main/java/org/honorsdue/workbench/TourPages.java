package org.honorsdue.workbench;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.casebook.CaseLine;
import org.honorsdue.casebook.CaseQuery;
import org.honorsdue.casebook.SearchTerm;

/** Lays the tour out and leads through it. */
final class TourPages {
    private final Desk desk;
    private final Pages pages;

    TourPages(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    void install(JavalinConfig config) {
        config.routes.get("/tour", this::show);
        config.routes.post("/tour", this::layOut);
    }

    private void show(Context request) {
        pages.show(request, "tour.jte", Map.of("stops", Tour.STOPS, "laid", laid()));
    }

    /** The cases of the tour that lie in the casebook, by the name of their file. */
    private Map<String, CaseLine> laid() {
        var laid = new HashMap<String, CaseLine>();
        for (var stop : Tour.STOPS) {
            var query =
                    new CaseQuery(stop.soldier(), Optional.of(SearchTerm.Field.NAME), Optional.empty(), false, 0, 1);
            desk.casebook().list(query).stream()
                    .filter(line -> line.title().equals(stop.soldier()))
                    .findFirst()
                    .ifPresent(line -> laid.put(stop.file(), line));
        }
        return laid;
    }

    private void layOut(Context request) {
        var already = laid();
        // The last of the list stands first in the casebook, so the story is laid out from its end.
        for (int i = Tour.STOPS.size() - 1; i >= 0; i--) {
            var stop = Tour.STOPS.get(i);
            if (!already.containsKey(stop.file())) {
                String text = text(stop.file());
                desk.parse(text)
                        .answer(
                                accepted -> desk.open(accepted.casefile(), text, "From the tour. " + stop.says()),
                                refused -> {
                                    throw new InputFault(
                                            "The tour's casefile " + stop.file() + " was not taken in.",
                                            refused.faults());
                                });
            }
        }
        request.redirect("/tour", HttpStatus.SEE_OTHER);
    }

    private static String text(String file) {
        try (var stream = TourPages.class.getResourceAsStream("demo/" + file + ".yaml")) {
            if (stream == null) {
                throw new InputFault("The tour's casefile " + file + " is not in this program.", List.of());
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("A file inside the program could not be read.", e);
        }
    }
}
