// Signatures from the public reference of the platform; no behaviour.
package android.net;

public abstract class Uri {
    public static native Uri fromParts(String scheme, String specific, String fragment);
}
