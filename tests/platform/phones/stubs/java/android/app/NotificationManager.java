// Signatures from the public reference of the platform; no behaviour.
package android.app;

public class NotificationManager {
    public static final int IMPORTANCE_NONE = 0;
    public static final int IMPORTANCE_DEFAULT = 3;
    public native boolean areNotificationsEnabled();
    public native void createNotificationChannel(NotificationChannel channel);
    public native NotificationChannel getNotificationChannel(String channel);
    public native void notify(int number, Notification notification);
    public native void cancel(int number);
}
