package org.honorsdue.determination.finding;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * An immutable list that is written out when somebody first looks at it. A finding is decided for millions of papers
 * and explained for the few that are opened, so its explanation waits. Thread-safe: the text is a function of immutable
 * values, and two readers who come at once write the same list.
 */
public final class Deferred<E> extends AbstractList<E> implements RandomAccess {
    private @Nullable Supplier<List<E>> writer;
    private volatile @Nullable List<E> written;

    private Deferred(Supplier<List<E>> writer) {
        this.writer = writer;
    }

    public static <E> List<E> list(Supplier<List<E>> writer) {
        return new Deferred<>(writer);
    }

    /** The list itself if it is immutable already, deferred or not; else a copy of it. */
    static <E> List<E> keep(List<E> list) {
        return list instanceof Deferred ? list : List.copyOf(list);
    }

    private List<E> now() {
        var known = written;
        if (known != null) {
            return known;
        }
        synchronized (this) {
            known = written;
            if (known == null) {
                known = writer == null ? List.of() : List.copyOf(writer.get());
                written = known;
                writer = null;
            }
            return known;
        }
    }

    @Override
    public E get(int index) {
        return now().get(index);
    }

    @Override
    public int size() {
        return now().size();
    }
}
