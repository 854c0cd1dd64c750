package org.honorsdue.reading.casefile;

/**
 * One thing wrong with a casefile: where, what, and what to do about it.
 *
 * @param line line of the file, from 1; 0 when the file as a whole is at fault
 * @param column column of the line, from 1; 0 when the file as a whole is at fault
 */
public record CasefileFault(int line, int column, String what, String remedy) {
    /** The message as a reader sees it, on one line: {@code line 4, column 7: ... Do this.} */
    public String text() {
        return line == 0 ? what + " " + remedy : "line %d, column %d: %s %s".formatted(line, column, what, remedy);
    }
}
