package invalid.ebbline.diary;

import android.content.BroadcastReceiver;
import android.content.Context;
import android.content.Intent;

/** The alarms of this program, and the act "later" of its bell. Not exported: only this program calls it. */
public final class BellReceiver extends BroadcastReceiver {
    static final String RING = "invalid.ebbline.diary.RING";
    static final String LATER = "invalid.ebbline.diary.LATER";

    @Override
    public void onReceive(Context context, Intent intent) {
        final BellKeeper keeper = new BellKeeper(new AndroidPhone(context));
        if (RING.equals(intent.getAction())) {
            if (keeper.ring())
                Bridge.tell(Bridge.RANG);
        } else if (LATER.equals(intent.getAction())) {
            new BellSign(context).takeAway();
            // The open diary knows what is due and moves each; otherwise the bell itself moves.
            if (!Bridge.tellIfInSight(Bridge.LATER_TOUCHED))
                keeper.putOff();
        }
    }
}
