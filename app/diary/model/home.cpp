#include "app/diary/model/home.h"

namespace ebbline::diaryapp {

Home::Home(std::filesystem::path folder, const clock::Clock& clock, aftercare::Zone zone, crypto::StretchCost cost,
           CourierMaker courier)
    : m_folder(std::move(folder)), m_clock(clock), m_zone(std::move(zone)), m_cost(cost), m_maker(std::move(courier))
{
}

Done Home::create(bytes::View passphrase)
{
    auto diary = patient::Diary::create(m_folder, passphrase, m_cost, m_clock, m_zone);
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
