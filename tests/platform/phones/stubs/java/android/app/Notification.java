// Signatures from the public reference of the platform; no behaviour.
package android.app;

import android.content.Context;
import android.graphics.drawable.Icon;

public class Notification {
    public static final String CATEGORY_REMINDER = "reminder";
    public static final int VISIBILITY_PRIVATE = 0;
    public static class Action {
        public static final class Builder {
            public Builder(Icon icon, CharSequence title, PendingIntent intent) {}
            public native Action build();
        }
    }
    public static class Builder {
        public Builder(Context context, String channel) {}
        public native Builder setSmallIcon(int resource);
        public native Builder setContentTitle(CharSequence title);
        public native Builder setContentText(CharSequence text);
        public native Builder setContentIntent(PendingIntent intent);
        public native Builder setCategory(String category);
        public native Builder setVisibility(int visibility);
        public native Builder setLocalOnly(boolean local);
        public native Builder setAutoCancel(boolean cancel);
        public native Builder addAction(Action action);
        public native Notification build();
    }
}
