package org.honorsdue.cli;

import picocli.CommandLine.IVersionProvider;

/** The version as the build stamped it into the program. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {"honors " + number()};
    }

    static String number() {
        String stamped = Version.class.getPackage().getImplementationVersion();
        return stamped == null ? "(not built)" : stamped;
    }
}
