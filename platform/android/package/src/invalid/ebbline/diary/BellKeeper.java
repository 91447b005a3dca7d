package invalid.ebbline.diary;

import invalid.ebbline.diary.BellList.Bell;
import java.time.DateTimeException;
import java.time.ZoneId;

/**
 * Keeps the bells: an alarm for each, and a list beside the alarms, because the system forgets alarms
 * at a restart, at an update of the program and when the leave for exact ones is taken back. The list is
 * written before the alarm is set, so that a bell is never only with the system. Plain Java over
 * {@link Phone}; the phone calls receivers and the program calls from its own thread, so one at a time.
 */
final class BellKeeper {
    /** The name of what is kept: the zone whose clock the moments were read from, "|", and the list. */
    static final String BELLS = "bells";

    /** What is put off comes again in half an hour, as in the diary itself. */
    static final long PUT_OFF_MS = 30L * 60 * 1000;

    private static final Object oneAtATime = new Object();
    private final Phone phone;

    BellKeeper(Phone phone) {
        this.phone = phone;
    }

    /** The list as text. What cannot be read counts as nothing: the diary books anew. */
    String pending() {
        synchronized (oneAtATime) {
            settle();
            return list().text();
        }
    }

    /** @return false if it could not be kept, or has no alarm. */
    boolean book(long at, boolean asksToOpen) {
        synchronized (oneAtATime) {
            settle();
            try {
                final Bell bell = new Bell(at, asksToOpen);
                final BellList list = list();
                if (!list.has(bell) && !store(list.with(bell)))
                    return false;
                if (arm(bell))
                    return true;
                store(list.without(bell)); // what has no alarm is not said to be held
                return false;
            } catch (IllegalArgumentException full) {
                return false;
            }
        }
    }

    boolean cancel(long at, boolean asksToOpen) {
        synchronized (oneAtATime) {
            settle();
            final BellList left = list().without(new Bell(at, asksToOpen));
            if (!store(left))
                return false;
            if (left.all().stream().noneMatch(other -> other.at == at))
                phone.clearAlarm(at);
            return true;
        }
    }

    /** An alarm went off: everything that is due is one bell. @return true if it rang. */
    boolean ring() {
        synchronized (oneAtATime) {
            settle();
            final long now = phone.now();
            final BellList list = list();
            final BellList due = list.due(now);
            if (due.all().isEmpty())
                return false;
            // Taken off first: a program that dies while it rings is silent once, not ringing for ever.
            store(list.after(now));
            for (Bell bell : due.all())
                phone.clearAlarm(bell.at);
            return phone.show(due.all().get(due.all().size() - 1).asksToOpen);
        }
    }

    /** The person asked for it later, and the program is not there to say what "it" is. */
    boolean putOff() {
        return book(phone.now() + PUT_OFF_MS, false);
    }

    /**
     * After a restart, an update, a change of clock, zone or leave: the wall clock is kept, every alarm is
     * set again, and what came due meanwhile rings once. The list says what is really held then.
     */
    void restore() {
        synchronized (oneAtATime) {
            ring();
            BellList held = list();
            for (Bell bell : list().all())
                if (!arm(bell))
                    held = held.without(bell); // the diary books it again when it is next opened
            store(held);
        }
    }

    /** In another zone than the one that the moments were booked in: the same readings of its clock. */
    private void settle() {
        final ZoneId here = phone.zone();
        final ZoneId there = zone(here);
        if (there.equals(here))
            return;
        final BellList held = list();
        final BellList moved = held.moved(there, here);
        if (!store(moved))
            return;
        for (Bell bell : held.all())
            phone.clearAlarm(bell.at);
        for (Bell bell : moved.all())
            arm(bell);
    }

    /** Sets the alarm, as exactly as the system lets us; a refusal in between is no reason to be silent. */
    private boolean arm(Bell bell) {
        if (phone.mayBeExact()) {
            try {
                phone.setAlarm(bell.at, true);
                return true;
            } catch (SecurityException takenBackMeanwhile) {
                // An inexact one is better than none.
            } catch (IllegalStateException tooMany) {
                return false;
            }
        }
        try {
            phone.setAlarm(bell.at, false);
            return true;
        } catch (SecurityException | IllegalStateException refused) {
            return false;
        }
    }

    private BellList list() {
        final String kept = phone.kept(BELLS);
        try {
            return BellList.read(kept.substring(kept.indexOf('|') + 1));
        } catch (IllegalArgumentException unreadable) {
            return BellList.none();
        }
    }

    private ZoneId zone(ZoneId otherwise) {
        final String kept = phone.kept(BELLS);
        try {
            return ZoneId.of(kept.substring(0, Math.max(0, kept.indexOf('|'))));
        } catch (DateTimeException noneOrUnknown) {
            return otherwise;
        }
    }

    private boolean store(BellList list) {
        return phone.keep(BELLS, phone.zone().getId() + '|' + list.text());
    }
}
