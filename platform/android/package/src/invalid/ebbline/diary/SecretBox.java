package invalid.ebbline.diary;

import android.os.Build;
import android.security.keystore.KeyGenParameterSpec;
import android.security.keystore.KeyPermanentlyInvalidatedException;
import android.security.keystore.KeyProperties;
import java.io.File;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.SecureRandom;
import java.security.UnrecoverableKeyException;
import java.util.Arrays;
import javax.crypto.AEADBadTagException;
import javax.crypto.Cipher;
import javax.crypto.KeyGenerator;
import javax.crypto.SecretKey;
import javax.crypto.spec.GCMParameterSpec;

/**
 * 32 secret bytes that only this phone gives out: sealed under an AES key that the phone's key store
 * makes and never shows (Android Keystore), in a file that no backup takes along. They are mixed into the
 * passphrase's key and open nothing alone (docs/formats/vault.md). Why the key asks for no finger and no
 * screen lock: docs/decisions/0018-key-store-beside-the-passphrase.md.
 *
 * Called by platform/android/android_keeper.cpp. The first byte of an answer says how it went; 32 follow
 * when it is DONE.
 */
public final class SecretBox {
    static final byte DONE = 0;
    static final byte NOTHING_THERE = 1;
    static final byte LOST = 2; // the file is there, the key that opens it is not
    static final byte FAILED = 3;
    static final byte ALREADY_THERE = 4;

    private static final String STORE = "AndroidKeyStore";
    private static final String KEY = "diary-secret";
    private static final String CIPHER = "AES/GCM/NoPadding";
    private static final int NONCE = 12;
    private static final int TAG_BITS = 128;
    static final int SIZE = 32;

    /** Before this version the mark "only while unlocked" lost keys of phones without a screen lock. */
    private static final int FIRST_WITH_SOUND_LOCK_MARK = 35;

    private SecretBox() {}

    public static byte[] fetch() {
        final File file = file();
        if (!file.exists())
            return new byte[] {NOTHING_THERE};
        try {
            final KeyStore store = open();
            if (!store.containsAlias(KEY))
                return new byte[] {LOST};
            final byte[] sealed = Files.readAllBytes(file.toPath());
            if (sealed.length <= NONCE)
                return new byte[] {LOST};
            final Cipher cipher = Cipher.getInstance(CIPHER);
            cipher.init(Cipher.DECRYPT_MODE, store.getKey(KEY, null), new GCMParameterSpec(TAG_BITS, sealed, 0, NONCE));
            return answer(cipher.doFinal(sealed, NONCE, sealed.length - NONCE));
        } catch (KeyPermanentlyInvalidatedException | AEADBadTagException | UnrecoverableKeyException gone) {
            return new byte[] {LOST};
        } catch (GeneralSecurityException | IOException | RuntimeException problem) {
            return new byte[] {FAILED};
        }
    }

    /** A fresh one, never over an earlier one, even one that is lost: a diary may still be bound to it. */
    public static byte[] make() {
        if (file().exists())
            return new byte[] {ALREADY_THERE};
        final byte[] secret = new byte[SIZE];
        new SecureRandom().nextBytes(secret);
        try {
            final Cipher cipher = Cipher.getInstance(CIPHER);
            cipher.init(Cipher.ENCRYPT_MODE, makeKey()); // the key store chooses the nonce
            final byte[] hidden = cipher.doFinal(secret);
            final byte[] nonce = cipher.getIV();
            if (nonce.length != NONCE)
                return new byte[] {FAILED};
            final byte[] sealed = Arrays.copyOf(nonce, NONCE + hidden.length);
            System.arraycopy(hidden, 0, sealed, NONCE, hidden.length);
            write(file(), sealed);
            // Only what can be read back may carry a diary.
            final byte[] back = fetch();
            final boolean same = back.length == 1 + SIZE && Arrays.equals(Arrays.copyOfRange(back, 1, back.length), secret);
            return same ? back : new byte[] {FAILED};
        } catch (GeneralSecurityException | IOException | RuntimeException problem) {
            return new byte[] {FAILED};
        } finally {
            Arrays.fill(secret, (byte) 0);
        }
    }

    public static boolean forget() {
        try {
            open().deleteEntry(KEY); // first: what is left opens for nobody
            Files.deleteIfExists(file().toPath());
            return true;
        } catch (GeneralSecurityException | IOException | RuntimeException problem) {
            return false;
        }
    }

    private static SecretKey makeKey() throws GeneralSecurityException {
        final KeyGenParameterSpec.Builder spec =
                new KeyGenParameterSpec.Builder(KEY, KeyProperties.PURPOSE_ENCRYPT | KeyProperties.PURPOSE_DECRYPT)
                        .setBlockModes(KeyProperties.BLOCK_MODE_GCM)
                        .setEncryptionPaddings(KeyProperties.ENCRYPTION_PADDING_NONE)
                        .setKeySize(256)
                        .setUserAuthenticationRequired(false);
        if (Build.VERSION.SDK_INT >= FIRST_WITH_SOUND_LOCK_MARK)
            spec.setUnlockedDeviceRequired(true);
        final KeyGenerator maker = KeyGenerator.getInstance(KeyProperties.KEY_ALGORITHM_AES, STORE);
        maker.init(spec.build());
        return maker.generateKey();
    }

    private static KeyStore open() throws GeneralSecurityException, IOException {
        final KeyStore store = KeyStore.getInstance(STORE);
        store.load(null);
        return store;
    }

    private static File file() {
        return new File(Bridge.context().getNoBackupFilesDir(), "diary-secret");
    }

    private static void write(File file, byte[] bytes) throws IOException {
        final File fresh = new File(file.getPath() + ".new");
        try (FileOutputStream out = new FileOutputStream(fresh)) {
            out.write(bytes);
            out.getFD().sync();
        }
        if (!fresh.renameTo(file))
            throw new IOException("the sealed secret could not be put in place");
    }

    private static byte[] answer(byte[] secret) {
        if (secret.length != SIZE)
            return new byte[] {LOST};
        final byte[] out = new byte[1 + SIZE];
        out[0] = DONE;
        System.arraycopy(secret, 0, out, 1, SIZE);
        Arrays.fill(secret, (byte) 0);
        return out;
    }
}
