package org.honorsdue.scanning;

import java.util.List;

/**
 * What became of one file.
 *
 * @param papers the papers recognised on its pages, in their order
 * @param notices what has to be said about the file and its pages, in order
 * @param stopped whether the watcher stopped it before the end
 */
public record Scan(List<ScannedPaper> papers, List<Notice> notices, boolean stopped) {
    public Scan {
        papers = List.copyOf(papers);
        notices = List.copyOf(notices);
    }
}
