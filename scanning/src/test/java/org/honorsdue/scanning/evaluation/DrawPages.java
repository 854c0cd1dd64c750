package org.honorsdue.scanning.evaluation;

import java.nio.file.Path;

/** Draws pages to a folder, to be looked at: faces folder, output folder, first number, count. */
final class DrawPages {
    private DrawPages() {}

    public static void main(String[] args) throws Exception {
        var faces = TypeFace.in(Path.of(args[0]));
        var wears = Wear.values();
        int first = Integer.parseInt(args[2]);
        for (int i = first; i < first + Integer.parseInt(args[3]); i++) {
            var page = GeneratedPage.draw(i, faces.get(i % faces.size()), wears[i % wears.length]);
            System.out.println(page.save(Path.of(args[1])) + " " + page.truth());
        }
    }
}
