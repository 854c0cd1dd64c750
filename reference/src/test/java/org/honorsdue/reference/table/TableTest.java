package org.honorsdue.reference.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Reading a table")
@DisplayNameGeneration(ReplaceUnderscores.class)
class TableTest {
    private static final List<String> COLUMNS = List.of("name", "first", "last");

    private final FaultList faults = new FaultList();

    @Test
    void skips_the_header_note_and_keeps_the_line_of_each_row() {
        var rows = read("# What is in it.\n# What is left out.\nname,first,last\nMay,1945-05-01,1945-05-31\n");
        assertThat(rows).containsExactly(new Located<>(4, "May 31"));
        faults.refuseIfAny();
    }

    @Test
    void counts_lines_right_where_a_quoted_cell_runs_over_several() {
        var rows = read("name,first,last\n\"May\nof 1945\",1945-05-01,1945-05-31\nJune,1945-06-01,1945-06-30\n");
        assertThat(rows).extracting(Located::line).containsExactly(2L, 4L);
    }

    @Test
    void goes_on_after_a_faulty_row_and_reports_every_cell_of_it() {
        var rows = read("name,first,last\n,31 May,31 June\nJune,1945-06-01,1945-06-30\n");
        assertThat(rows).containsExactly(new Located<>(3, "June 30"));
        assertThatThrownBy(faults::refuseIfAny)
                .isInstanceOf(TableFaults.class)
                .hasMessageStartingWith("3 faults in the tables")
                .hasMessageContainingAll("column name", "column first", "column last");
    }

    @Test
    void says_so_when_the_file_cannot_be_read() {
        Table.read(
                path -> {
                    throw new IOException("the disk is gone");
                },
                "history/months.csv",
                COLUMNS,
                faults,
                TableTest::month);
        assertThatThrownBy(faults::refuseIfAny)
                .isInstanceOf(TableFaults.class)
                .hasMessageEndingWith("months.csv: The table cannot be read: the disk is gone. Check the file.");
    }

    @Test
    void turns_a_refusal_of_the_value_itself_into_a_fault() {
        Table.read(path -> text("name,first,last\nMay,1945-05-01,1945-05-31\n"), "months.csv", COLUMNS, faults, row -> {
            throw new IllegalArgumentException("May is too long.");
        });
        assertThatThrownBy(faults::refuseIfAny)
                .isInstanceOf(TableFaults.class)
                .hasMessageEndingWith("months.csv line 2: May is too long. Correct the row.");
    }

    private List<Located<String>> read(String table) {
        return Table.read(path -> text(table), "history/months.csv", COLUMNS, faults, TableTest::month);
    }

    private static Optional<InputStream> text(String table) {
        return Optional.of(new ByteArrayInputStream(table.getBytes(StandardCharsets.UTF_8)));
    }

    private static String month(Row row) {
        String name = row.text("name");
        var span = row.span("first", "last");
        return name.lines().findFirst().orElse("") + " " + span.days();
    }
}
