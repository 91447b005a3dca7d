// Signatures from the public reference of the platform; no behaviour.
package android.app;

import android.content.Context;
import android.content.Intent;

public final class PendingIntent {
    public static final int FLAG_IMMUTABLE = 0x04000000;
    public static final int FLAG_UPDATE_CURRENT = 0x08000000;
    public static native PendingIntent getActivity(Context context, int number, Intent intent, int flags);
    public static native PendingIntent getBroadcast(Context context, int number, Intent intent, int flags);
}
