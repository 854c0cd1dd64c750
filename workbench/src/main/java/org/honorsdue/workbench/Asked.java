package org.honorsdue.workbench;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a request asks for, checked. A blank parameter counts as absent. */
record Asked(Context request) {
    Optional<String> query(String name) {
        return Optional.ofNullable(request.queryParam(name)).filter(value -> !value.isBlank());
    }

    Optional<String> form(String name) {
        return Optional.ofNullable(request.formParam(name)).filter(value -> !value.isBlank());
    }

    String id() {
        return request.pathParam("id");
    }

    /** The revision the page started from. */
    int revision() {
        return Desk.revision(form("revision"));
    }

    /** A day in the address; that day's law is asked for. */
    LocalDate asOf(LocalDate today) {
        return query("as_of").map(Asked::day).orElse(today);
    }

    static LocalDate day(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException e) {
            throw new InputFault(
                    "\"%s\" is no day. Write year, month and day, as in 1945-11-11.".formatted(shortened(text)),
                    List.of());
        }
    }

    static int count(String digits) {
        if (!digits.matches("\\d{1,9}")) {
            throw new InputFault("\"%s\" is no whole number.".formatted(shortened(digits)), List.of());
        }
        return Integer.parseInt(digits);
    }

    static <E extends Enum<E>> E choice(E[] choices, String name) {
        return Arrays.stream(choices)
                .filter(choice -> choice.name().equalsIgnoreCase(name.replace('-', '_')))
                .findFirst()
                .orElseThrow(() -> new InputFault(
                        "\"%s\" is none of %s."
                                .formatted(
                                        shortened(name),
                                        Arrays.toString(choices).toLowerCase(Locale.ROOT)),
                        List.of()));
    }

    private static String shortened(String text) {
        return text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }

    /** Whether the page's script asks for a part of a page. */
    boolean fromScript() {
        return "true".equals(request.header("HX-Request"));
    }
}
