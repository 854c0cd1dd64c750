package org.honorsdue.determination.crosscheck.points;

/**
 * What time contributes to a score on one rating date.
 *
 * @param service in the Army from 16 September 1940 to the rating date
 * @param overseas port to port, to the rating date
 * @param lostTimeDeducted whether days lost under Article of War 107 were taken off; whether clerks did so is not known
 */
public record TimeServed(RatingDate asOf, MonthsAndDays service, MonthsAndDays overseas, boolean lostTimeDeducted) {}
