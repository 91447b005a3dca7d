package invalid.ebbline.diary;

import invalid.ebbline.diary.BellList.Bell;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Random;

/** The rules of the bells, on plain Java. Ends with the number of the sentences that hold, or with a failure. */
public final class BellTest {
    private static final ZoneId berlin = ZoneId.of("Europe/Berlin");
    private static final ZoneId tokyo = ZoneId.of("Asia/Tokyo");
    private static int held;

    private static void check(boolean holds, String sentence) {
        if (!holds)
            throw new AssertionError(sentence);
        ++held;
    }

    private static long at(String local, ZoneId zone) {
        return LocalDateTime.parse(local).atZone(zone).toInstant().toEpochMilli();
    }

    private static boolean isRefused(String text) {
        try {
            BellList.read(text);
            return false;
        } catch (IllegalArgumentException expected) {
            return true;
        }
    }

    private static void theText() {
        check(BellList.read("").all().isEmpty(), "no text is no bell");
        check(BellList.read("1803978000000+ 1803891600000").text().equals("1803891600000 1803978000000+"), "a list reads back, soonest first");
        for (String wrong : new String[] {" ", "1 ", " 1", "1  2", "+", "-1", "1+2", "1e3", "x", "99999999999999999999", "١٢"})
            check(isRefused(wrong), "no other text is read: " + wrong);
        final StringBuilder many = new StringBuilder("1");
        for (int i = 1; i < BellList.MOST; ++i)
            many.append(" 1");
        check(BellList.read(many.toString()).all().size() == BellList.MOST, "as many as the program reads are read");
        check(isRefused(many + " 1"), "and not one more");
    }

    private static void ringing() {
        final PretendPhone phone = new PretendPhone(at("2026-03-10T12:00", berlin));
        final BellKeeper keeper = new BellKeeper(phone);
        final long evening = at("2026-03-10T19:00", berlin);
        final long morning = at("2026-03-11T08:00", berlin);
        check(keeper.book(evening, false) && keeper.book(morning, true), "bells are taken");
        check(keeper.book(evening, false) && keeper.pending().equals(evening + " " + morning + "+"), "a bell that is booked twice is there once");
        check(phone.alarms.size() == 2 && phone.alarms.get(evening), "each has an exact alarm where that is allowed");
        phone.goTo(evening - 1, 0, keeper);
        check(phone.shown.isEmpty(), "nothing rings too soon");
        phone.goTo(evening, 0, keeper);
        check(phone.shown.size() == 1 && !phone.shown.get(0), "a bell rings at its moment");
        check(keeper.pending().equals(morning + "+"), "and is off the list");
        phone.goTo(morning, 0, keeper);
        check(phone.shown.get(1), "the last of many asks to open the diary");
        check(!keeper.ring() && phone.shown.size() == 2, "an alarm without a bell is silent");
        check(keeper.book(morning + 1000, false) && keeper.cancel(morning + 1000, false), "a bell can be taken back");
        check(phone.alarms.isEmpty() && keeper.pending().isEmpty(), "and its alarm goes with it");
        keeper.book(morning + 2000, false);
        keeper.book(morning + 2000, true);
        keeper.cancel(morning + 2000, true);
        check(phone.alarms.containsKey(morning + 2000), "an alarm that another bell needs stays");
    }

    private static void refusals() {
        final PretendPhone phone = new PretendPhone(at("2026-03-10T12:00", berlin));
        final BellKeeper keeper = new BellKeeper(phone);
        final long evening = at("2026-03-10T19:00", berlin);
        phone.exactAllowed = false;
        check(keeper.book(evening, false) && !phone.alarms.get(evening), "without leave for exact alarms a bell has an inexact one");
        phone.goTo(evening + 9 * 60_000, 9 * 60_000, keeper);
        check(phone.shown.size() == 1, "and rings, late");

        phone.exactAllowed = true;
        phone.takenBackMeanwhile = true;
        check(keeper.book(evening + 3_600_000, false) && !phone.alarms.get(evening + 3_600_000), "leave that is taken back in between does not silence a bell");
        phone.takenBackMeanwhile = false;

        phone.full = true;
        check(!keeper.book(evening + 7_200_000, false), "a system that takes no more is not passed off as one that did");
        check(!keeper.pending().contains(Long.toString(evening + 7_200_000)), "nor said to be held");
        phone.full = false;
        phone.diskFull = true;
        check(!keeper.book(evening + 10_800_000, false) && !phone.alarms.containsKey(evening + 10_800_000), "a bell that cannot be kept has no alarm either");
        phone.diskFull = false;

        phone.file.put(BellKeeper.BELLS, "Europe/Berlin|nonsense");
        check(keeper.pending().isEmpty() && keeper.book(evening + 14_400_000, false), "a list that cannot be read counts as none and is begun anew");
        phone.file.put(BellKeeper.BELLS, "Nowhere/At_All|" + (evening + 14_400_000));
        check(keeper.pending().equals(Long.toString(evening + 14_400_000)), "a zone that nobody knows moves nothing");

        phone.silent = true;
        phone.goTo(evening + 14_400_000, 0, keeper);
        check(!keeper.ring(), "a bell that the system does not show is not said to have rung");
    }

    private static void restarts() {
        final PretendPhone phone = new PretendPhone(at("2026-03-10T12:00", berlin));
        final BellKeeper keeper = new BellKeeper(phone);
        final long evening = at("2026-03-10T19:00", berlin);
        final long night = at("2026-03-10T22:00", berlin);
        final long morning = at("2026-03-11T08:00", berlin);
        for (long moment : new long[] {evening, night, morning})
            keeper.book(moment, moment == morning);
        phone.restart();
        phone.now = at("2026-03-10T23:00", berlin);
        keeper.restore();
        check(phone.shown.size() == 1, "what came due while the phone was off rings once");
        check(phone.alarms.size() == 1 && phone.alarms.containsKey(morning), "and what is to come has its alarm again");
        phone.exactAllowed = false;
        phone.restart(); // the system drops exact alarms when the leave is taken back
        keeper.restore();
        check(!phone.alarms.get(morning), "after leave was taken back the bells are there, inexactly");
        phone.exactAllowed = true;
        keeper.restore();
        check(phone.alarms.get(morning), "after leave was given they are exact again");
        phone.restart();
        phone.full = true;
        keeper.restore();
        check(keeper.pending().isEmpty(), "what the system does not take back is not said to be held");
    }

    private static void travelling() {
        final PretendPhone phone = new PretendPhone(at("2026-03-10T12:00", berlin));
        final BellKeeper keeper = new BellKeeper(phone);
        keeper.book(at("2026-03-10T19:00", berlin), false);
        keeper.book(at("2026-03-11T08:00", berlin), true);
        phone.zone = tokyo;
        keeper.restore();
        final long there = at("2026-03-11T08:00", tokyo);
        check(keeper.pending().equals(there + "+"), "in another zone a bell keeps the wall clock");
        check(phone.shown.size() == 1, "what is past there rings once");
        check(phone.alarms.keySet().equals(java.util.Collections.singleton(there)), "the old alarms are gone");
        phone.zone = berlin;
        phone.goTo(there, 0, keeper); // the alarm goes off before the phone says that it moved
        check(phone.shown.size() == 1 && keeper.pending().equals(at("2026-03-11T08:00", berlin) + "+"), "an alarm of the other zone moves the bells first");
        phone.goTo(at("2026-03-11T08:00", berlin), 0, keeper);
        check(phone.shown.size() == 2, "and they ring by the clock on the wall");

        final ZoneId newYork = ZoneId.of("America/New_York");
        final BellList skipped = BellList.none().with(new Bell(at("2026-03-08T02:30", berlin), false));
        check(skipped.moved(berlin, newYork).all().get(0).at == at("2026-03-08T03:30", newYork), "a reading that a zone skips comes after the gap");
        final Random random = new Random(20261126);
        for (int i = 0; i < 2000; ++i) {
            final BellList list = BellList.none().with(new Bell(Math.abs(random.nextLong() % 4_000_000_000_000L), random.nextBoolean()));
            check(BellList.read(list.text()).text().equals(list.text()), "what is written reads back");
            check(list.moved(berlin, berlin).all().get(0).at - list.all().get(0).at <= 0, "a zone to itself never makes a bell late");
        }
    }

    private static void puttingOff() {
        final PretendPhone phone = new PretendPhone(at("2026-03-10T19:01", berlin));
        final BellKeeper keeper = new BellKeeper(phone);
        check(keeper.putOff() && keeper.pending().equals(Long.toString(phone.now + 30 * 60_000)), "later is in half an hour");
        phone.goTo(phone.now + 30 * 60_000, 0, keeper);
        check(phone.shown.size() == 1, "and rings then");
    }

    private static void leave() {
        check(Leave.of(32, false, false, true) == Leave.GRANTED, "before Android 13 there is nothing to ask");
        check(Leave.of(32, false, false, false) == Leave.DENIED, "a program or channel that is switched off does not ring");
        check(Leave.of(33, false, false, true) == Leave.NOT_ASKED, "from Android 13 on the person is asked first");
        check(Leave.of(33, false, true, true) == Leave.DENIED, "a question that was answered with no is not open");
        check(Leave.of(33, true, false, true) == Leave.GRANTED, "leave that was given in the settings counts");
        check(Leave.of(34, true, true, false) == Leave.DENIED, "leave for the program does not help a channel that is off");
    }

    public static void main(String[] arguments) {
        theText();
        ringing();
        refusals();
        restarts();
        travelling();
        puttingOff();
        leave();
        System.out.println(held + " sentences hold");
    }
}
