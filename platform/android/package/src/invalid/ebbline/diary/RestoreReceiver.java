package invalid.ebbline.diary;

import android.app.AlarmManager;
import android.content.BroadcastReceiver;
import android.content.Context;
import android.content.Intent;

/**
 * Puts the bells back after what makes the system forget or misplace them: a restart, an update of the
 * program, a clock that was set, another time zone, other leave for exact alarms. Not exported: the
 * system reaches it all the same, other programs do not.
 */
public final class RestoreReceiver extends BroadcastReceiver {
    @Override
    public void onReceive(Context context, Intent intent) {
        final String action = intent.getAction();
        if (action == null)
            return;
        switch (action) {
            case Intent.ACTION_TIMEZONE_CHANGED:
                new BellKeeper(new AndroidPhone(context)).restore();
                Bridge.tell(Bridge.ZONE_CHANGED);
                break;
            case AlarmManager.ACTION_SCHEDULE_EXACT_ALARM_PERMISSION_STATE_CHANGED:
                new BellKeeper(new AndroidPhone(context)).restore();
                Bridge.tell(Bridge.LEAVE_CHANGED);
                break;
            case Intent.ACTION_BOOT_COMPLETED:
            case Intent.ACTION_MY_PACKAGE_REPLACED:
            case Intent.ACTION_TIME_CHANGED:
                new BellKeeper(new AndroidPhone(context)).restore();
                break;
            default:
                break;
        }
    }
}
