package invalid.ebbline.diary;

import java.time.ZoneId;

/** What {@link BellKeeper} asks of the phone, so that its rules can be tried without one. */
interface Phone {
    long now();

    ZoneId zone();

    /** @return what was kept under the name, or an empty text. */
    String kept(String name);

    /** @return false if it could not be stored. */
    boolean keep(String name, String value);

    /** True if an alarm may be set for an exact moment. */
    boolean mayBeExact();

    /**
     * Sets the alarm of one moment, in place of an earlier one for it.
     *
     * @throws SecurityException if the system does not allow this one.
     * @throws IllegalStateException if the system holds too many.
     */
    void setAlarm(long at, boolean exact);

    void clearAlarm(long at);

    /** Shows the bell. @return false if the system did not take it. */
    boolean show(boolean asksToOpen);
}
