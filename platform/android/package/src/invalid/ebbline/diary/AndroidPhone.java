package invalid.ebbline.diary;

import android.app.AlarmManager;
import android.app.PendingIntent;
import android.content.Context;
import android.content.Intent;
import android.content.SharedPreferences;
import android.net.Uri;
import android.os.Build;
import java.time.ZoneId;
import java.util.TimeZone;

/** The phone as Android has it: AlarmManager and a file of the program's own that backups leave out. */
final class AndroidPhone implements Phone {
    private static final String FILE = "bells";

    private final Context context;

    AndroidPhone(Context context) {
        this.context = context.getApplicationContext();
    }

    @Override
    public long now() {
        return System.currentTimeMillis();
    }

    @Override
    public ZoneId zone() {
        // ZoneId.systemDefault() follows the default of the process, which need not be the phone's yet.
        final String name = TimeZone.getDefault().getID();
        try {
            return ZoneId.of(name);
        } catch (java.time.DateTimeException unknown) {
            return ZoneId.of("UTC");
        }
    }

    @Override
    public String kept(String name) {
        return file().getString(name, "");
    }

    @Override
    public boolean keep(String name, String value) {
        // commit(), not apply(): a receiver may be ended right after it returns.
        return file().edit().putString(name, value).commit();
    }

    @Override
    public boolean mayBeExact() {
        return Build.VERSION.SDK_INT < Build.VERSION_CODES.S || alarms().canScheduleExactAlarms();
    }

    @Override
    public void setAlarm(long at, boolean exact) {
        if (exact)
            alarms().setExactAndAllowWhileIdle(AlarmManager.RTC_WAKEUP, at, alarmOf(at));
        else
            alarms().setAndAllowWhileIdle(AlarmManager.RTC_WAKEUP, at, alarmOf(at));
    }

    @Override
    public void clearAlarm(long at) {
        alarms().cancel(alarmOf(at));
    }

    @Override
    public boolean show(boolean asksToOpen) {
        return new BellSign(context).show(asksToOpen);
    }

    private SharedPreferences file() {
        return context.getSharedPreferences(FILE, Context.MODE_PRIVATE);
    }

    private AlarmManager alarms() {
        return (AlarmManager) context.getSystemService(Context.ALARM_SERVICE);
    }

    /** One for each moment: the data tells them apart, and the same moment gives the same one again. */
    private PendingIntent alarmOf(long at) {
        final Intent intent = new Intent(context, BellReceiver.class);
        intent.setAction(BellReceiver.RING);
        intent.setData(Uri.fromParts("bell", Long.toString(at), null));
        return PendingIntent.getBroadcast(context, 0, intent, PendingIntent.FLAG_IMMUTABLE | PendingIntent.FLAG_UPDATE_CURRENT);
    }
}
