package invalid.ebbline.diary;

import android.app.Activity;
import android.content.Context;
import android.content.Intent;
import android.content.pm.PackageManager;
import android.net.Uri;
import android.os.Build;
import android.provider.Settings;

/**
 * What the C++ side calls (platform/android/android_ringer.cpp), and what it is told. Every name and
 * signature here stands in a string there; tests/platform/phones holds the two together.
 *
 * Calls come from the thread of the program, or from Android's: nothing here keeps state but who listens.
 */
public final class Bridge {
    // The numbers are those of notifications::RingerEvent.
    static final int OPEN_TOUCHED = 1;
    static final int LATER_TOUCHED = 2;
    static final int LEAVE_CHANGED = 3;
    static final int RANG = 4;
    static final int ZONE_CHANGED = 5;

    static final String ASK = "android.permission.POST_NOTIFICATIONS";
    static final int ASK_NUMBER = 4711;

    private static volatile Context context;
    private static volatile DiaryActivity activity;
    private static volatile boolean listening;
    private static volatile boolean inSight;
    private static volatile boolean openWaits;

    private Bridge() {}

    // --- called by DiaryActivity ---

    static Context context() {
        return context;
    }

    static void begin(DiaryActivity started) {
        context = started.getApplicationContext();
        activity = started;
    }

    static void end(DiaryActivity stopped) {
        if (activity == stopped)
            activity = null;
    }

    static void setInSight(boolean shown) {
        inSight = shown;
    }

    /** A bell was touched. The touch that starts the program waits until somebody listens. */
    static void openFromBell() {
        if (!tell(OPEN_TOUCHED))
            openWaits = true;
    }

    static boolean tell(int what) {
        if (!listening)
            return false;
        told(what);
        return true;
    }

    static boolean tellIfInSight(int what) {
        return inSight && tell(what);
    }

    /** Registered by the C++ side before it says that it listens. */
    private static native void told(int what);

    // --- called by the C++ side ---

    public static void listen(boolean on) {
        listening = on;
        // The system may have ended the program and its alarms together; it does so when the person takes
        // back the leave for exact ones.
        if (on)
            keeper().restore();
        if (on && openWaits) {
            openWaits = false;
            told(OPEN_TOUCHED);
        }
    }

    public static int leave() {
        final boolean permitted = Build.VERSION.SDK_INT < Leave.FIRST_THAT_ASKS
                || context.checkSelfPermission(ASK) == PackageManager.PERMISSION_GRANTED;
        return Leave.of(Build.VERSION.SDK_INT, permitted, !phone().kept("asked").isEmpty(), new BellSign(context).isOn());
    }

    /** Asks the person in the system's own window; the answer comes as LEAVE_CHANGED. */
    public static void ask() {
        final Activity asking = activity;
        if (asking == null || Build.VERSION.SDK_INT < Leave.FIRST_THAT_ASKS)
            return;
        phone().keep("asked", "yes");
        asking.runOnUiThread(() -> asking.requestPermissions(new String[] {ASK}, ASK_NUMBER));
    }

    public static void openSettings() {
        final Intent intent = new Intent(Settings.ACTION_APP_NOTIFICATION_SETTINGS);
        intent.putExtra(Settings.EXTRA_APP_PACKAGE, context.getPackageName());
        start(intent);
    }

    public static boolean isPunctual() {
        return phone().mayBeExact();
    }

    public static void openPunctualSettings() {
        if (Build.VERSION.SDK_INT < Build.VERSION_CODES.S)
            return;
        final Intent intent = new Intent(Settings.ACTION_REQUEST_SCHEDULE_EXACT_ALARM);
        intent.setData(Uri.fromParts("package", context.getPackageName(), null));
        start(intent);
    }

    public static String pending() {
        return keeper().pending();
    }

    public static boolean book(long at, boolean asksToOpen) {
        return keeper().book(at, asksToOpen);
    }

    public static boolean cancel(long at, boolean asksToOpen) {
        return keeper().cancel(at, asksToOpen);
    }

    public static void setWords(String name, String title, String text, String asksToOpen, String open, String later) {
        BellSign.setWords(context, name, title, text, asksToOpen, open, later);
    }

    public static boolean ringNow() {
        return new BellSign(context).show(false);
    }

    private static void start(Intent intent) {
        final Activity from = activity;
        if (from == null)
            return;
        from.runOnUiThread(() -> {
            try {
                from.startActivity(intent);
            } catch (android.content.ActivityNotFoundException noSuchPage) {
                // A phone without this page of the settings: the program still says what is missing.
            }
        });
    }

    private static Phone phone() {
        return new AndroidPhone(context);
    }

    private static BellKeeper keeper() {
        return new BellKeeper(phone());
    }
}
