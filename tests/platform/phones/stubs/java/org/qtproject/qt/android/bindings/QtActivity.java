// Signatures from the public reference of the platform; no behaviour.
package org.qtproject.qt.android.bindings;

import android.app.Activity;
import android.os.Bundle;

public class QtActivity extends Activity {
    @Override
    protected native void onCreate(Bundle state);
}
