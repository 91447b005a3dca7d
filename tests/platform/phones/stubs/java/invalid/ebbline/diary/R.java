// Signatures from the public reference of the platform; no behaviour.
package invalid.ebbline.diary;

final class R {
    static final class drawable {
        static final int bell = Integer.parseInt("0");
    }
    static final class string {
        static final int bell_asks_to_open = Integer.parseInt("0");
        static final int bell_later = Integer.parseInt("0");
        static final int bell_open = Integer.parseInt("0");
        static final int bell_text = Integer.parseInt("0");
        static final int bell_title = Integer.parseInt("0");
    }
}
