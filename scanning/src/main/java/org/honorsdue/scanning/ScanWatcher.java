package org.honorsdue.scanning;

/** Told how far a scan has come, and asked whether to go on. Called on the thread that scans. */
public interface ScanWatcher {
    ScanWatcher SILENT = (page, pages, share) -> true;

    /**
     * @param page the page being read, from 1
     * @param share how much of it is done, 0 to 1
     * @return whether to go on; after {@code false} what was read so far is handed back
     */
    boolean goOn(int page, int pages, double share);
}
