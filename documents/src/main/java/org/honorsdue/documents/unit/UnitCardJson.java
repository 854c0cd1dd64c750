package org.honorsdue.documents.unit;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.honorsdue.reading.unit.OrganizationReading;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.unit.Held;
import org.honorsdue.reference.unit.Unit;
import org.honorsdue.reference.unit.UnitAward;
import org.honorsdue.reference.unit.UnitCard;

/** A unit's card as one JSON object; the same unit gives the same bytes. */
public final class UnitCardJson {
    private static final JsonFactory FACTORY = new JsonFactory();

    private UnitCardJson() {}

    /** @param card of the unit found; empty when none surely is */
    public static String write(OrganizationReading reading, Optional<UnitCard> card) {
        var text = new StringWriter(4096);
        try (var json = FACTORY.createGenerator(text).useDefaultPrettyPrinter()) {
            json.writeStartObject();
            json.writeStringField("typed", reading.typed());
            json.writeStringField("outcome", id(reading.outcome()));
            json.writeStringField("meaning", reading.meaning());
            json.writeStringField("certainty", id(reading.certainty()));
            strings("units", reading.ids(), json);
            strings("candidates", reading.candidates().stream().map(Unit::name).toList(), json);
            json.writeArrayFieldStart("nearest");
            for (var near : reading.nearest()) {
                json.writeStartObject();
                json.writeStringField("name", near.unit().name());
                json.writeStringField("difference", near.difference());
                json.writeEndObject();
            }
            json.writeEndArray();
            strings("notes", reading.notes(), json);
            strings("unread", reading.unread(), json);
            if (card.isPresent()) {
                json.writeObjectFieldStart("card");
                card(card.get(), json);
                json.writeEndObject();
            }
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException("A string cannot fail to be written to.", e);
        }
        return text.append('\n').toString();
    }

    private static void card(UnitCard card, JsonGenerator json) throws IOException {
        json.writeStringField("id", card.unit().id());
        json.writeStringField("name", card.unit().name());
        json.writeStringField("nickname", card.unit().nickname());
        json.writeStringField("part", card.part());
        provenance(card.unit().provenance(), json);
        json.writeArrayFieldStart("parents");
        for (var parent : card.parents()) {
            json.writeStartObject();
            json.writeStringField("id", parent.parent());
            json.writeStringField("relation", id(parent.relation()));
            json.writeStringField("when", parent.when().text());
            provenance(parent.provenance(), json);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("campaigns");
        for (var held : card.campaigns()) {
            var campaign = held.row().campaign();
            json.writeStartObject();
            json.writeStringField("id", campaign.id());
            json.writeStringField("name", campaign.name());
            json.writeStringField("ground_first", campaign.ground().first().toString());
            json.writeStringField("ground_last", campaign.ground().last().toString());
            json.writeStringField("air_first", campaign.air().first().toString());
            json.writeStringField("air_last", campaign.air().last().toString());
            held(held, json);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("assaults");
        for (var held : card.assaults()) {
            json.writeStartObject();
            json.writeStringField("campaign", held.row().campaign());
            json.writeStringField("place", held.row().place());
            json.writeStringField("when", held.row().when().text());
            json.writeStringField("means", id(held.row().means()));
            json.writeStringField("credit", id(held.row().reach()));
            held(held, json);
            json.writeEndObject();
        }
        json.writeEndArray();
        awards("citations", card.citations(), json);
        awards("foreign_awards", card.foreignAwards(), json);
        json.writeArrayFieldStart("whereabouts");
        for (var held : card.whereabouts()) {
            json.writeStartObject();
            json.writeStringField("place", held.row().place());
            json.writeStringField("when", held.row().when().text());
            json.writeStringField("area", id(held.row().area()));
            held(held, json);
            json.writeEndObject();
        }
        json.writeEndArray();
        if (card.patch().isPresent()) {
            var patch = card.patch().get();
            json.writeObjectFieldStart("patch");
            json.writeStringField("shape", patch.row().shape());
            json.writeStringField("description", patch.row().description());
            json.writeStringField("approved", patch.row().approved());
            held(patch, json);
            json.writeEndObject();
        }
        strings("same_number", card.sameNumber().stream().map(Unit::name).toList(), json);
    }

    private static void awards(String field, List<Held<UnitAward>> awards, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(field);
        for (var held : awards) {
            var award = held.row();
            json.writeStartObject();
            json.writeStringField("award", award.award().id());
            json.writeStringField("name", award.award().title());
            json.writeStringField("action", award.action());
            json.writeStringField("when", award.when().text());
            json.writeStringField("order", award.order());
            held(held, json);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void held(Held<?> held, JsonGenerator json) throws IOException {
        json.writeStringField("held_by", held.holder().name());
        json.writeStringField("reach", id(held.reach()));
        json.writeStringField("grade", grade(held.grade()));
        strings(
                "sources",
                held.restsOn().stream().map(Provenance::source).distinct().toList(),
                json);
    }

    private static void provenance(Provenance provenance, JsonGenerator json) throws IOException {
        json.writeStringField("source", provenance.source());
        json.writeStringField("grade", grade(provenance.grade()));
    }

    private static String grade(Grade grade) {
        return grade.name().toLowerCase(Locale.ROOT);
    }

    private static String id(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static void strings(String field, List<String> values, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(field);
        for (var value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }
}
