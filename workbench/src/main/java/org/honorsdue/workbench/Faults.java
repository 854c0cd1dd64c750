package org.honorsdue.workbench;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.honorsdue.casebook.NoSuchCase;
import org.honorsdue.casebook.StaleRevision;
import org.honorsdue.reading.casefile.CasefileFault;

/** What is said when something cannot be done: to a person a page in the look of the room, to a program JSON. */
final class Faults {
    private final Pages pages;

    Faults(Pages pages) {
        this.pages = pages;
    }

    void install(JavalinConfig config) {
        config.routes.exception(
                InputFault.class,
                (fault, request) ->
                        answer(request, HttpStatus.UNPROCESSABLE_CONTENT, "Not taken", said(fault), fault.faults()));
        config.routes.exception(
                NoSuchCase.class,
                (fault, request) -> answer(request, HttpStatus.NOT_FOUND, "No such case", said(fault), List.of()));
        config.routes.exception(
                StaleRevision.class,
                (fault, request) -> answer(request, HttpStatus.CONFLICT, "Changed elsewhere", said(fault), List.of()));
        config.routes.exception(UnreadableCase.class, (fault, request) -> {
            if (forProgram(request)) {
                answer(request, HttpStatus.UNPROCESSABLE_CONTENT, "Not a casefile", said(fault), fault.faults());
            } else {
                request.redirect("/cases/" + fault.caseId() + "/text", HttpStatus.SEE_OTHER);
            }
        });
        config.routes.exception(
                HttpResponseException.class,
                (fault, request) -> answer(
                        request,
                        HttpStatus.forStatus(fault.getStatus()),
                        heading(fault.getStatus()),
                        said(fault),
                        List.of()));
        config.routes.exception(Exception.class, (fault, request) -> {
            if (tooLarge(fault)) {
                answer(
                        request,
                        HttpStatus.CONTENT_TOO_LARGE,
                        "Too large",
                        "More than 64 megabytes came at once. Save the picture smaller, or bring the files one by one.",
                        List.of());
                return;
            }
            // Not the reader's mistake but ours; what happened goes to the terminal the room was opened from.
            System.err.println("honors serve: " + request.method() + " " + request.path() + " failed");
            fault.printStackTrace(System.err);
            answer(
                    request,
                    HttpStatus.INTERNAL_SERVER_ERROR,
                    "A fault of the program",
                    "This is not your mistake. Nothing that was saved is lost. The terminal tells more ("
                            + fault.getClass().getSimpleName() + ").",
                    List.of());
        });
        config.routes.error(404, request -> {
            if (request.result() == null || request.result().isEmpty() || "Not Found".equals(request.result())) {
                answer(
                        request,
                        HttpStatus.NOT_FOUND,
                        "No such page",
                        "There is nothing at this address. It may come from an old link.",
                        List.of());
            }
        });
    }

    private static boolean tooLarge(Throwable fault) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            String message = String.valueOf(cause.getMessage());
            if (message.contains("max length exceeded")
                    || message.contains("exceeds")
                    || message.contains("too large")) {
                return true;
            }
        }
        return false;
    }

    private static String said(Throwable fault) {
        String message = fault.getMessage();
        return message == null ? "It could not be done." : message;
    }

    private static String heading(int status) {
        return switch (status) {
            case 403 -> "Not from here";
            case 404 -> "No such page";
            case 413 -> "Too large";
            default -> "Not done";
        };
    }

    private static boolean forProgram(Context request) {
        String accepts = request.header("Accept");
        return request.path().startsWith("/api/") || (accepts != null && accepts.startsWith("application/json"));
    }

    private void answer(Context request, HttpStatus status, String heading, String says, List<CasefileFault> faults) {
        request.status(status);
        if (forProgram(request)) {
            var listed = new ArrayList<Map<String, Object>>();
            for (var fault : faults) {
                listed.add(Map.of(
                        "line",
                        fault.line(),
                        "column",
                        fault.column(),
                        "what",
                        fault.what(),
                        "remedy",
                        fault.remedy()));
            }
            request.json(Map.of("says", says, "faults", listed));
        } else {
            pages.show(
                    request,
                    "error.jte",
                    Map.of(
                            "heading",
                            heading,
                            "says",
                            says,
                            "faults",
                            faults,
                            "back",
                            FolderPages.backTo(request, "/")));
        }
    }
}
