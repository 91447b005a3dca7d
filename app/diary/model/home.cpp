#include "app/diary/model/home.h"

namespace ebbline::diaryapp {

Home::Home(std::filesystem::path folder, const clock::Clock& clock, aftercare::Zone zone,
           std::optional<crypto::StretchCost> cost, CourierMaker courier)
    : m_folder(std::move(folder)), m_clock(clock), m_zone(std::move(zone)), m_cost(cost), m_maker(std::move(courier))
{
}

Done Home::create(bytes::View passphrase)
{
    auto diary = patient::Diary::create(m_folder, passphrase, cost(), m_clock, m_zone);
    if (!diary)
        return fail(diary.error());
    m_diary.emplace(std::move(*diary));
    Q_EMIT openChanged();
    return {};
}

Done Home::unlock(bytes::View passphrase)
{
    auto diary = patient::Diary::unlock(m_folder, passphrase, m_clock, m_zone);
    if (!diary)
        return fail(diary.error());
    m_diary.emplace(std::move(*diary));
    Q_EMIT openChanged();
    return {};
}

void Home::lock()
{
    m_courier.reset();
    m_diary.reset();
    Q_EMIT openChanged();
}

Done Home::changePassphrase(bytes::View old, bytes::View fresh)
{
    return vault::changePassphrase(m_folder, vault::Offered::passphrase(old), fresh, cost(), m_clock.readings());
}

Done Home::recover(const vault::RecoveryCode& code, bytes::View fresh)
{
    if (const Done changed = vault::changePassphrase(m_folder, vault::Offered::recoveryCode(code), fresh, cost(), m_clock.readings());
        !changed)
        return changed;
    return unlock(fresh);
}

Result<vault::RecoveryCode> Home::renewRecoveryCode(bytes::View passphrase)
{
    return vault::renewRecoveryCode(m_folder, vault::Offered::passphrase(passphrase), cost(), m_clock.readings());
}

Done Home::erase()
{
    lock();
    return patient::Diary::erase(m_folder);
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
    if (!m_courier && m_diary)
        if (const auto link = m_diary->link())
            m_courier = courierTo(link->hub, link->hubKeyHash);
    return m_courier.get();
}

std::unique_ptr<sync::Courier> Home::courierTo(const std::string& base, const bytes::Array<32>& key) const
{
    return m_maker ? m_maker(base, key) : nullptr;
}

}  // namespace ebbline::diaryapp
