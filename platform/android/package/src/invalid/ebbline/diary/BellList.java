package invalid.ebbline.diary;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The bells that the phone holds: moments, soonest first, and for each whether it asks to open the
 * diary. Nothing says what a bell is for. Plain Java, without Android.
 *
 * The text is that of aftercare::writeBookings (core/aftercare/booking.h), so that both sides read the
 * same list: "1803891600000 1803978000000+".
 */
final class BellList {
    /** One bell. */
    static final class Bell implements Comparable<Bell> {
        final long at; // milliseconds since 1970
        final boolean asksToOpen;

        Bell(long at, boolean asksToOpen) {
            if (at < 0)
                throw new IllegalArgumentException("bells: want milliseconds since 1970");
            this.at = at;
            this.asksToOpen = asksToOpen;
        }

        @Override
        public int compareTo(Bell other) {
            return at != other.at ? Long.compare(at, other.at) : Boolean.compare(asksToOpen, other.asksToOpen);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Bell && compareTo((Bell) other) == 0;
        }

        @Override
        public int hashCode() {
            return Long.hashCode(at) + (asksToOpen ? 1 : 0);
        }
    }

    /** As many as aftercare::readBookings takes: ten times what the diary books ahead. */
    static final int MOST = 480;

    private final List<Bell> bells;

    private BellList(List<Bell> bells) {
        Collections.sort(bells);
        this.bells = Collections.unmodifiableList(bells);
    }

    static BellList none() {
        return new BellList(new ArrayList<>());
    }

    /** @throws IllegalArgumentException for any text that {@link #text} does not write. */
    static BellList read(String text) {
        final List<Bell> bells = new ArrayList<>();
        if (text.isEmpty())
            return new BellList(bells);
        for (String word : text.split(" ", -1)) {
            if (bells.size() == MOST)
                throw new IllegalArgumentException("bells: more than any phone is given");
            final boolean asks = word.endsWith("+");
            final String digits = asks ? word.substring(0, word.length() - 1) : word;
            if (digits.isEmpty() || !digits.chars().allMatch(c -> c >= '0' && c <= '9'))
                throw new IllegalArgumentException("bells: want milliseconds since 1970");
            bells.add(new Bell(Long.parseLong(digits), asks));
        }
        return new BellList(bells);
    }

    String text() {
        final StringBuilder text = new StringBuilder();
        for (Bell bell : bells) {
            if (text.length() > 0)
                text.append(' ');
            text.append(bell.at);
            if (bell.asksToOpen)
                text.append('+');
        }
        return text.toString();
    }

    List<Bell> all() {
        return bells;
    }

    boolean has(Bell bell) {
        return bells.contains(bell);
    }

    /** @throws IllegalArgumentException if there is no room for one more. */
    BellList with(Bell bell) {
        if (bells.size() == MOST)
            throw new IllegalArgumentException("bells: more than any phone is given");
        final List<Bell> more = new ArrayList<>(bells);
        more.add(bell);
        return new BellList(more);
    }

    BellList without(Bell bell) {
        final List<Bell> fewer = new ArrayList<>(bells);
        fewer.removeIf(bell::equals);
        return new BellList(fewer);
    }

    /** Those whose time has come. */
    BellList due(long now) {
        final List<Bell> some = new ArrayList<>(bells);
        some.removeIf(bell -> bell.at > now);
        return new BellList(some);
    }

    /** Those still to come. */
    BellList after(long now) {
        final List<Bell> some = new ArrayList<>(bells);
        some.removeIf(bell -> bell.at <= now);
        return new BellList(some);
    }

    /**
     * The same readings of the clock in another zone: what was booked for seven in the evening here rings
     * at seven in the evening there. The diary books anew when it is next opened; until then the wall
     * clock is kept. A reading that a zone skips counts as the moment after the gap.
     */
    BellList moved(ZoneId from, ZoneId to) {
        final List<Bell> moved = new ArrayList<>();
        for (Bell bell : bells) {
            final long at = Instant.ofEpochMilli(bell.at).atZone(from).toLocalDateTime().atZone(to).toInstant().toEpochMilli();
            moved.add(new Bell(Math.max(0, at), bell.asksToOpen));
        }
        return new BellList(moved);
    }
}
