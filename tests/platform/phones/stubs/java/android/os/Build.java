// Signatures from the public reference of the platform; no behaviour.
package android.os;

public class Build {
    public static class VERSION {
        public static final int SDK_INT = Integer.parseInt("0");
    }
    public static class VERSION_CODES {
        public static final int S = 31;
        public static final int TIRAMISU = 33;
    }
}
