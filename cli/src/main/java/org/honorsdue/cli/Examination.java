package org.honorsdue.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.determination.LawExaminer;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.reading.CasefileReader;
import org.honorsdue.reading.casefile.CasefileFile;
import org.honorsdue.reading.unit.UnitReader;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Tour;

/** From a file to findings: what nearly every command does first. */
final class Examination {
    private final Reference reference = Reference.published();
    private final CasefileReader reader = new CasefileReader(reference, UnitReader.published());
    private final LawExaminer examiner = new LawExaminer(reference);

    Reference reference() {
        return reference;
    }

    LawExaminer examiner() {
        return examiner;
    }

    CasefileReader reader() {
        return reader;
    }

    /** @throws InputFault with every fault of the file, or when it cannot be opened */
    Casefile open(Path file) {
        byte[] bytes;
        try {
            if (Files.isRegularFile(file) && Files.size(file) > CasefileFile.LARGEST) {
                throw new InputFault("%s: the file is larger than any casefile (%d bytes at most). Is it a picture?"
                        .formatted(file, CasefileFile.LARGEST));
            }
            bytes = Files.readAllBytes(file);
        } catch (IOException e) {
            throw new InputFault("%s: cannot be read (%s). Check the name and whether you may open it."
                    .formatted(file, Files.exists(file) ? e.getMessage() : "there is no such file"));
        }
        return CasefileFile.read(bytes, reference).answer(accepted -> accepted.casefile(), refused -> {
            var words = new StringBuilder();
            for (var fault : refused.faults()) {
                words.append(file).append(", ").append(fault.text()).append('\n');
            }
            throw new InputFault(words.toString().stripTrailing());
        });
    }

    ServiceFacts read(Casefile casefile) {
        return reader.read(casefile);
    }

    Findings examine(ServiceFacts facts, LocalDate asOf, Set<String> asked) {
        return examiner.examine(facts, asOf, asked);
    }

    /** The last day of separation that any paper gives. */
    static Optional<LocalDate> separation(ServiceFacts facts) {
        return facts.every(Tour.class).stream()
                .flatMap(tour -> tour.separated().stream())
                .map(PartialDate::latest)
                .max(LocalDate::compareTo);
    }
}
