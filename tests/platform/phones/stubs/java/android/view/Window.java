// Signatures from the public reference of the platform; no behaviour.
package android.view;

public abstract class Window {
    public native void setFlags(int flags, int mask);
}
