package org.honorsdue.workbench;

import java.util.List;
import org.honorsdue.reading.casefile.CasefileFault;

/** What was handed in cannot be used. The message says what is wrong; each fault says where and what to do. */
final class InputFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<CasefileFault> faults;

    private final String says;

    InputFault(String says, List<CasefileFault> faults) {
        super(says);
        this.says = says;
        this.faults = List.copyOf(faults);
    }

    /** The message, which is always there. */
    String says() {
        return says;
    }

    List<CasefileFault> faults() {
        return faults;
    }
}
