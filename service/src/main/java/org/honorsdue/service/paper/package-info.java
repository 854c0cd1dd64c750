/** Papers and their entries exactly as typed. Start at {@link org.honorsdue.service.paper.Paper}. */
@NullMarked
package org.honorsdue.service.paper;

import org.jspecify.annotations.NullMarked;
