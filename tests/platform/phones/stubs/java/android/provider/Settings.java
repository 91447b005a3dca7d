// Signatures from the public reference of the platform; no behaviour.
package android.provider;

public final class Settings {
    public static final String ACTION_APP_NOTIFICATION_SETTINGS = "android.settings.APP_NOTIFICATION_SETTINGS";
    public static final String ACTION_REQUEST_SCHEDULE_EXACT_ALARM = "android.settings.REQUEST_SCHEDULE_EXACT_ALARM";
    public static final String EXTRA_APP_PACKAGE = "android.provider.extra.APP_PACKAGE";
}
