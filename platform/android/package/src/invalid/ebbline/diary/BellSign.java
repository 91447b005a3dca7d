package invalid.ebbline.diary;

import android.app.Notification;
import android.app.NotificationChannel;
import android.app.NotificationManager;
import android.app.PendingIntent;
import android.content.Context;
import android.content.Intent;
import android.content.SharedPreferences;

/**
 * What a bell shows: the same neutral words at every bell, in the language of the diary, which the
 * program hands over when it runs. Before it did, the words of the resources stand in.
 */
final class BellSign {
    private static final String FILE = "words";
    private static final String CHANNEL = "reminders";
    private static final int NUMBER = 1; // one sign at a time: a new bell takes its place

    private final Context context;

    BellSign(Context context) {
        this.context = context;
    }

    static void setWords(Context context, String name, String title, String text, String asksToOpen, String open, String later) {
        file(context).edit().putString("name", name).putString("title", title).putString("text", text)
                .putString("asksToOpen", asksToOpen).putString("open", open).putString("later", later).commit();
        new BellSign(context).openChannel();
    }

    /** @return false if the system will not show it. */
    boolean show(boolean asksToOpen) {
        final NotificationManager signs = signs();
        openChannel();
        if (!isOn())
            return false;
        final String text = asksToOpen ? word("asksToOpen", R.string.bell_asks_to_open) : word("text", R.string.bell_text);
        final PendingIntent open = opening();
        final Notification.Builder sign = new Notification.Builder(context, CHANNEL)
                .setSmallIcon(R.drawable.bell)
                .setContentTitle(word("title", R.string.bell_title))
                .setContentText(text)
                .setContentIntent(open)
                .setCategory(Notification.CATEGORY_REMINDER)
                .setVisibility(Notification.VISIBILITY_PRIVATE)
                .setLocalOnly(true) // not on a watch or a car that others see
                .setAutoCancel(true)
                .addAction(new Notification.Action.Builder(null, word("open", R.string.bell_open), open).build())
                .addAction(new Notification.Action.Builder(null, word("later", R.string.bell_later), puttingOff()).build());
        try {
            signs.notify(NUMBER, sign.build());
            return true;
        } catch (SecurityException takenBackMeanwhile) {
            return false;
        }
    }

    void takeAway() {
        signs().cancel(NUMBER);
    }

    /** Whether the person lets this program, and this channel of it, be shown. */
    boolean isOn() {
        final NotificationManager signs = signs();
        final NotificationChannel channel = signs.getNotificationChannel(CHANNEL);
        return signs.areNotificationsEnabled() && (channel == null || channel.getImportance() != NotificationManager.IMPORTANCE_NONE);
    }

    /** What the person set for the channel is kept by the system; only its name follows the language. */
    void openChannel() {
        final NotificationChannel channel =
                new NotificationChannel(CHANNEL, word("title", R.string.bell_title), NotificationManager.IMPORTANCE_DEFAULT);
        channel.setLockscreenVisibility(Notification.VISIBILITY_PRIVATE);
        channel.setShowBadge(false);
        signs().createNotificationChannel(channel);
    }

    private PendingIntent opening() {
        final Intent intent = new Intent(context, DiaryActivity.class);
        intent.setAction(DiaryActivity.OPEN_FROM_BELL);
        intent.setFlags(Intent.FLAG_ACTIVITY_NEW_TASK | Intent.FLAG_ACTIVITY_SINGLE_TOP);
        return PendingIntent.getActivity(context, 0, intent, PendingIntent.FLAG_IMMUTABLE | PendingIntent.FLAG_UPDATE_CURRENT);
    }

    private PendingIntent puttingOff() {
        final Intent intent = new Intent(context, BellReceiver.class);
        intent.setAction(BellReceiver.LATER);
        return PendingIntent.getBroadcast(context, 0, intent, PendingIntent.FLAG_IMMUTABLE | PendingIntent.FLAG_UPDATE_CURRENT);
    }

    private String word(String name, int otherwise) {
        final String kept = file(context).getString(name, "");
        return kept.isEmpty() ? context.getString(otherwise) : kept;
    }

    private NotificationManager signs() {
        return (NotificationManager) context.getSystemService(Context.NOTIFICATION_SERVICE);
    }

    private static SharedPreferences file(Context context) {
        return context.getSharedPreferences(FILE, Context.MODE_PRIVATE);
    }
}
