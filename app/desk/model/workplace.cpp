#include "app/desk/model/workplace.h"

#include "app/desk/model/role_words.h"
#include "app/desk/model/words.h"
#include "app/desk/photos/invented_photos.h"
#include "core/desk/invented_past.h"

#include <QByteArray>

namespace ebbline::deskapp {

namespace {

constexpr int demoCourses = 56;

template <typename Id>
QString hexOf(const Id& id)
{
    if (id.isNull()) {
        return {};
    }
    const QByteArray raw(reinterpret_cast<const char*>(id.value.data()), static_cast<qsizetype>(id.value.size()));
    return QString::fromLatin1(raw.toHex());
}

template <typename Id>
Id idOf(const QString& key)
{
    const auto raw = QByteArray::fromHex(key.toLatin1());
    Id id;
    if (key.size() != 32 || raw.size() != static_cast<qsizetype>(id.value.size())) {
        return {};
    }
    std::copy(raw.begin(), raw.end(), id.value.begin());
    return id;
}

}  // namespace

QString keyOf(const recovery::CourseId& course)
{
    return hexOf(course);
}

QString keyOf(const recovery::PatientId& patient)
{
    return hexOf(patient);
}

QString keyOf(const recovery::EntryId& entry)
{
    return hexOf(entry);
}

recovery::CourseId courseFromKey(const QString& key)
{
    return idOf<recovery::CourseId>(key);
}

recovery::PatientId patientFromKey(const QString& key)
{
    return idOf<recovery::PatientId>(key);
}

Workplace::Workplace(std::filesystem::path folder, const clock::Clock& clock, aftercare::Zone zone, QObject* parent)
    : QObject(parent), m_folder(std::move(folder)), m_clock(clock), m_zone(std::move(zone))
{
}

Done Workplace::create(bytes::View passphrase, const crypto::StretchCost& cost)
{
    auto made = desk::Desk::create(m_folder, passphrase, cost, m_clock, m_zone);
    if (!made) {
        return fail(made.error());
    }
    m_desk.emplace(std::move(*made));
    Q_EMIT openChanged();
    Q_EMIT changed();
    return {};
}

Done Workplace::unlock(bytes::View passphrase)
{
    auto opened = desk::Desk::unlock(m_folder, passphrase, m_clock, m_zone);
    if (!opened) {
        return fail(opened.error());
    }
    m_desk.emplace(std::move(*opened));
    Q_EMIT openChanged();
    Q_EMIT changed();
    return {};
}

Done Workplace::openDemo()
{
    if (m_desk) {
        return fail(Reason::invalidState, "demo: a vault is open");
    }
    auto folder = std::make_unique<QTemporaryDir>();
    if (!folder->isValid()) {
        return fail(Reason::storageFailed, "demo: no folder for it");
    }
    // Nobody needs to know the passphrase: the folder does not outlive the demo.
    constexpr crypto::StretchCost quick{1, 8 * 1024};
    const auto passphrase = crypto::randomArray<32>();
    const auto place = std::filesystem::path(folder->path().toStdString()) / "vault";
    if (const auto invented = inventClinic(place, passphrase, quick); !invented) {
        return invented;
    }
    auto made = desk::Desk::unlock(place, passphrase, m_clock, m_zone);
    if (!made) {
        return fail(made.error());
    }
    made->setPerson("Ilan Osei");
    m_demo = std::move(folder);
    m_desk.emplace(std::move(*made));
    Q_EMIT openChanged();
    Q_EMIT changed();
    return {};
}

Done Workplace::inventClinic(const std::filesystem::path& place, bytes::View passphrase, const crypto::StretchCost& quick)
{
    // A clock of its own, since one phone was heard of some days ago.
    clock::ManualClock clock(m_clock.now());
    auto made = desk::Desk::create(place, passphrase, quick, clock, m_zone);
    if (!made) {
        return fail(made.error());
    }
    made->setPerson("Ilan Osei");
    const auto described = made->describeClinic({{"Practice at the Quay (invented)", "+00 555 0100", "+00 555 0199", "112"},
                                                 m_zone.name(), {"Ilan Osei", "Dr Mara Lindqvist", "Theo Marsh", "Nia Calder"}});
    if (!described) {
        return described;
    }
    if (const auto past = desk::addInventedPast(*made, m_zone, {.courses = demoCourses, .now = now()}); !past) {
        return past;
    }
    if (const auto today = desk::addInventedToday(*made, m_zone, now()); !today) {
        return today;
    }
    if (const auto photos = addInventedPhotos(*made); !photos) {
        return photos;
    }
    using records::Role;
    for (const auto& [person, role] : {std::pair("Ilan Osei", Role::inCharge), std::pair("Dr Mara Lindqvist", Role::practitioner),
                                       std::pair("Theo Marsh", Role::onCall), std::pair("Nia Calder", Role::assistant)}) {
        if (const auto given = made->giveRole(person, role); !given) {
            return given;
        }
    }
    constexpr std::chrono::hours lastHeard{5 * 24 - 3};
    clock.set(m_clock.now() - lastHeard);
    return desk::hearInventedPhones(*made);
}

void Workplace::lock()
{
    if (m_desk) {
        m_desk.reset();
        m_demo.reset();
        Q_EMIT openChanged();
    }
}

QString Workplace::patientName(const recovery::CourseId& course)
{
    const auto& courses = state().courses;
    const auto found = courses.find(course);
    if (found == courses.end() || !found->second.treatment) {
        return {};
    }
    const auto patient = state().patients.find(found->second.treatment->treatment.patient);
    return patient == state().patients.end() ? QString() : QString::fromStdString(patient->second.name);
}

bool Workplace::mayDo(records::Task task)
{
    const auto barred = barredText(*m_desk, task);
    if (!barred.isEmpty()) {
        Q_EMIT failed(barred);
    }
    return barred.isEmpty();
}

bool Workplace::settle(const Done& outcome)
{
    Q_EMIT changed();
    if (!outcome) {
        Q_EMIT failed(errorText(outcome.error()));
    }
    return outcome.has_value();
}

}  // namespace ebbline::deskapp
