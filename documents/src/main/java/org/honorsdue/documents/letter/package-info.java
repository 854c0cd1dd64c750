/**
 * The papers to send and to keep. Start at {@link org.honorsdue.documents.letter.Correspondence}, which makes them all
 * from one {@link org.honorsdue.documents.letter.Dossier}.
 */
@NullMarked
package org.honorsdue.documents.letter;

import org.jspecify.annotations.NullMarked;
