/**
 * The cases kept: stored with their whole history, searched, exported, backed up.
 *
 * <p>Start at {@link org.honorsdue.casebook.Casebook}. A case is kept as the text of its casefile with notes and a
 * stage; every state it ever had stays as a {@link org.honorsdue.casebook.Revision}. What a casefile means is no
 * business of this package: whoever saves a case says by which words it is to be found.
 */
@NullMarked
package org.honorsdue.casebook;

import org.jspecify.annotations.NullMarked;
