package org.honorsdue.determination.law;

import java.util.Optional;
import java.util.Set;
import org.honorsdue.service.paper.Entry;

/**
 * Kinds of fact that a rule can miss. The ids are those of the table of proof documents, which says for each kind of
 * document what it proves.
 */
public enum FactKind {
    AWARD_ORDER("award-order", "an order gives him %s"),
    UNIT_PRESENCE("unit-presence", "he was with %s"),
    UNIT_CREDIT("unit-credit", "orders give the unit %s"),
    COMBAT_DUTY("combat-duty", "he was present for duty %s"),
    WOUND_BY_ENEMY("wound-by-enemy", "the enemy caused %s"),
    MEDICAL_TREATMENT("medical-treatment", "a medical officer treated %s and it was put on record"),
    CAPTIVITY("captivity", "he was a prisoner of the enemy %s"),
    CAPTIVITY_CONDUCT("captivity-conduct", "his conduct was honorable %s"),
    DEATH("death", "his death was %s"),
    OVERSEAS_DATES("overseas-dates", "he was overseas %s", Entry.SERVICE_OUTSIDE_US),
    STATION("station", "he was stationed %s"),
    SERVICE_DATES("service-dates", "he was on active service %s", Entry.ENTERED_ACTIVE_SERVICE, Entry.SEPARATED),
    CONTINENTAL_TIME(
            "continental-time",
            "he was inside the continental United States %s",
            Entry.SERVICE_OUTSIDE_US,
            Entry.SEPARATED),
    ORDERS_LENGTH("orders-length", "his orders to active duty ran %s"),
    COMPONENT("component", "he belonged to %s", Entry.COMPONENT, Entry.ARM),
    GRADE("grade", "he served as %s", Entry.GRADE),
    SPECIALTY("specialty", "his specialty was %s", Entry.MILITARY_SPECIALTY),
    CONDUCT("conduct", "he was rated %s", Entry.CHARACTER),
    COURT_MARTIAL("court-martial", "no court-martial convicted him %s"),
    LOST_TIME("lost-time", "he lost no days by misconduct %s", Entry.REMARKS),
    COMMENDATION("commendation", "there is %s"),
    ASSAULT("assault", "he took part in %s"),
    QUALIFICATION("qualification", "the record shows %s", Entry.QUALIFICATIONS),
    SCHOOL("school", "he completed %s", Entry.SERVICE_SCHOOLS),
    FOREIGN_AWARD("foreign-award", "a foreign decree or order gives %s"),
    FLIGHT("flight", "he flew %s"),
    /** The paper itself, read again where a reading was doubtful. */
    CLEAR_READING("clear-reading", "the paper really says %s");

    private final String id;
    private final String sentence;
    private final Set<Entry> entries;

    FactKind(String id, String sentence, Entry... entries) {
        this.id = id;
        this.sentence = sentence;
        this.entries = Set.of(entries);
    }

    public String id() {
        return id;
    }

    /** The fact as a clause that can follow "that". */
    public String sentence(String about) {
        return sentence.formatted(about);
    }

    /** The entries of a separation paper that show such a fact; empty when no entry does. */
    public Set<Entry> entries() {
        return entries;
    }

    public static Optional<FactKind> ofId(String id) {
        for (var kind : values()) {
            if (kind.id.equals(id)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
