// Signatures from the public reference of the platform; no behaviour.
package android.security.keystore;

public final class KeyGenParameterSpec implements java.security.spec.AlgorithmParameterSpec {
    public static final class Builder {
        public Builder(String alias, int purposes) {}
        public native Builder setBlockModes(String... modes);
        public native Builder setEncryptionPaddings(String... paddings);
        public native Builder setKeySize(int bits);
        public native Builder setUserAuthenticationRequired(boolean required);
        public native Builder setUnlockedDeviceRequired(boolean required);
        public native KeyGenParameterSpec build();
    }
}
