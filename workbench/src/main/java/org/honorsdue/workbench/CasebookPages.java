package org.honorsdue.workbench;

import io.javalin.config.JavalinConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.casebook.CaseQuery;
import org.honorsdue.casebook.SearchTerm;
import org.honorsdue.casebook.Stage;

/** The casebook itself: the list, the search, opening, taking in and giving out a case. */
final class CasebookPages {
    private static final int PAGE = 100;

    private final Desk desk;
    private final Pages pages;

    CasebookPages(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    void install(JavalinConfig config) {
        config.routes.get("/", this::list);
    }

    private void list(Context request) {
        var query = query(request);
        pages.show(
                request,
                "casebook.jte",
                Map.of(
                        "query",
                        query,
                        "cases",
                        desk.casebook().list(query),
                        "found",
                        desk.casebook().count(query)));
    }

    private static CaseQuery query(Context request) {
        String words = Optional.ofNullable(request.queryParam("words")).orElse("");
        var field = parameter(request, "in").map(name -> choice(SearchTerm.Field.values(), name));
        var stage = parameter(request, "stage").map(name -> choice(Stage.values(), name));
        int from = parameter(request, "from").map(CasebookPages::number).orElse(0);
        boolean removed = parameter(request, "removed").isPresent();
        return new CaseQuery(words, field, stage, removed, from, PAGE);
    }

    private static Optional<String> parameter(Context request, String name) {
        return Optional.ofNullable(request.queryParam(name)).filter(value -> !value.isBlank());
    }

    private static int number(String digits) {
        try {
            return Math.max(0, Integer.parseInt(digits));
        } catch (NumberFormatException e) {
            throw new BadRequestResponse("\"" + digits + "\" is not a number of a case in the list.");
        }
    }

    private static <E extends Enum<E>> E choice(E[] choices, String name) {
        return Arrays.stream(choices)
                .filter(choice -> choice.name().equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow(() -> new BadRequestResponse("\"%s\" is none of %s."
                        .formatted(name, Arrays.toString(choices).toLowerCase(Locale.ROOT))));
    }

    /** A name for a file, made from a title: letters, digits and dashes only. */
    static String fileName(String title) {
        var name = new StringBuilder();
        for (char letter : title.toLowerCase(Locale.ROOT).toCharArray()) {
            boolean plain = letter < 128 && Character.isLetterOrDigit(letter);
            if (plain) {
                name.append(letter);
            } else if (name.length() > 0 && name.charAt(name.length() - 1) != '-') {
                name.append('-');
            }
        }
        String shortened = name.substring(0, Math.min(name.length(), 60));
        return shortened.isBlank()
                ? "case"
                : new String(shortened.getBytes(StandardCharsets.US_ASCII), StandardCharsets.US_ASCII);
    }
}
