package org.honorsdue.documents.findings;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.determination.finding.FactWanted;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Ground;
import org.honorsdue.determination.finding.Need;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.finding.WornDevice;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.paper.ProofDocument;
import org.honorsdue.service.fact.Conflict;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.Unread;
import org.honorsdue.service.paper.Entry;

/**
 * Findings as one JSON object, the form other people's scripts depend on. The same findings always give the same bytes:
 * keys stand in a fixed order, sets are sorted, lines end in a line feed.
 */
public final class FindingsJson {
    /** Said once on everything that leaves the program. */
    public static final String ADVICE = "This is advice. Only the Army and the National Archives decide what a soldier"
            + " was authorized; the law on wearing, buying and claiming decorations applies as it stands.";

    private static final JsonFactory FACTORY = new JsonFactory();

    private final Reference reference;

    public FindingsJson(Reference reference) {
        this.reference = reference;
    }

    /** The whole object, indented, with a line feed at its end. */
    public String write(Findings findings) {
        var text = new StringWriter(8192);
        try (var json = indented(text)) {
            write(findings, json);
        } catch (IOException e) {
            throw new UncheckedIOException("A string cannot fail to be written to.", e);
        }
        return text.append('\n').toString();
    }

    /** The object on one line without a line feed, for files with one object to a line. */
    public String line(Findings findings) {
        var text = new StringWriter(8192);
        try (var json = FACTORY.createGenerator(text)) {
            write(findings, json);
        } catch (IOException e) {
            throw new UncheckedIOException("A string cannot fail to be written to.", e);
        }
        return text.toString();
    }

    /** Writes the object where the generator stands, so that it can be part of a larger one. */
    public void write(Findings findings, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("as_of", findings.asOf().toString());
        json.writeStringField("advice", ADVICE);
        json.writeArrayFieldStart("findings");
        for (var finding : findings.findings()) {
            finding(finding, json);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("crosschecks");
        for (var check : findings.crosschecks()) {
            crosscheck(check, json);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("conflicts");
        for (var conflict : findings.conflicts()) {
            conflict(conflict, json);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("unread");
        for (var unread : findings.unread()) {
            unread(unread, json);
        }
        json.writeEndArray();
        documents(findings, json);
        json.writeObjectFieldStart("summary");
        json.writeNumberField("on_paper", findings.onPaper());
        for (var standing : Standing.values()) {
            json.writeNumberField(standing.id().replace('-', '_'), findings.count(standing));
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private static JsonGenerator indented(Writer text) throws IOException {
        var lines = new DefaultIndenter("  ", "\n");
        var printer = new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
        return FACTORY.createGenerator(text).setPrettyPrinter(printer);
    }

    private static void finding(Finding finding, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("award", finding.award());
        json.writeStringField("name", finding.name());
        json.writeStringField("standing", finding.standing().id());
        json.writeStringField("on_paper", finding.onPaper().id());
        json.writeNumberField("count", finding.count());
        json.writeArrayFieldStart("devices");
        for (var device : finding.devices()) {
            device(device, json);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("grounds");
        for (var ground : finding.grounds()) {
            ground(ground, json);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("needs");
        for (var need : finding.needs()) {
            need(need, json);
        }
        json.writeEndArray();
        strings("cautions", finding.cautions(), json);
        json.writeStringField("why_not_on_paper", finding.whyNotOnPaper());
        json.writeEndObject();
    }

    private static void device(WornDevice device, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("device", device.device().id());
        json.writeNumberField("count", device.count());
        strings("for", device.standsFor(), json);
        json.writeEndObject();
    }

    private static void ground(Ground ground, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", ground.clause());
        json.writeStringField("clause", ground.says());
        json.writeStringField("authority", ground.authority().text());
        json.writeStringField("grade", ground.authority().grade().name().toLowerCase(Locale.ROOT));
        json.writeStringField("verdict", ground.verdict().id());
        origins("evidence", ground.evidence(), json);
        json.writeEndObject();
    }

    private static void need(Need need, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("question", need.question());
        json.writeArrayFieldStart("wanted");
        var wanted = need.wanted().stream()
                .sorted(Comparator.comparing(FactWanted::kind).thenComparing(FactWanted::about))
                .toList();
        for (var fact : wanted) {
            json.writeStartObject();
            json.writeStringField("kind", fact.kind());
            json.writeStringField("about", fact.about());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("settled_by");
        for (var set : need.settledBy()) {
            json.writeStartArray();
            for (var document : new TreeSet<>(set)) {
                json.writeString(document);
            }
            json.writeEndArray();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void crosscheck(Crosscheck check, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("check", check.check());
        json.writeStringField("outcome", check.outcome().id());
        json.writeStringField("says", check.says());
        strings("entries", check.entries().stream().map(Entry::key).toList(), json);
        strings("awards", new TreeSet<>(check.awards()), json);
        origins("evidence", check.origins(), json);
        json.writeStringField("rule", check.rule().source());
        json.writeStringField("grade", check.rule().grade().name().toLowerCase(Locale.ROOT));
        json.writeEndObject();
    }

    private static void conflict(Conflict conflict, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("says", conflict.says());
        origins("evidence", conflict.origins(), json);
        json.writeEndObject();
    }

    private static void unread(Unread unread, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeNumberField("paper", unread.paper());
        json.writeStringField("entry", unread.entry().key());
        json.writeStringField("text", unread.text());
        json.writeEndObject();
    }

    private static void origins(String field, List<Origin> origins, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(field);
        for (var origin : origins) {
            json.writeStartObject();
            if (origin instanceof Origin.OnPaper typed) {
                json.writeNumberField("paper", typed.paper());
                json.writeStringField("entry", typed.entry().key());
                json.writeNumberField("start", typed.start());
                json.writeNumberField("end", typed.end());
            } else if (origin instanceof Origin.InEvidence item) {
                json.writeNumberField("evidence", item.item());
                json.writeStringField("kind", item.kind());
                if (item.source().isPresent()) {
                    json.writeStringField("source", item.source().get());
                }
            } else {
                json.writeStringField("stated", "soldier");
            }
            json.writeStringField("text", origin.text());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** The documents that the needs name, described once. */
    private void documents(Findings findings, JsonGenerator json) throws IOException {
        Set<String> named = new TreeSet<>();
        findings.findings()
                .forEach(finding ->
                        finding.needs().forEach(need -> need.settledBy().forEach(named::addAll)));
        json.writeArrayFieldStart("documents");
        for (var document : reference.documents()) {
            if (named.contains(document.id())) {
                document(document, json);
            }
        }
        json.writeEndArray();
    }

    private static void document(ProofDocument document, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("document", document.id());
        json.writeStringField("name", document.name());
        json.writeStringField("kept_by", document.keptBy());
        json.writeBooleanField("burned_in_1973", document.burned());
        json.writeStringField("cannot_prove", document.cannotProve());
        json.writeEndObject();
    }

    private static void strings(String field, Collection<String> values, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(field);
        for (var value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }
}
