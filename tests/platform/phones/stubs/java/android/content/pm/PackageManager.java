// Signatures from the public reference of the platform; no behaviour.
package android.content.pm;

public abstract class PackageManager {
    public static final int PERMISSION_GRANTED = 0;
}
