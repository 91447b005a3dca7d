// Signatures from the public reference of the platform; no behaviour.
package android.view;

public interface WindowManager {
    class LayoutParams {
        public static final int FLAG_SECURE = 0x00002000;
    }
}
