// Signatures from the public reference of the platform; no behaviour.
package android.content;

public class ContextWrapper extends Context {
    public native Context getApplicationContext();
    public native SharedPreferences getSharedPreferences(String name, int mode);
    public native Object getSystemService(String name);
    public native String getPackageName();
    public native java.io.File getNoBackupFilesDir();
    public native int checkSelfPermission(String permission);
    public native void startActivity(Intent intent);
}
