/** How clerks wrote: abbreviations, specialties, codes, and the documents that prove things. Start at {@link org.honorsdue.reference.paper.Abbreviation}. */
@NullMarked
package org.honorsdue.reference.paper;

import org.jspecify.annotations.NullMarked;
