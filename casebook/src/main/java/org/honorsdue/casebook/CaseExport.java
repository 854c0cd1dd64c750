package org.honorsdue.casebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * A whole case as one plain file, so that it can be mailed, archived, or read by another program in fifty years.
 *
 * <p>The file is JSON: {@code format} "honors-due-case", {@code version} 1, {@code sha256}, {@code case}. The checksum
 * is over the UTF-8 bytes of {@code case} written without white space, keys in the order of the file. Inside: the
 * present state, every earlier one under {@code history}, pictures in base64 with a checksum each, letters. Instants
 * are ISO 8601 in UTC, dates {@code yyyy-MM-dd}. A state whose display nobody laid out has no key {@code display}. Version
 * 1 stays readable for ever.
 */
public record CaseExport(KeptCase kept, List<Revision> history, List<Picture> pictures, List<Letter> letters) {
    private static final String FORMAT = "honors-due-case";
    private static final int VERSION = 1;
    private static final ObjectMapper JSON = new ObjectMapper();

    public CaseExport {
        history = List.copyOf(history);
        pictures = List.copyOf(pictures);
        letters = List.copyOf(letters);
    }

    /** An attachment with its bytes, which are exactly those handed in. */
    @SuppressWarnings("ArrayRecordComponent") // compared nowhere; written and read once
    public record Picture(Attachment attachment, byte[] content) {}

    /** The file is not whole, and why. */
    public static final class Damaged extends Exception {
        private static final long serialVersionUID = 1L;

        Damaged(String why) {
            super("This file cannot be brought in: " + why + " Nothing was kept of it.");
        }
    }

    static String write(CaseExport export) {
        var body = JSON.createObjectNode();
        body.put("title", export.kept.content().title());
        body.put("stage", export.kept.content().stage().words());
        body.put("casefile", export.kept.content().casefile());
        body.put("notes", export.kept.content().notes());
        display(export.kept.content(), body);
        var history = body.putArray("history");
        export.history.forEach(revision -> write(revision, history.addObject()));
        var pictures = body.putArray("attachments");
        export.pictures.forEach(picture -> write(picture, pictures.addObject()));
        var letters = body.putArray("letters");
        export.letters.forEach(letter -> write(letter, letters.addObject()));
        var file = JSON.createObjectNode();
        file.put("format", FORMAT);
        file.put("version", VERSION);
        file.put("sha256", checksum(body));
        file.set("case", body);
        return file.toPrettyString() + "\n";
    }

    private static void write(Revision revision, ObjectNode to) {
        to.put("revision", revision.number());
        to.put("made_at", revision.madeAt().toString());
        to.put("made_by", revision.madeBy());
        to.put("what", revision.what());
        to.put("title", revision.content().title());
        to.put("stage", revision.content().stage().words());
        to.put("casefile", revision.content().casefile());
        to.put("notes", revision.content().notes());
        display(revision.content(), to);
    }

    private static void display(CaseContent content, ObjectNode to) {
        if (!content.display().isEmpty()) {
            to.put("display", content.display());
        }
    }

    private static void write(Picture picture, ObjectNode to) {
        to.put("name", picture.attachment().name());
        to.put("media_type", picture.attachment().mediaType());
        to.put("attached_at", picture.attachment().attachedAt().toString());
        to.put("sha256", picture.attachment().sha256());
        to.put("content", Base64.getEncoder().encodeToString(picture.content()));
    }

    private static void write(Letter letter, ObjectNode to) {
        to.put("kind", letter.kind());
        to.put("made_at", letter.madeAt().toString());
        letter.sentOn().ifPresent(day -> to.put("sent_on", day.toString()));
        letter.answeredOn().ifPresent(day -> to.put("answered_on", day.toString()));
        to.put("body", letter.body());
    }

    static CaseExport read(String file) throws Damaged {
        var root = parse(file);
        if (!FORMAT.equals(root.path("format").asText())) {
            throw new Damaged("it is not a case exported by Honors Due.");
        }
        if (root.path("version").asInt() != VERSION) {
            throw new Damaged("it is of version %s, and this program reads version %d. Use a newer program."
                    .formatted(root.path("version").asText(), VERSION));
        }
        var body = root.path("case");
        if (!checksum(body).equals(root.path("sha256").asText())) {
            throw new Damaged(
                    "its checksum does not fit its content, so something in it was changed or lost on the way."
                            + " Ask for it again.");
        }
        try {
            return read(body);
        } catch (DateTimeException | IllegalArgumentException e) {
            throw new Damaged(e.getMessage() + ".");
        }
    }

    private static JsonNode parse(String file) throws Damaged {
        try {
            return JSON.readTree(file);
        } catch (JsonProcessingException e) {
            var at = e.getLocation();
            throw new Damaged("it breaks off or is not JSON at line %d, column %d."
                    .formatted(at == null ? 1 : at.getLineNr(), at == null ? 1 : at.getColumnNr()));
        }
    }

    private static CaseExport read(JsonNode body) throws Damaged {
        var history = new ArrayList<Revision>();
        for (var node : array(body, "history")) {
            history.add(new Revision(
                    node.path("revision").asInt(),
                    Instant.parse(text(node, "made_at")),
                    text(node, "made_by"),
                    text(node, "what"),
                    content(node)));
        }
        var pictures = new ArrayList<Picture>();
        for (var node : array(body, "attachments")) {
            pictures.add(picture(node));
        }
        var letters = new ArrayList<Letter>();
        for (var node : array(body, "letters")) {
            letters.add(new Letter(
                    "",
                    text(node, "kind"),
                    Instant.parse(text(node, "made_at")),
                    date(node, "sent_on"),
                    date(node, "answered_on"),
                    text(node, "body")));
        }
        var content = content(body);
        return new CaseExport(new KeptCase("", 0, Instant.EPOCH, false, content), history, pictures, letters);
    }

    private static Picture picture(JsonNode node) throws Damaged {
        byte[] content = Base64.getDecoder().decode(text(node, "content"));
        String name = text(node, "name");
        String sum = Casebook.sha256(content);
        if (!sum.equals(text(node, "sha256"))) {
            throw new Damaged("the picture \"%s\" does not fit its checksum.".formatted(name));
        }
        var attachment = new Attachment(
                "", name, text(node, "media_type"), sum, content.length, Instant.parse(text(node, "attached_at")));
        return new Picture(attachment, content);
    }

    private static CaseContent content(JsonNode node) throws Damaged {
        String stage = text(node, "stage");
        return new CaseContent(
                text(node, "title"),
                Stage.ofWords(stage).orElseThrow(() -> new Damaged("there is no stage \"" + stage + "\".")),
                text(node, "casefile"),
                text(node, "notes"),
                node.has("display") ? text(node, "display") : "");
    }

    private static JsonNode array(JsonNode node, String field) throws Damaged {
        var value = node.path(field);
        if (!(value instanceof ArrayNode)) {
            throw new Damaged("it has no list \"" + field + "\".");
        }
        return value;
    }

    private static String text(JsonNode node, String field) throws Damaged {
        var value = node.path(field);
        if (!value.isTextual()) {
            throw new Damaged("it has no \"" + field + "\" where one belongs.");
        }
        return value.asText();
    }

    private static Optional<LocalDate> date(JsonNode node, String field) {
        return node.has(field) ? Optional.of(LocalDate.parse(node.path(field).asText())) : Optional.empty();
    }

    private static String checksum(JsonNode body) {
        return Casebook.sha256(body.toString().getBytes(StandardCharsets.UTF_8));
    }
}
