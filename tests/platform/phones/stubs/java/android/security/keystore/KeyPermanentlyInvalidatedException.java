// Signatures from the public reference of the platform; no behaviour.
package android.security.keystore;

public class KeyPermanentlyInvalidatedException extends java.security.InvalidKeyException {
}
