/**
 * How a rule is held and answered: routes of clauses, each clause with its text, citation and dates, three-valued. Start
 * at {@link org.honorsdue.determination.law.Rule}; what it decides is a {@link org.honorsdue.determination.law.Ruling}.
 */
@NullMarked
package org.honorsdue.determination.law;

import org.jspecify.annotations.NullMarked;
