// Signatures from the public reference of the platform; no behaviour.
package android.content;

public class ActivityNotFoundException extends RuntimeException {
}
