package org.honorsdue.cli;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.documents.findings.FindingsJson;
import org.honorsdue.reading.casefile.CasefileFile;
import org.honorsdue.service.Casefile;

/**
 * A run over a collection that can be stopped at any moment and taken up again. Results go to a file aside, with a mark
 * of how far it is whole; the mark is renamed into place after the results before it are on the disk. When all is done
 * the file aside takes its name.
 */
final class CollectionRun {
    private static final int PORTION = 500;
    private static final String CSV_HEADER = "input,award,standing,on_paper,count,devices\n";

    private final Examination examination;
    private final Path input;
    private final Path output;
    private final LocalDate day;
    private final Form form;

    CollectionRun(Examination examination, Path input, Path output, LocalDate day, Form form) {
        this.examination = examination;
        this.input = input;
        this.output = output;
        this.day = day;
        this.form = form;
    }

    /** What comes out. */
    enum Form {
        JSONL,
        CSV
    }

    /** How the run went, counting what an earlier, stopped run had done. */
    record Tally(long examined, long refused) {}

    /** One casefile of the collection: where it is from, and its text once read. */
    private record Item(String name, byte[] text) {}

    private record Result(String lines, String faults) {}

    /** How far the file aside is whole. */
    private record Mark(long items, long bytes, long faultBytes, long refused) {
        String text(String run) {
            return String.join("\n", run, "" + items, "" + bytes, "" + faultBytes, "" + refused, "");
        }
    }

    Path faultsFile() {
        return output.resolveSibling(output.getFileName() + ".faults");
    }

    private Path aside() {
        return output.resolveSibling(output.getFileName() + ".part");
    }

    private Path markFile() {
        return output.resolveSibling(output.getFileName() + ".mark");
    }

    /** @param watcher told how many are done and how many there are */
    Tally run(BiConsumer<Long, Long> watcher) throws IOException {
        Files.createDirectories(output.toAbsolutePath().getParent());
        var files = Files.isDirectory(input) ? folder() : List.<Path>of();
        long total = Files.isDirectory(input) ? files.size() : lines();
        String run = "%s %s %s %d".formatted(input.toAbsolutePath(), day, form, total);
        Mark mark = mark(run);
        long refused = mark.refused();
        try (var results = new RandomAccessFile(aside().toFile(), "rw");
                var faults = new RandomAccessFile(faultsFile().toFile(), "rw");
                Stream<Item> items = Files.isDirectory(input) ? items(files) : itemsOfLines()) {
            results.setLength(mark.bytes());
            faults.setLength(mark.faultBytes());
            results.seek(mark.bytes());
            faults.seek(mark.faultBytes());
            if (mark.items() == 0 && form == Form.CSV) {
                results.write(CSV_HEADER.getBytes(StandardCharsets.UTF_8));
            }
            var rest = items.skip(mark.items()).iterator();
            long done = mark.items();
            while (rest.hasNext()) {
                var portion = new ArrayList<Item>(PORTION);
                while (rest.hasNext() && portion.size() < PORTION) {
                    portion.add(rest.next());
                }
                for (var result : portion.parallelStream().map(this::examine).toList()) {
                    results.write(result.lines().getBytes(StandardCharsets.UTF_8));
                    faults.write(result.faults().getBytes(StandardCharsets.UTF_8));
                    refused += result.faults().isEmpty() ? 0 : 1;
                }
                results.getFD().sync();
                faults.getFD().sync();
                done += portion.size();
                OutputFile.write(
                        markFile(),
                        new Mark(done, results.getFilePointer(), faults.getFilePointer(), refused).text(run));
                watcher.accept(done, total);
            }
        }
        Files.move(aside(), output, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        Files.deleteIfExists(markFile());
        if (refused == 0) {
            Files.deleteIfExists(faultsFile());
        }
        return new Tally(total - refused, refused);
    }

    /** The mark of an earlier run over the same input, or a fresh one. */
    private Mark mark(String run) throws IOException {
        if (!Files.exists(markFile()) || !Files.exists(aside())) {
            return new Mark(0, 0, 0, 0);
        }
        var lines = Files.readAllLines(markFile());
        if (lines.size() < 5 || !lines.get(0).equals(run)) {
            throw new InputFault(("honors: %s belongs to another run (other input, date or format). Finish that one, or"
                            + " delete %s and %s to start anew.")
                    .formatted(markFile(), markFile(), aside()));
        }
        return new Mark(
                Long.parseLong(lines.get(1)),
                Long.parseLong(lines.get(2)),
                Long.parseLong(lines.get(3)),
                Long.parseLong(lines.get(4)));
    }

    private List<Path> folder() throws IOException {
        try (var listed = Files.walk(input)) {
            return listed.filter(Files::isRegularFile)
                    .filter(file -> file.toString().matches("(?i).*\\.(ya?ml|json)"))
                    .sorted()
                    .toList();
        }
    }

    private long lines() throws IOException {
        if (!Files.isRegularFile(input)) {
            throw new InputFault("honors: there is no file or folder " + input + ".");
        }
        try (var lines = Files.lines(input)) {
            return lines.filter(line -> !line.isBlank()).count();
        }
    }

    private Stream<Item> items(List<Path> files) {
        return files.stream().map(file -> {
            try {
                return new Item(input.relativize(file).toString(), Files.readAllBytes(file));
            } catch (IOException e) {
                throw new UncheckedIOException("A casefile of the collection cannot be read: " + file, e);
            }
        });
    }

    private Stream<Item> itemsOfLines() throws IOException {
        var number = new long[1];
        return Files.lines(input)
                .filter(line -> {
                    number[0]++;
                    return !line.isBlank();
                })
                .map(line -> new Item("line " + number[0], line.getBytes(StandardCharsets.UTF_8)));
    }

    private Result examine(Item item) {
        return CasefileFile.read(item.text(), examination.reference())
                .answer(accepted -> new Result(lines(item, accepted.casefile()), ""), refused -> {
                    var words = new StringBuilder();
                    refused.faults()
                            .forEach(fault -> words.append(item.name())
                                    .append(", ")
                                    .append(fault.text())
                                    .append('\n'));
                    return new Result("", words.toString());
                });
    }

    private String lines(Item item, Casefile casefile) {
        var findings = examination.examine(examination.read(casefile), day, Set.of());
        return switch (form) {
            case JSONL ->
                "{\"input\":" + quoted(item.name()) + ",\"result\":"
                        + new FindingsJson(examination.reference()).line(findings) + "}\n";
            case CSV -> csv(item.name(), findings);
        };
    }

    private static String csv(String name, Findings findings) {
        var rows = new StringWriter();
        try (var table = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(rows)) {
            for (var finding : findings.findings()) {
                var devices = finding.devices().stream()
                        .map(worn -> worn.device().id() + "=" + worn.count())
                        .toList();
                table.writeRecord(
                        name,
                        finding.award(),
                        finding.standing().id(),
                        finding.onPaper().id(),
                        Integer.toString(finding.count()),
                        String.join(" ", devices));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("A string cannot fail to be written to.", e);
        }
        return rows.toString();
    }

    private static String quoted(String text) {
        return '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
    }
}
