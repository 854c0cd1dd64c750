package org.honorsdue.workbench;

import java.time.Clock;
import org.honorsdue.casebook.Casebook;
import org.honorsdue.determination.Examiner;
import org.honorsdue.reference.Reference;

/** What every page works with. */
record Desk(Reference reference, Examiner examiner, Casebook casebook, Clock clock) {}
