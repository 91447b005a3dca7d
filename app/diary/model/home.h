#pragma once
/// \file
/// The diary while it is open, and the events that keep every page current. Pages share it; none
/// owns it.

#include "app/controls/cost_meter.h"
#include "core/patient/diary.h"
#include "platform/keystore/secret_keeper.h"

#include <QObject>

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <utility>

namespace ebbline::diaryapp {

/// Makes a courier to a hub: base address and pinned key.
using CourierMaker = std::function<std::unique_ptr<sync::Courier>(const std::string&, const bytes::Array<32>&)>;

/// Passphrases come as they were typed; one that the diary drew is understood in every form (vault::passphraseAsDrawn).
class Home : public QObject {
    Q_OBJECT

public:
    /// \param cost  of a passphrase; empty: measured on this device when one is set
    /// \param secrets  key store of this device; null: it has none
    /// \param measure  how the cost is found; empty: vault::calibratedCost()
    Home(std::filesystem::path folder, const clock::Clock& clock, aftercare::Zone zone,
         std::optional<crypto::StretchCost> cost, CourierMaker courier, keystore::SecretKeeper* secrets = nullptr,
         controls::CostMeter::Measure measure = {});

    bool exists() const { return patient::Diary::exists(m_folder); }
    bool isOpen() const { return m_diary.has_value(); }
    Done create(bytes::View passphrase);
    /// Whoever sets a passphrase or a code asks here first, so that the interface does not stand still while the
    /// cost is measured. Locking cancels what waits.
    controls::CostMeter& meter() { return m_meter; }
    /// Once the recovery code was read from its paper, it also binds the passphrase to this device, where that has a key store.
    /// \returns as vault::openDataKey(): Reason::refused if the key store lost its half or does not answer now.
    Done unlock(bytes::View passphrase);
    void lock();

    /// Whether this is her passphrase, asked once more at a grave step; opens nothing.
    /// \returns as vault::openDataKey(); a wrong one counts as an attempt.
    Done prove(bytes::View passphrase) const;
    /// As vault::changePassphrase().
    Done changePassphrase(bytes::View old, bytes::View fresh);
    /// Sets a new passphrase by the recovery code and opens the diary, which binds it anew: whoever typed all of the code has it on paper.
    Done recover(const vault::RecoveryCode& code, bytes::View fresh);
    Result<vault::RecoveryCode> renewRecoveryCode(bytes::View passphrase);
    bool hasRecoveryCode() const { return vault::hasRecoveryCode(m_folder); }
    /// As vault::noteCodeOnPaper(). \pre isOpen()
    Done noteCodeOnPaper() { return vault::noteCodeOnPaper(m_diary->vault(), m_folder); }
    /// There is a recovery code, of which nothing was ever read from paper. \pre isOpen()
    bool isCodeUnread() { return hasRecoveryCode() && !vault::isCodeOnPaper(m_diary->vault(), m_folder); }
    /// The passphrase opens the diary only with what the key store of this device keeps.
    bool isBoundToDevice() const { return vault::isBoundToDevice(m_folder); }
    bool hasKeyStore() const { return m_secrets != nullptr && m_secrets->isThere(); }
    /// The key store is that of a computer's session: the keyring, which may ask for a password of its own.
    bool isHalfWithSession() const { return m_secrets != nullptr && m_secrets->isOfSession(); }
    /// As patient::Diary::erase(); the diary is closed first. \returns also what a key store says that keeps the half of
    /// a bound diary: what nothing is bound to opens nothing, and is not told about.
    Done erase();
    /// The phone is in another time zone.
    void travelTo(const aftercare::Zone& zone);

    patient::Diary& diary() { return *m_diary; }              ///< \pre isOpen()
    const patient::Diary& diary() const { return *m_diary; }  ///< \pre isOpen()
    const clock::Clock& clock() const { return m_clock; }
    clock::Moment now() const { return m_zone.moment(m_clock.now()); }
    const aftercare::Zone& zone() const { return m_zone; }
    /// Whom to call: from the open diary, or what stays readable while locked.
    std::optional<records::Contacts> contacts() const;

    /// A courier to the hub of the clinic as the link names it now, or to a given one; empty if none can be made.
    sync::Courier* courier();
    std::unique_ptr<sync::Courier> courierTo(const std::string& base, const bytes::Array<32>& key) const;

    /// Something in the diary is new.
    void touch() { Q_EMIT changed(); }

Q_SIGNALS:
    void openChanged();
    void changed();
    /// The link names another hub, or another key of it: who uses the courier lets it go.
    void courierGoes();

private:
    std::filesystem::path m_folder;
    const clock::Clock& m_clock;
    aftercare::Zone m_zone;
    /// The half of a bound passphrase that the key store keeps; empty if it is not bound or not at hand.
    std::optional<crypto::Secret> deviceSecret() const;
    void bindToDevice(bytes::View passphrase);
    /// As unlock(). `readFromPaper`: the recovery code was, just now.
    Done open(bytes::View passphrase, bool readFromPaper);

    controls::CostMeter m_meter;
    CourierMaker m_maker;
    keystore::SecretKeeper* m_secrets;
    std::optional<patient::Diary> m_diary;
    std::unique_ptr<sync::Courier> m_courier;
    std::pair<std::string, bytes::Array<32>> m_courierHub;  ///< what it was made from: address and key
};

}  // namespace ebbline::diaryapp
