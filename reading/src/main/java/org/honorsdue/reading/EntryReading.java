package org.honorsdue.reading;

import java.util.List;
import java.util.Optional;
import org.honorsdue.reading.entry.Crossing;
import org.honorsdue.service.fact.OrderReference;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.Unread;
import org.honorsdue.service.paper.Entry;

/**
 * The reading of one entry: every character that is neither spacing nor punctuation lies in a token or in what stayed
 * unread.
 *
 * @param entry the entry; empty when nobody said where the text stands
 * @param tokens in the order of the text
 * @param unread in the order of the text
 * @param facts what the tokens say together
 * @param orders the orders cited
 * @param crossings the crossings of the sea, one by one
 * @param dates the dates typed, in the order of the text, as far as a year is typed with them
 */
public record EntryReading(
        Optional<Entry> entry,
        String text,
        List<ReadToken> tokens,
        List<Unread> unread,
        List<ServiceFact> facts,
        List<OrderReference> orders,
        List<Crossing> crossings,
        List<PartialDate> dates) {
    public EntryReading {
        tokens = List.copyOf(tokens);
        unread = List.copyOf(unread);
        facts = List.copyOf(facts);
        orders = List.copyOf(orders);
        crossings = List.copyOf(crossings);
        dates = List.copyOf(dates);
    }
}
