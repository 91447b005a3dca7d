// Signatures from the public reference of the platform; no behaviour.
package android.content;

public abstract class BroadcastReceiver {
    public abstract void onReceive(Context context, Intent intent);
}
