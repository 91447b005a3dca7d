package invalid.ebbline.diary;

/** Whether the system lets bells be shown. The numbers are those of notifications::SystemLeave. */
final class Leave {
    static final int NOT_ASKED = 1;
    static final int GRANTED = 2;
    static final int DENIED = 3;

    /** From this version on the person is asked (POST_NOTIFICATIONS; Android 13). */
    static final int FIRST_THAT_ASKS = 33;

    private Leave() {}

    /**
     * @param asked whether this program has asked before: the system does not say "not asked yet"
     * @param switchedOn whether notifications of the program, and the channel of the bells, are on
     */
    static int of(int sdk, boolean permitted, boolean asked, boolean switchedOn) {
        if (sdk >= FIRST_THAT_ASKS && !permitted)
            return asked ? DENIED : NOT_ASKED;
        return switchedOn ? GRANTED : DENIED;
    }
}
