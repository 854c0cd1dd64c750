package org.honorsdue.documents.letter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.honorsdue.documents.Desk;
import org.honorsdue.documents.Output;
import org.honorsdue.documents.pdf.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is private stays at home unless the family asks for it. Serial numbers here are invented. */
class MaskingTest {
    @ParameterizedTest
    @CsvSource({
        "35000101, …101",
        "35 000 101, …101",
        "35-000-101, …101",
        "O-1 000 808, …808",
        "O-123456, …456",
        "A-000 404, …404",
        "ASN 35000101 Pvt, ASN …101 Pvt"
    })
    void a_serial_number_keeps_its_last_three_digits(String typed, String shown) {
        assertThat(Masking.SHARED.show(typed)).isEqualTo(shown);
        assertThat(Masking.PRIVATE.show(typed)).isEqualTo(typed);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1944-12-03",
                "GO 105 WD 1945",
                "GO 33 & 40 WD 45",
                "11 Nov 45",
                "22 Aug 44 ETO 29 Aug 44",
                "AR20160016517",
                "docket 9607853",
                "ABCMR 9508080",
                "NA 13075",
                "AR 615-365 15 Dec 44",
                "32 CFR 578.48(c)(1), 2006 revision",
                "3599th AAF Base Unit",
                "MOS 745",
                "1-6-21"
            })
    void dates_orders_and_dockets_are_no_serial_numbers(String text) {
        assertThat(Masking.SHARED.show(text)).isEqualTo(text);
    }

    private static String casefile(String serial, String spaced, String street, String race) {
        return """
                soldier: { name: "Fallowfield, Ira N", sex: male }
                papers:
                  - form: WD AGO 53-55
                    entries:
                      name: FALLOWFIELD IRA N
                      serial_number: "%s"
                      grade: Pfc
                      arm: Inf
                      organization: Co A 999th Inf
                      separated: 11 Nov 45
                      permanent_address: "%s"
                      home_address: "%s"
                      employment_address: "%s"
                      race: "%s"
                      thumb_print: "%s"
                      insurance: "%s"
                      entered_active_service: 3 Feb 43
                      battles_and_campaigns: Rhineland
                      decorations_and_citations: "EAMET Rib w/1 Br Star %s"
                      remarks: "Serial %s of %s"
                evidence:
                  - { kind: order, award: silver-star, reference: "GO 4 naming %s", source: "letter to %s" }
                  - { kind: statement, by: family, says: "his number was %s" }
                """.formatted(
                serial, street, street, street, race, race, race, serial, spaced, street, spaced, street, serial);
    }

    @Property(tries = 25)
    void neither_number_nor_address_nor_race_leaves_the_desk(
            @ForAll @IntRange(min = 10_000_000, max = 49_999_999) int number,
            @ForAll @IntRange(min = 1, max = 9999) int house,
            @ForAll @AlphaChars @StringLength(min = 6, max = 14) String street,
            @ForAll @CharRange(from = 'a', to = 'z') @StringLength(min = 8, max = 12) String race) {
        String serial = Integer.toString(number);
        String spaced = serial.substring(0, 2) + " " + serial.substring(2, 5) + " " + serial.substring(5);
        String address = house + " Zz" + street + " Rd Anytown";
        String secretRace = "qx" + race;
        var dossier = Desk.dossier(Desk.casefile(casefile(serial, spaced, address, secretRace)));
        for (var page : Correspondence.all(dossier)) {
            for (var output : List.of(Output.TEXT, Output.HTML)) {
                String words = new String(output.of(page, Sheet.LETTER), java.nio.charset.StandardCharsets.UTF_8);
                String flat = words.replaceAll("\\s+", " ");
                assertThat(flat)
                        .as(page.name())
                        .doesNotContain(serial)
                        .doesNotContain(spaced)
                        .doesNotContain("Zz" + street)
                        .doesNotContain(secretRace);
            }
        }
    }

    @Test
    void the_private_version_shows_what_the_shared_one_withholds() {
        var dossier = Desk.dossier(Desk.casefile(casefile("35000101", "35 000 101", "12 Sample Rd Anytown", "qxrace")));
        var shared = all(dossier);
        var open = all(dossier.masked(Masking.PRIVATE));
        for (String secret : Set.of("35000101", "12 Sample Rd Anytown", "qxrace")) {
            assertThat(open).contains(secret);
            assertThat(shared).doesNotContain(secret);
        }
        assertThat(shared).contains("ends in 101");
    }

    private static String all(Dossier dossier) {
        var words = new StringBuilder();
        Correspondence.all(dossier)
                .forEach(page -> words.append(
                        new String(Output.TEXT.of(page, Sheet.LETTER), java.nio.charset.StandardCharsets.UTF_8)));
        return words.toString().replaceAll("\\s+", " ");
    }
}
