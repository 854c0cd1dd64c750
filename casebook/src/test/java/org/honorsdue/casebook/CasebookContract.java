package org.honorsdue.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a casebook promises, on whichever database it stands. */
abstract class CasebookContract {
    static final String WHO = "the researcher";

    abstract Casebook casebook();

    /** The clock the casebook reads. */
    abstract TickingClock clock();

    static CaseContent content(String title, String casefile) {
        return new CaseContent(title, Stage.READING, casefile, "");
    }

    static List<SearchTerm> named(String name) {
        return List.of(new SearchTerm(SearchTerm.Field.NAME, name));
    }

    @Test
    void a_case_is_kept_letter_by_letter() {
        String typed = "papers:\n  - entries: { grade: \"Tec 5 – \u00c5 'x' \\\" \" }\r\n\t";
        var kept = casebook().create(content("Fairweather, Orrin T", typed), List.of(), WHO);
        assertThat(casebook().open(kept.id()).content().casefile()).isEqualTo(typed);
    }

    @Test
    void a_save_moves_the_case_on_and_the_old_state_stays_in_the_history() {
        var first = casebook().create(content("A", "one"), List.of(), WHO);
        var second = casebook().save(first.id(), 1, content("A", "two"), List.of(), WHO, "grade");
        assertThat(second.revision()).isEqualTo(2);
        assertThat(casebook().history(first.id()))
                .extracting(revision -> revision.content().casefile())
                .containsExactly("two", "one");
    }

    @Test
    void the_second_of_two_savers_is_told_and_saves_nothing() {
        var kept = casebook().create(content("A", "one"), List.of(), WHO);
        casebook().save(kept.id(), 1, content("A", "first saver"), List.of(), WHO, "grade");
        assertThatThrownBy(() ->
                        casebook().save(kept.id(), 1, content("A", "second saver"), List.of(), "another", "grade"))
                .isInstanceOfSatisfying(
                        StaleRevision.class,
                        stale ->
                                assertThat(stale.current().content().casefile()).isEqualTo("first saver"));
        assertThat(casebook().open(kept.id()).content().casefile()).isEqualTo("first saver");
    }

    @Test
    void typing_in_one_entry_for_a_while_is_one_revision_and_after_two_minutes_another() {
        var kept = casebook().create(content("A", ""), List.of(), WHO);
        kept = casebook().save(kept.id(), 1, content("A", "E"), List.of(), WHO, "decorations");
        kept = casebook().save(kept.id(), 2, content("A", "EA"), List.of(), WHO, "decorations");
        kept = casebook().save(kept.id(), 3, content("A", "EAM"), List.of(), WHO, "decorations");
        assertThat(casebook().history(kept.id()))
                .extracting(revision -> revision.content().casefile())
                .containsExactly("EAM", "");
        clock().advance(Duration.ofMinutes(3));
        casebook().save(kept.id(), 4, content("A", "EAME"), List.of(), WHO, "decorations");
        assertThat(casebook().history(kept.id())).hasSize(3);
    }

    @Test
    void going_back_is_a_change_of_its_own_and_loses_nothing() {
        var kept = casebook().create(content("A", "one"), List.of(), WHO);
        casebook().save(kept.id(), 1, content("A", "two"), List.of(), WHO, "grade");
        var back = casebook().restore(kept.id(), 2, 1, List.of(), WHO);
        assertThat(back.content().casefile()).isEqualTo("one");
        assertThat(casebook().history(kept.id()))
                .extracting(Revision::what)
                .containsExactly("went back to revision 1", "grade", "case opened");
    }

    @Test
    void the_layout_of_the_display_is_part_of_every_state_and_of_the_handed_over_file() throws CaseExport.Damaged {
        var kept = casebook().create(content("A", "one"), List.of(), WHO);
        casebook().save(kept.id(), 1, kept.content().withDisplay("frame 11x14"), List.of(), WHO, "laid out");
        var copy = casebook().importCase(casebook().export(kept.id()), List.of(), WHO);
        assertThat(copy.content().display()).isEqualTo("frame 11x14");
        var back = casebook().restore(kept.id(), 2, 1, List.of(), WHO);
        assertThat(back.content().display()).isEmpty();
    }

    @Test
    void what_was_handed_in_is_never_written_over_and_what_the_program_keeps_beside_it_is_written_anew() {
        var kept = casebook().create(content("A", "one"), List.of(), WHO);
        var picture = casebook().attach(kept.id(), "paper.png", "image/png", new byte[] {1, 2});
        assertThatThrownBy(() -> casebook().rewrite(kept.id(), picture, new byte[] {3}))
                .isInstanceOf(IllegalArgumentException.class);
        var reading =
                casebook().attach(kept.id(), "reading", "application/vnd.honors-due.reading+json", new byte[] {4});
        casebook().rewrite(kept.id(), reading, new byte[] {5, 6});
        assertThat(casebook().attachmentContent(kept.id(), picture.id())).contains(new byte[] {1, 2});
        assertThat(casebook().attachmentContent(kept.id(), reading.id())).contains(new byte[] {5, 6});
        assertThat(casebook().attachments(kept.id()))
                .extracting(Attachment::bytes)
                .containsExactlyInAnyOrder(2, 2);
    }

    @Test
    void a_save_that_changes_nothing_makes_no_revision() {
        var kept = casebook().create(content("A", "one"), List.of(), WHO);
        assertThat(casebook()
                        .save(kept.id(), 1, content("A", "one"), List.of(), WHO, "grade")
                        .revision())
                .isEqualTo(1);
    }

    @Test
    void a_removed_case_is_off_the_list_and_comes_back_whole() {
        var kept = casebook().create(content("Removed man", "one"), named("Removed man"), WHO);
        casebook().setRemoved(kept.id(), true);
        assertThat(casebook().list(words("removed"))).isEmpty();
        casebook().setRemoved(kept.id(), false);
        assertThat(casebook().list(words("removed"))).hasSize(1);
    }

    @Test
    void every_word_must_be_found_and_signs_of_the_query_language_are_only_letters() {
        casebook().create(content("Quill", "x"), named("Quill, Abner 100% of_it!"), WHO);
        assertThat(casebook().list(words("quill abner"))).hasSize(1);
        assertThat(casebook().list(words("quill nobody"))).isEmpty();
        assertThat(casebook().list(words("100%"))).hasSize(1);
        assertThat(casebook().list(words("qu_ll"))).isEmpty();
        assertThat(casebook().list(words("it!"))).hasSize(1);
        assertThat(casebook().list(words("' or 1=1 --"))).isEmpty();
    }

    @Test
    void a_search_can_be_kept_to_one_field_and_one_stage() {
        casebook()
                .create(
                        content("Unit man", "x"),
                        List.of(
                                new SearchTerm(SearchTerm.Field.NAME, "Tarn, Hollis"),
                                new SearchTerm(SearchTerm.Field.UNIT, "999th Infantry")),
                        WHO);
        var inUnits = new CaseQuery("999th", Optional.of(SearchTerm.Field.UNIT), Optional.empty(), false, 0, 10);
        var inNames = new CaseQuery("999th", Optional.of(SearchTerm.Field.NAME), Optional.empty(), false, 0, 10);
        var framed = new CaseQuery("999th", Optional.empty(), Optional.of(Stage.FRAMED), false, 0, 10);
        assertThat(casebook().count(inUnits)).isEqualTo(1);
        assertThat(casebook().count(inNames)).isZero();
        assertThat(casebook().count(framed)).isZero();
    }

    @Test
    void a_picture_comes_back_byte_for_byte() {
        var kept = casebook().create(content("A", "one"), List.of(), WHO);
        byte[] picture = {0, 1, -1, 127, -128, 10, 13};
        var attached = casebook().attach(kept.id(), "front.png", "image/png", picture);
        assertThat(casebook().attachmentContent(kept.id(), attached.id())).hasValue(picture);
        casebook().removeAttachment(kept.id(), attached.id());
        assertThat(casebook().attachments(kept.id())).isEmpty();
    }

    @Test
    void letters_and_findings_stay_with_the_case() {
        var kept = casebook().create(content("A", "one"), List.of(), WHO);
        var letter = casebook().keepLetter(kept.id(), "records-request", "Dear Sir");
        casebook().markLetter(kept.id(), letter.id(), Optional.of(LocalDate.of(2026, 11, 25)), Optional.empty());
        assertThat(casebook().letters(kept.id()))
                .singleElement()
                .satisfies(found -> assertThat(found.sentOn()).hasValue(LocalDate.of(2026, 11, 25)));
        var examination = new Examination(1, LocalDate.of(2026, 11, 25), clock().instant(), "0.1.0", "{}");
        casebook().keepExamination(kept.id(), examination);
        casebook().keepExamination(kept.id(), examination);
        assertThat(casebook().lastExamination(kept.id())).hasValue(examination);
    }

    @Test
    void an_exported_case_comes_in_again_with_its_history_pictures_and_letters() throws Exception {
        var kept = casebook().create(content("Wend, Ada \u00e9\u201c", "one"), List.of(), WHO);
        casebook().save(kept.id(), 1, content("Wend, Ada \u00e9\u201c", "two"), List.of(), WHO, "grade");
        casebook().attach(kept.id(), "front.png", "image/png", new byte[] {1, 2, 3});
        casebook().keepLetter(kept.id(), "records-request", "Dear Sir");
        var copy = casebook().importCase(casebook().export(kept.id()), named("Wend"), "another");
        assertThat(copy.id()).isNotEqualTo(kept.id());
        assertThat(copy.content()).isEqualTo(casebook().open(kept.id()).content());
        assertThat(casebook().history(copy.id()))
                .extracting(Revision::what)
                .containsExactly("brought in from a file", "grade", "case opened");
        assertThat(casebook().attachments(copy.id())).hasSize(1);
        assertThat(casebook().letters(copy.id())).hasSize(1);
    }

    @Test
    void a_file_with_one_letter_changed_is_refused_and_says_why() {
        var kept = casebook().create(content("A", "Purple Heart"), List.of(), WHO);
        String damaged = casebook().export(kept.id()).replace("Purple Heart", "Purple Hearts");
        int before = casebook().count(CaseQuery.all());
        assertThatThrownBy(() -> casebook().importCase(damaged, List.of(), WHO))
                .isInstanceOf(CaseExport.Damaged.class)
                .hasMessage("This file cannot be brought in: its checksum does not fit its content, so something in it"
                        + " was changed or lost on the way. Ask for it again. Nothing was kept of it.");
        assertThat(casebook().count(CaseQuery.all())).isEqualTo(before);
    }

    @Test
    void a_file_that_breaks_off_is_refused_with_the_place() {
        var kept = casebook().create(content("A", "one"), List.of(), WHO);
        String whole = casebook().export(kept.id());
        assertThatThrownBy(() -> casebook().importCase(whole.substring(0, whole.length() / 2), List.of(), WHO))
                .isInstanceOf(CaseExport.Damaged.class)
                .hasMessageStartingWith("This file cannot be brought in: it breaks off or is not JSON at line ");
    }

    @Test
    void a_case_that_is_not_there_is_told_so() {
        assertThatThrownBy(() -> casebook().open("nothing"))
                .isInstanceOf(NoSuchCase.class)
                .hasMessage("There is no case \"nothing\" in this casebook. It may have been opened from an old link.");
    }

    @Test
    void a_million_letters_and_every_kind_of_character_are_kept() {
        String huge = "\u00e4\u4e2d\ud83d\ude00'\"\\%_".repeat(100_000);
        var kept = casebook().create(content("Huge", huge), List.of(), WHO);
        assertThat(casebook().open(kept.id()).content().casefile().getBytes(StandardCharsets.UTF_8))
                .isEqualTo(huge.getBytes(StandardCharsets.UTF_8));
    }

    static CaseQuery words(String words) {
        return new CaseQuery(words, Optional.empty(), Optional.empty(), false, 0, 10);
    }

    /** Time moves only when told, and by a millisecond at each look, so that two changes are never at one instant. */
    static final class TickingClock extends Clock {
        private Instant now = Instant.parse("2026-11-25T12:00:00Z");

        void advance(Duration by) {
            now = now.plus(by);
        }

        @Override
        public Instant instant() {
            now = now.plusMillis(1);
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }
}
