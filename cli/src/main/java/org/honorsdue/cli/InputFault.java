package org.honorsdue.cli;

/** The input is at fault, not the program: exit code 2, and the message is all the user needs. */
final class InputFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    InputFault(String message) {
        super(message);
    }
}
