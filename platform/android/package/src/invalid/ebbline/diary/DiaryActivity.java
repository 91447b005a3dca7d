package invalid.ebbline.diary;

import android.content.Intent;
import android.os.Build;
import android.os.Bundle;
import android.view.WindowManager;
import org.qtproject.qt.android.bindings.QtActivity;

/** The one window of the diary. What it shows is never in a screenshot, nor among the recent programs. */
public final class DiaryActivity extends QtActivity {
    static final String OPEN_FROM_BELL = "invalid.ebbline.diary.OPEN_FROM_BELL";

    @Override
    public void onCreate(Bundle state) {
        getWindow().setFlags(WindowManager.LayoutParams.FLAG_SECURE, WindowManager.LayoutParams.FLAG_SECURE);
        if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.TIRAMISU)
            setRecentsScreenshotEnabled(false);
        Bridge.begin(this);
        super.onCreate(state);
        takeUp(getIntent());
    }

    @Override
    protected void onNewIntent(Intent intent) {
        super.onNewIntent(intent);
        takeUp(intent);
    }

    @Override
    protected void onResume() {
        super.onResume();
        Bridge.setInSight(true);
        // The person may come back from the settings with other leave, or from another zone.
        Bridge.tell(Bridge.LEAVE_CHANGED);
        Bridge.tell(Bridge.ZONE_CHANGED);
    }

    @Override
    protected void onPause() {
        Bridge.setInSight(false);
        super.onPause();
    }

    @Override
    protected void onDestroy() {
        Bridge.end(this);
        super.onDestroy();
    }

    @Override
    public void onRequestPermissionsResult(int number, String[] permissions, int[] results) {
        super.onRequestPermissionsResult(number, permissions, results);
        if (number == Bridge.ASK_NUMBER)
            Bridge.tell(Bridge.LEAVE_CHANGED);
    }

    private void takeUp(Intent intent) {
        if (intent == null || !OPEN_FROM_BELL.equals(intent.getAction()))
            return;
        // Once: the same intent comes back when the window is made anew.
        intent.setAction(Intent.ACTION_MAIN);
        new BellSign(this).takeAway();
        Bridge.openFromBell();
    }
}
