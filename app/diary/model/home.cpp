#include "app/diary/model/home.h"

#include "core/vault/drawn_passphrase.h"

namespace ebbline::diaryapp {

namespace {

bytes::View viewOf(const std::optional<crypto::Secret>& secret)
{
    return secret ? secret->view() : bytes::View();
}

/// What was typed; in the form in which it was drawn, if the diary drew it. Wiped when it goes.
class Typed {
public:
    explicit Typed(bytes::View words)
        : m_text(vault::passphraseAsDrawn({reinterpret_cast<const char*>(words.data()), words.size()}))
    {
    }
    ~Typed() { crypto::wipe({reinterpret_cast<std::uint8_t*>(m_text.data()), m_text.size()}); }
    Typed(const Typed&) = delete;
    Typed& operator=(const Typed&) = delete;
    bytes::View view() const { return bytes::viewOf(m_text); }

private:
    std::string m_text;
};

}  // namespace

Home::Home(std::filesystem::path folder, const clock::Clock& clock, aftercare::Zone zone,
           std::optional<crypto::StretchCost> cost, CourierMaker courier, keystore::SecretKeeper* secrets,
           controls::CostMeter::Measure measure)
    : m_folder(std::move(folder)), m_clock(clock), m_zone(std::move(zone)),
      m_meter(cost, measure ? std::move(measure) : [&clock] { return vault::calibratedCost(clock); }), m_maker(std::move(courier)), m_secrets(secrets)
{
}

std::optional<crypto::Secret> Home::deviceSecret() const
{
    if (m_secrets == nullptr || !vault::isBoundToDevice(m_folder))
        return std::nullopt;
    Result<crypto::Secret> secret = m_secrets->fetch();
    return secret ? std::optional(std::move(*secret)) : std::nullopt;
}

void Home::bindToDevice(bytes::View passphrase)
{
    if (vault::isBoundToDevice(m_folder) || !hasKeyStore())
        return;
    // Nothing is bound to what was kept before, so what was lost may be made anew.
    Result<crypto::Secret> secret = m_secrets->fetch();
    if (!secret && secret.error().reason == Reason::damaged && m_secrets->forget())
        secret = m_secrets->make();
    else if (!secret && secret.error().reason == Reason::notFound)
        secret = m_secrets->make();
    // The diary opens without it too: the next unlocking tries again. What the passphrase costs already is the least,
    // so that opening measures nothing.
    if (secret)
        (void)vault::changePassphrase(m_folder, vault::Offered::passphrase(passphrase), passphrase, crypto::stretchFloor, m_clock.readings(),
                                      secret->view());
}

Done Home::create(bytes::View passphrase)
{
    // A key store may outlive the files of a program that was removed.
    if (m_secrets != nullptr && !exists())
        (void)m_secrets->forget();
    auto diary = patient::Diary::create(m_folder, Typed(passphrase).view(), m_meter.now(), m_clock, m_zone);
    if (!diary)
        return fail(diary.error());
    m_diary.emplace(std::move(*diary));
    Q_EMIT openChanged();
    return {};
}

Done Home::unlock(bytes::View passphrase)
{
    return open(passphrase, false);
}

Done Home::open(bytes::View passphrase, bool readFromPaper)
{
    const Typed typed(passphrase);
    const auto secret = deviceSecret();
    auto diary = patient::Diary::unlock(m_folder, vault::Offered::passphrase(typed.view(), viewOf(secret)), m_clock, m_zone);
    if (!diary)
        return fail(diary.error());
    // What cannot be noted binds nothing either; the diary opens without.
    if (readFromPaper)
        (void)vault::noteCodeOnPaper(diary->vault(), m_folder);
    // A half that the key store loses is a diary that is lost, but for the code on paper.
    if (vault::isCodeOnPaper(diary->vault(), m_folder))
        bindToDevice(typed.view());
    m_diary.emplace(std::move(*diary));
    Q_EMIT openChanged();
    return {};
}

void Home::lock()
{
    m_meter.cancel();
    m_courier.reset();
    m_diary.reset();
    Q_EMIT openChanged();
}

Done Home::changePassphrase(bytes::View old, bytes::View fresh)
{
    const Typed typed(old);
    const auto secret = deviceSecret();
    return vault::changePassphrase(m_folder, vault::Offered::passphrase(typed.view(), viewOf(secret)), Typed(fresh).view(), m_meter.now(),
                                   m_clock.readings(), viewOf(secret));
}

Done Home::prove(bytes::View passphrase) const
{
    const Typed typed(passphrase);
    const auto secret = deviceSecret();
    const auto dataKey = vault::openDataKey(m_folder, vault::Offered::passphrase(typed.view(), viewOf(secret)), m_clock.readings());
    return dataKey ? Done{} : Done(fail(dataKey.error()));
}

Done Home::recover(const vault::RecoveryCode& code, bytes::View fresh)
{
    if (const Done changed = vault::changePassphrase(m_folder, vault::Offered::recoveryCode(code), Typed(fresh).view(), m_meter.now(), m_clock.readings());
        !changed)
        return changed;
    return open(fresh, true);
}

Result<vault::RecoveryCode> Home::renewRecoveryCode(bytes::View passphrase)
{
    const Typed typed(passphrase);
    const auto secret = deviceSecret();
    return vault::renewRecoveryCode(m_folder, vault::Offered::passphrase(typed.view(), viewOf(secret)), m_meter.now(), m_clock.readings());
}

Done Home::erase()
{
    lock();
    const bool bound = isBoundToDevice();
    const Done erased = patient::Diary::erase(m_folder);
    if (!erased || m_secrets == nullptr)
        return erased;
    const Done forgotten = m_secrets->forget();
    return bound ? forgotten : Done{};
}

void Home::travelTo(const aftercare::Zone& zone)
{
    m_zone = zone;
    if (m_diary)
        m_diary->travelTo(zone);
    Q_EMIT changed();
}

std::optional<records::Contacts> Home::contacts() const
{
    if (m_diary && m_diary->joined())
        return m_diary->course().contacts;
    const auto info = patient::Diary::openInfo(m_folder);
    return info ? std::optional(info->contacts) : std::nullopt;
}

sync::Courier* Home::courier()
{
    const auto link = m_diary ? m_diary->link() : std::nullopt;
    if (!link)
        return m_courier.get();
    if (const std::pair named(link->hub, link->hubKeyHash); !m_courier || named != m_courierHub) {
        if (m_courier)
            Q_EMIT courierGoes();
        m_courier = courierTo(named.first, named.second);
        m_courierHub = named;
    }
    return m_courier.get();
}

std::unique_ptr<sync::Courier> Home::courierTo(const std::string& base, const bytes::Array<32>& key) const
{
    return m_maker ? m_maker(base, key) : nullptr;
}

}  // namespace ebbline::diaryapp
