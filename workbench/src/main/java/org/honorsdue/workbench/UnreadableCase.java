package org.honorsdue.workbench;

import java.util.List;
import org.honorsdue.reading.casefile.CasefileFault;

/** The text kept in a case is no casefile, so its leaves cannot be shown; the text itself can. */
final class UnreadableCase extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String caseId;
    private final transient List<CasefileFault> faults;

    UnreadableCase(String caseId, List<CasefileFault> faults) {
        super("The text of this case cannot be read as a casefile.");
        this.caseId = caseId;
        this.faults = List.copyOf(faults);
    }

    String caseId() {
        return caseId;
    }

    List<CasefileFault> faults() {
        return faults;
    }
}
