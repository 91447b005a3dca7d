// Signatures from the public reference of the platform; no behaviour.
package android.app;

public class AlarmManager {
    public static final int RTC_WAKEUP = 0;
    public static final String ACTION_SCHEDULE_EXACT_ALARM_PERMISSION_STATE_CHANGED =
    "android.app.action.SCHEDULE_EXACT_ALARM_PERMISSION_STATE_CHANGED";
    public native boolean canScheduleExactAlarms();
    public native void setAndAllowWhileIdle(int type, long at, PendingIntent operation);
    public native void setExactAndAllowWhileIdle(int type, long at, PendingIntent operation);
    public native void cancel(PendingIntent operation);
}
