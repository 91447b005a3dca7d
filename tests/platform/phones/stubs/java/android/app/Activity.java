// Signatures from the public reference of the platform; no behaviour.
package android.app;

import android.content.ContextWrapper;
import android.content.Intent;
import android.os.Bundle;

public class Activity extends ContextWrapper {
    public native Intent getIntent();
    public native android.view.Window getWindow();
    public native void requestPermissions(String[] permissions, int number);
    public final native void runOnUiThread(Runnable work);
    public native void setRecentsScreenshotEnabled(boolean enabled);
    protected native void onCreate(Bundle state);
    protected native void onNewIntent(Intent intent);
    protected native void onResume();
    protected native void onPause();
    protected native void onDestroy();
    public native void onRequestPermissionsResult(int number, String[] permissions, int[] results);
}
