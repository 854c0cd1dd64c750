package org.honorsdue.reference.paper;

import java.util.List;
import org.honorsdue.reference.paper.MilitarySpecialty.Leaning;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code paper/specialties.csv}: one row a specification serial number. */
public final class SpecialtyTable {
    /** File name, as faults name it. */
    public static final String NAME = "specialties.csv";

    private static final List<String> COLUMNS = List.of(
            "number",
            "title",
            "infantry",
            "medical_unit",
            "medical_department",
            "airborne",
            "aircrew",
            "safe_to_decode",
            "note",
            "source",
            "grade");

    private SpecialtyTable() {}

    /** Reads the table; faults are noted, faulty rows left out. */
    public static List<Located<MilitarySpecialty>> read(TableSource source, FaultList faults) {
        return Table.read(source, "paper/" + NAME, COLUMNS, faults, SpecialtyTable::specialty);
    }

    private static MilitarySpecialty specialty(Row row) {
        return new MilitarySpecialty(
                row.text("number"),
                row.text("title"),
                row.choice("infantry", Leaning.class),
                row.choice("medical_unit", Leaning.class),
                row.choice("medical_department", Leaning.class),
                row.choice("airborne", Leaning.class),
                row.choice("aircrew", Leaning.class),
                row.flag("safe_to_decode"),
                row.textOrEmpty("note"),
                row.provenance());
    }
}
