// Signatures from the public reference of the platform; no behaviour.
package android.graphics.drawable;

public final class Icon {
}
