// Signatures from the public reference of the platform; no behaviour.
package android.content;

public class Intent {
    public static final String ACTION_MAIN = "android.intent.action.MAIN";
    public static final String ACTION_BOOT_COMPLETED = "android.intent.action.BOOT_COMPLETED";
    public static final String ACTION_MY_PACKAGE_REPLACED = "android.intent.action.MY_PACKAGE_REPLACED";
    public static final String ACTION_TIME_CHANGED = "android.intent.action.TIME_SET";
    public static final String ACTION_TIMEZONE_CHANGED = "android.intent.action.TIMEZONE_CHANGED";
    public static final int FLAG_ACTIVITY_NEW_TASK = 0x10000000;
    public static final int FLAG_ACTIVITY_SINGLE_TOP = 0x20000000;
    public Intent(String action) {}
    public Intent(Context context, Class<?> target) {}
    public native String getAction();
    public native Intent setAction(String action);
    public native Intent setData(android.net.Uri data);
    public native Intent setFlags(int flags);
    public native Intent putExtra(String name, String value);
}
