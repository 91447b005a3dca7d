// Signatures from the public reference of the platform; no behaviour.
package android.os;

public final class Bundle {
}
