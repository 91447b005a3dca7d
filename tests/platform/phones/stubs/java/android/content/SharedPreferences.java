// Signatures from the public reference of the platform; no behaviour.
package android.content;

public interface SharedPreferences {
    String getString(String key, String otherwise);
    Editor edit();
    interface Editor {
        Editor putString(String key, String value);
        boolean commit();
    }
}
