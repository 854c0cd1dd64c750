package org.honorsdue.reading.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.honorsdue.reading.ReadAs;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;
import org.honorsdue.service.paper.Typed;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayName("A casefile handed in")
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CasefileFileTest {
    private static List<String> faults(byte[] file) {
        return CasefileFile.read(file, Reference.published())
                .answer(
                        accepted -> List.of(),
                        refused -> refused.faults().stream()
                                .map(CasefileFault::text)
                                .toList());
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void keeps_what_is_typed_letter_by_letter() {
        var paper = ReadAs.casefile("""
                        papers:
                          - form: WD AGO 53-55
                            entries:
                              decorations_and_citations: "  EAMET Rib  w/3 Br  Stars "
                              remarks: |
                                Lapel button issued.
                                ASR score (2 Sept 45) 60
                        """).papers().get(0);
        assertThat(paper.entry(Entry.DECORATIONS_AND_CITATIONS))
                .isEqualTo(new Typed.Text("  EAMET Rib  w/3 Br  Stars "));
        assertThat(paper.entry(Entry.REMARKS))
                .isEqualTo(new Typed.Text("Lapel button issued.\nASR score (2 Sept 45) 60\n"));
    }

    @Test
    void tells_blank_illegible_and_not_supplied_apart() {
        var paper = ReadAs.casefile("""
                        papers:
                          - form: WD AGO 53-55
                            entries:
                              wounds:
                              prior_service: ""
                              grade: null
                              remarks: [illegible]
                              reason: "[illegible]"
                        """).papers().get(0);
        assertThat(paper.entry(Entry.WOUNDS)).isEqualTo(new Typed.Blank());
        assertThat(paper.entry(Entry.PRIOR_SERVICE)).isEqualTo(new Typed.Blank());
        assertThat(paper.entry(Entry.GRADE)).isEqualTo(new Typed.Blank());
        assertThat(paper.entry(Entry.REMARKS)).isEqualTo(new Typed.Illegible());
        assertThat(paper.entry(Entry.REASON)).isEqualTo(new Typed.Illegible());
        assertThat(paper.entry(Entry.ARM)).isEqualTo(new Typed.NotSupplied());
    }

    @Test
    void takes_numbers_and_yes_as_text_when_they_are_typed_in_an_entry() {
        var paper = ReadAs.casefile("""
                        papers:
                          - form: WD AGO 53-55
                            entries: { mustering_out_pay: 300, dependents: 0, citizen: yes, continental_service: 1-6-17 }
                        """).papers().get(0);
        assertThat(paper.entry(Entry.MUSTERING_OUT_PAY)).isEqualTo(new Typed.Text("300"));
        assertThat(paper.entry(Entry.DEPENDENTS)).isEqualTo(new Typed.Text("0"));
        assertThat(paper.entry(Entry.CITIZEN)).isEqualTo(new Typed.Text("yes"));
        assertThat(paper.entry(Entry.CONTINENTAL_SERVICE)).isEqualTo(new Typed.Text("1-6-17"));
    }

    @Test
    void knows_the_same_entry_by_the_box_number_of_either_form() {
        var casefile = ReadAs.casefile("""
                papers:
                  - form: WD AGO Form 53-55
                    boxes: { "33": GCMdl, 3: Tec 5 }
                  - form: 53-98
                    boxes: { 29: BSM, "3": Capt }
                """);
        assertThat(casefile.papers().get(0).form()).isEqualTo(Form.ENLISTED_53_55);
        assertThat(casefile.papers().get(1).form()).isEqualTo(Form.OFFICER_53_98);
        assertThat(casefile.papers().get(0).entry(Entry.DECORATIONS_AND_CITATIONS))
                .isEqualTo(new Typed.Text("GCMdl"));
        assertThat(casefile.papers().get(1).entry(Entry.DECORATIONS_AND_CITATIONS))
                .isEqualTo(new Typed.Text("BSM"));
        assertThat(casefile.papers().get(1).entry(Entry.GRADE)).isEqualTo(new Typed.Text("Capt"));
    }

    @Test
    void takes_any_other_form_in_free_words() {
        var casefile = ReadAs.casefile("""
                papers:
                  - { form: Report of Death, entries: { grade: Pfc } }
                  - { form: "WD AGO 100, Separation Qualification Record", entries: { grade: Pfc } }
                """);
        assertThat(casefile.papers().get(0).form()).isEqualTo(Form.REPORT_OF_DEATH);
        assertThat(casefile.papers().get(1).form()).isEqualTo(Form.OTHER);
        assertThat(casefile.papers().get(1).formAsNamed()).isEqualTo("WD AGO 100, Separation Qualification Record");
    }

    @Test
    void takes_service_abroad_as_legs_or_as_the_raw_text() {
        var casefile = ReadAs.casefile("""
                papers:
                  - form: WD AGO 53-55
                    entries:
                      service_outside_us:
                        - { departed: 22 Aug 44, destination: ETO, arrived: 29 Aug 44 }
                        - { destination: USA, arrived: 9 Nov 45 }
                  - form: WD AGO 53-55
                    entries:
                      service_outside_us: 22 AUG 44 ETO 29 AUG 44
                """);
        assertThat(casefile.papers().get(0).legs()).hasSize(2);
        assertThat(casefile.papers().get(0).entry(Entry.SERVICE_OUTSIDE_US))
                .isEqualTo(new Typed.Text("22 Aug 44 ETO 29 Aug 44\nUSA 9 Nov 45"));
        assertThat(casefile.papers().get(1).legs()).isEmpty();
    }

    @Test
    void takes_every_kind_of_evidence_with_all_its_keys() {
        var evidence = ReadAs.casefile("""
                        evidence:
                          - { kind: order, award: silver-star, reference: "GO 40", date: 1944-12-03, heroism: true, source: family }
                          - { kind: unit-assignment, unit: "Btry B 391st AFA Bn", from: 1944-01-02, to: 1945-11-01 }
                          - { kind: station, place: Germany, from: 1945-05-09, to: 1945-09 }
                          - { kind: hospital-admission, cause: battle, date: 1944, diagnosis: "fragment wound, left arm" }
                          - { kind: captivity, from: 1944-12-19, to: 1945-04-29, place: Germany }
                          - { kind: unit-credit, unit: "391st AFA Bn", award: distinguished-unit-citation, reference: WD GO 12/45 }
                          - { kind: unit-credit, unit: "391st AFA Bn", award: Rhineland }
                          - { kind: assault, campaign: Normandy, means: amphibious, date: 1944-06-06 }
                          - { kind: conduct, character: excellent, efficiency: excellent, lost_days: 0, convictions: 0 }
                          - { kind: death, date: 1944-12-20, manner: killed-in-action }
                          - { kind: statement, by: family, says: "He told of the crossing." }
                        """).evidence();
        assertThat(evidence)
                .extracting(Evidence::kind)
                .containsExactly(
                        "order",
                        "unit-assignment",
                        "station",
                        "hospital-admission",
                        "captivity",
                        "unit-credit",
                        "unit-credit",
                        "assault",
                        "conduct",
                        "death",
                        "statement");
        assertThat(evidence.get(0).source()).contains("family");
        assertThat(((Evidence.UnitCredit) evidence.get(6)).award())
                .as("a campaign by its name")
                .isEqualTo("EA-RHI");
        assertThat(((Evidence.Assault) evidence.get(7)).campaign()).isEqualTo("EA-NOR");
        assertThat(((Evidence.Station) evidence.get(2)).to())
                .map(Object::toString)
                .isEqualTo(Optional.of("1945-09"));
    }

    @Test
    void may_be_json_indented_with_tabs() {
        var casefile = ReadAs.casefile(
                "{\n\t\"papers\": [\n\t\t{ \"form\": \"WD AGO 53-55\", \"entries\": { \"grade\": \"Tec 5\" } }\n\t]\n}");
        assertThat(casefile.papers().get(0).entry(Entry.GRADE)).isEqualTo(new Typed.Text("Tec 5"));
    }

    @Test
    void may_begin_with_a_byte_order_mark() {
        assertThat(faults(utf8("\uFEFFevidence: [{ kind: station, place: Germany }]")))
                .isEmpty();
    }

    @Test
    void that_is_a_photograph_is_sent_to_the_scanner() {
        assertThat(faults(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE0, 0, 16}))
                .containsExactly("This is a picture or a PDF, not a casefile."
                        + " Turn it into a casefile first, with the scan command.");
    }

    @Test
    void that_is_not_UTF_8_is_refused() {
        assertThat(faults(new byte[] {'p', 'a', 'p', (byte) 0xE9, 'r', 's', ':'}))
                .containsExactly("The file is not UTF-8 text. Save it as UTF-8.");
    }

    @Test
    void that_is_huge_is_refused_before_it_is_read() {
        assertThat(faults(new byte[CasefileFile.LARGEST + 1]))
                .containsExactly("The file is larger than 1000000 bytes."
                        + " One casefile holds one soldier; check what this file is.");
    }

    @Test
    void with_an_entry_longer_than_any_box_is_refused() {
        assertThat(faults(utf8("papers: [{ form: 53-55, entries: { remarks: \"" + "x".repeat(8001) + "\" } }]")))
                .containsExactly("line 1, column 45: An entry holds 8001 characters."
                        + " No box of the paper holds more than 8000; check what was pasted here.");
    }

    @Test
    void that_refers_to_itself_a_billion_times_is_refused_at_once() {
        var bomb = new StringBuilder("a: &a [x,x,x,x,x,x,x,x,x]\n");
        for (char c = 'b'; c <= 'i'; c++) {
            bomb.append("%c: &%c [*%c,*%c,*%c,*%c,*%c,*%c,*%c,*%c,*%c]%n"
                    .formatted(c, c, c - 1, c - 1, c - 1, c - 1, c - 1, c - 1, c - 1, c - 1, c - 1));
        }
        org.junit.jupiter.api.Assertions.assertTimeoutPreemptively(
                Duration.ofSeconds(20),
                () -> assertThat(faults(utf8(bomb.toString()))).isNotEmpty());
    }

    @Property(tries = 500)
    void any_bytes_at_all_are_answered(@ForAll @Size(max = 400) byte[] bytes) {
        assertThat(CasefileFile.read(bytes, Reference.published())).isNotNull();
    }

    @Property(tries = 500)
    void any_text_in_an_entry_comes_back_as_it_was(@ForAll @StringLength(min = 1, max = 60) String text) {
        String quoted = "'" + text.replace("'", "''") + "'";
        boolean printable = text.chars().allMatch(c -> c >= ' ' && c < 127);
        if (!printable || text.isBlank() || text.strip().equalsIgnoreCase("[illegible]")) {
            return;
        }
        var casefile = ReadAs.casefile("papers: [{ form: 53-55, entries: { remarks: " + quoted + " } }]");
        assertThat(casefile.papers().get(0).entry(Entry.REMARKS)).isEqualTo(new Typed.Text(text));
    }
}
