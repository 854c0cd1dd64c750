package org.honorsdue.benchmarks;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import org.honorsdue.casebook.CaseContent;
import org.honorsdue.casebook.Casebook;
import org.honorsdue.casebook.SearchTerm;
import org.honorsdue.casebook.Stage;
import org.honorsdue.determination.LawExaminer;
import org.honorsdue.reference.Reference;
import org.honorsdue.workbench.Workbench;

/**
 * How long the reading room takes to open, and its pages with many cases; what memory it holds. Prints one line a figure.
 * Arguments: number of cases (10000 when absent). Tables are read within the time to the first page.
 */
public final class ReadingRoomTimes {
    private static final int ROUNDS = 21;

    private ReadingRoomTimes() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        int cases = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 10_000;
        Path data = Files.createTempDirectory("honors-times");
        fill(data, cases);
        long begun = System.nanoTime();
        var reference = Reference.published();
        try (var room = Workbench.open(0, data, reference, new LawExaminer(reference), Clock.systemDefaultZone())) {
            var client = HttpClient.newHttpClient();
            String home = "http://localhost:" + room.port();
            get(client, home + "/");
            System.out.printf("start to first page: %d ms (%,d cases)%n", millis(begun), cases);
            String folder = made(client, home);
            for (var page : List.of(
                    "/",
                    "/?words=soldier+217",
                    "/?words=999th&in=UNIT",
                    "/?from=5000",
                    "/law",
                    "/units?words=Co+C+331+Inf")) {
                time(client, home, page);
            }
            for (var leaf : List.of("", "/findings", "/line", "/rack", "/steps", "/letters", "/history")) {
                time(client, home, folder + leaf);
            }
            System.gc();
            var runtime = Runtime.getRuntime();
            System.out.printf(
                    "heap in use after a collection: %d MiB%n",
                    (runtime.totalMemory() - runtime.freeMemory()) / (1024 * 1024));
            Path status = Path.of("/proc/self/status");
            if (Files.isReadable(status)) {
                Files.readAllLines(status).stream()
                        .filter(line -> line.startsWith("VmRSS"))
                        .forEach(line -> System.out.println("resident: " + line.replaceAll("\\s+", " ")));
            }
        }
    }

    private static void fill(Path data, int cases) throws IOException {
        try (var casebook = Casebook.inFile(data.resolve("casebook.db"), Clock.systemDefaultZone())) {
            for (int i = 0; i < cases; i++) {
                String name = "Invented, Soldier %05d".formatted(i);
                String text = "soldier: { name: \"%s\" }%npapers:%n  - form: WD AGO 53-55%n".formatted(name)
                        + "    entries: { organization: \"Co %s 999th Inf\", separated: 6 Dec 45 }%n"
                                .formatted((char) ('A' + i % 12));
                casebook.create(
                        new CaseContent(name, Stage.values()[i % 5], text, ""),
                        List.of(
                                new SearchTerm(SearchTerm.Field.NAME, name),
                                new SearchTerm(
                                        SearchTerm.Field.UNIT, "Co %s 999th Inf".formatted((char) ('A' + i % 12))),
                                new SearchTerm(SearchTerm.Field.AWARD, "World War II Victory Medal"),
                                new SearchTerm(SearchTerm.Field.TEXT, "6 Dec 45")),
                        "benchmark");
            }
        }
    }

    /** Lays the tour's folders out and returns the first of them. */
    private static String made(HttpClient client, String home) throws IOException, InterruptedException {
        client.send(
                HttpRequest.newBuilder(URI.create(home + "/tour"))
                        .header("X-Honors-Client", "program")
                        .POST(HttpRequest.BodyPublishers.noBody())
                        .build(),
                HttpResponse.BodyHandlers.discarding());
        String list = get(client, home + "/?words=fairweather");
        int at = list.indexOf("/cases/");
        return list.substring(at, list.indexOf('"', at));
    }

    private static void time(HttpClient client, String home, String path) throws IOException, InterruptedException {
        var took = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            long begun = System.nanoTime();
            get(client, home + path);
            took[i] = (System.nanoTime() - begun) / 1e6;
        }
        Arrays.sort(took);
        String shown = path.replaceAll("/cases/[0-9a-f-]+", "folder");
        System.out.printf("%-34s median %.1f ms, slowest %.1f ms%n", shown, took[ROUNDS / 2], took[ROUNDS - 1]);
    }

    private static String get(HttpClient client, String address) throws IOException, InterruptedException {
        var answer =
                client.send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != 200) {
            throw new IllegalStateException(address + " answered " + answer.statusCode());
        }
        return answer.body();
    }

    private static long millis(long begun) {
        return (System.nanoTime() - begun) / 1_000_000;
    }
}
