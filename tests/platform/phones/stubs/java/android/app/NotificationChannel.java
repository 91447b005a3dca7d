// Signatures from the public reference of the platform; no behaviour.
package android.app;

public final class NotificationChannel {
    public NotificationChannel(String channel, CharSequence name, int importance) {}
    public native int getImportance();
    public native void setLockscreenVisibility(int visibility);
    public native void setShowBadge(boolean show);
}
