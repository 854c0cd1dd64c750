package org.honorsdue.documents.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class ColumnTest {
    @Test
    void a_word_longer_than_the_column_is_cut_where_the_column_ends() {
        assertThat(Column.wrap("a bbbbbbbbbbbb c", 8)).containsExactly("a", "bbbbbbbb", "bbbb c");
    }

    @Test
    void a_long_lead_takes_no_room_from_the_words() {
        var column = new Column(40).paragraph("a lead that is longer than half of the column ", "words");
        assertThat(column.toString().lines()).allMatch(line -> line.length() <= 40);
    }

    @Property
    void no_line_is_wider_and_no_character_is_lost(
            @ForAll @Size(min = 1, max = 20)
                    List<@AlphaChars @Chars({'-', '.'}) @StringLength(min = 1, max = 60) String> words,
            @ForAll @IntRange(min = 8, max = 100) int width) {
        String text = String.join(" ", words);
        var lines = Column.wrap(text, width);
        assertThat(lines).allMatch(line -> line.length() <= width);
        assertThat(String.join("", lines).replaceAll("\\s", "")).isEqualTo(text.replaceAll("\\s", ""));
    }
}
