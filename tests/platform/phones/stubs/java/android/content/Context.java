// Signatures from the public reference of the platform; no behaviour.
package android.content;

public abstract class Context {
    public static final String ALARM_SERVICE = "alarm";
    public static final String NOTIFICATION_SERVICE = "notification";
    public static final int MODE_PRIVATE = 0;
    public abstract Context getApplicationContext();
    public abstract SharedPreferences getSharedPreferences(String name, int mode);
    public abstract Object getSystemService(String name);
    public abstract String getPackageName();
    public abstract java.io.File getNoBackupFilesDir();
    public abstract int checkSelfPermission(String permission);
    public abstract void startActivity(Intent intent);
    public final native String getString(int resource);
}
