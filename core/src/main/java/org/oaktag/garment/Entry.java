package org.oaktag.garment;

import java.util.Objects;
import java.util.function.Supplier;

/** An entry of a garment's history: its account is made when it is first read, and kept. Safe to share. */
final class Entry {

    /**
     * What makes the account, until it is there; then the account itself. Two threads may both make it; they come to
     * the same, and either may be kept: neither is seen by halves, as the fields of both are final. Read once.
     */
    private Object state;

    private Entry(Object state) {
        this.state = state;
    }

    static Entry of(Change change) {
        return new Entry(Objects.requireNonNull(change, "change"));
    }

    static Entry of(Supplier<Change> account) {
        return new Entry(new Account(Objects.requireNonNull(account, "account")));
    }

    /** What makes an account, in a final field, so that no thread sees it without what it has captured. */
    private record Account(Supplier<Change> make) {}

    Change change() {
        Object now = state;
        if (now instanceof Account account) {
            now = Objects.requireNonNull(account.make.get(), "change");
            state = now;
        }
        return (Change) now;
    }

    @Override
    public boolean equals(Object other) {
        return this == other || (other instanceof Entry entry && change().equals(entry.change()));
    }

    @Override
    public int hashCode() {
        return change().hashCode();
    }
}
