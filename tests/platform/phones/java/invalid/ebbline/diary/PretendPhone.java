package invalid.ebbline.diary;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A phone that can be restarted, taken abroad, filled up and refused. */
final class PretendPhone implements Phone {
    long now;
    ZoneId zone = ZoneId.of("Europe/Berlin");
    boolean exactAllowed = true;
    /** The leave for exact alarms is taken back between the question and the act. */
    boolean takenBackMeanwhile;
    boolean full;
    boolean diskFull;
    boolean silent;
    int mostAlarms = 500;
    final Map<String, String> file = new HashMap<>();
    final Map<Long, Boolean> alarms = new TreeMap<>(); // moment to exact
    final List<Boolean> shown = new ArrayList<>();     // whether it asked to open

    PretendPhone(long now) {
        this.now = now;
    }

    void restart() {
        alarms.clear();
    }

    /** Time passes; what the system holds goes off, inexact alarms late by so much. */
    void goTo(long then, long lateBy, BellKeeper keeper) {
        for (Map.Entry<Long, Boolean> alarm : new ArrayList<>(alarms.entrySet())) {
            final long rings = alarm.getKey() + (alarm.getValue() ? 0 : lateBy);
            if (rings > then || !alarms.containsKey(alarm.getKey()))
                continue;
            now = Math.max(now, rings);
            alarms.remove(alarm.getKey());
            keeper.ring();
        }
        now = then;
    }

    @Override
    public long now() {
        return now;
    }

    @Override
    public ZoneId zone() {
        return zone;
    }

    @Override
    public String kept(String name) {
        return file.getOrDefault(name, "");
    }

    @Override
    public boolean keep(String name, String value) {
        if (diskFull)
            return false;
        file.put(name, value);
        return true;
    }

    @Override
    public boolean mayBeExact() {
        return exactAllowed;
    }

    @Override
    public void setAlarm(long at, boolean exact) {
        if (exact && (!exactAllowed || takenBackMeanwhile))
            throw new SecurityException("exact alarms are not allowed");
        if (full || (alarms.size() >= mostAlarms && !alarms.containsKey(at)))
            throw new IllegalStateException("too many alarms");
        alarms.put(at, exact);
    }

    @Override
    public void clearAlarm(long at) {
        alarms.remove(at);
    }

    @Override
    public boolean show(boolean asksToOpen) {
        if (silent)
            return false;
        shown.add(asksToOpen);
        return true;
    }
}
