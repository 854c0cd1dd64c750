package org.honorsdue.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.honorsdue.reference.history.Place;

class PlaceNameTest {
    private final Reference reference = Reference.published();

    @Property
    void a_name_made_plain_once_stays_as_it_is(@ForAll String name) {
        String plain = LoadedTables.plain(name);
        assertThat(LoadedTables.plain(plain)).isEqualTo(plain);
    }

    @Property
    void every_name_and_alias_leads_to_its_place_in_any_letter_case_with_stops_and_blanks(
            @ForAll("places") Place place, @ForAll boolean lower, @ForAll boolean stop) {
        for (String name :
                Stream.concat(Stream.of(place.name()), place.aliases().stream()).toList()) {
            String typed = lower ? name.toLowerCase(Locale.ROOT) : name.toUpperCase(Locale.ROOT);
            typed = stop ? "  " + typed.replace(" ", ". ") + "." : typed;
            assertThat(reference.place(typed)).as(typed).contains(place);
        }
    }

    @Provide
    Arbitrary<Place> places() {
        return Arbitraries.of(reference.places());
    }
}
