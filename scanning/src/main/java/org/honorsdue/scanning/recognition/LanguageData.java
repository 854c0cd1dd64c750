package org.honorsdue.scanning.recognition;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/** The English data that Tesseract reads with, put on this machine by {@code scanning/fetch-language-data}. */
public record LanguageData(Path folder) {
    /** The file within the folder. */
    public static final String FILE = "eng.traineddata";

    /** The file this build was measured with: the integer model of the package named in the script. */
    public static final String SHA_256 = "5dc5d8d640a212c9d6184921ba103b186f50e0fed9ee716c53e6b312b400d747";

    /** What to tell a user who has none. */
    public static final String HOW_TO_GET_IT =
            "The English reading data is not on this machine, so pictures cannot be read yet; typing the paper in works"
                    + " as ever. Run scanning/fetch-language-data once (it needs npm and a network), or set"
                    + " HONORS_LANGUAGE_DATA to a folder that holds " + FILE + ".";

    /** Where it is looked for: the folder in HONORS_LANGUAGE_DATA, then .honors here and above, then the user's home. */
    public static List<Path> places() {
        var places = new ArrayList<Path>();
        Optional.ofNullable(System.getenv("HONORS_LANGUAGE_DATA")).map(Path::of).ifPresent(places::add);
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            places.add(at.resolve(".honors").resolve("language-data"));
        }
        places.add(
                Path.of(System.getProperty("user.home", ".")).resolve(".honors").resolve("language-data"));
        return places;
    }

    /** The first place that has the file. */
    public static Optional<LanguageData> find() {
        return places().stream()
                .filter(folder -> Files.isRegularFile(folder.resolve(FILE)))
                .findFirst()
                .map(LanguageData::new);
    }

    /** Whether it is the very file that the figures in the documentation were measured with. */
    public boolean asMeasured() throws IOException {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of()
                    .formatHex(digest.digest(Files.readAllBytes(folder.resolve(FILE))))
                    .equals(SHA_256);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}
