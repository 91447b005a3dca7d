#include "core/desk/inside.h"

#include "core/bytes/reader.h"

#include <algorithm>

namespace ebbline::desk {

namespace {

constexpr const char* hubName = "hub";

}  // namespace

Desk::Desk(std::unique_ptr<Inside> inside) : m_inside(std::move(inside)) {}
Desk::Desk(Desk&&) noexcept = default;
Desk& Desk::operator=(Desk&&) noexcept = default;
Desk::~Desk() = default;

bool Desk::exists(const std::filesystem::path& folder)
{
    return vault::Vault::exists(folder);
}

Result<Desk> Desk::create(const std::filesystem::path& folder, bytes::View passphrase, const crypto::StretchCost& cost,
                          const clock::Clock& clock, aftercare::Zone zone)
{
    auto vault = vault::Vault::create(folder, vault::Vault::Owner::clinic, passphrase, cost, clock);
    if (!vault)
        return fail(vault.error());
    return Desk(std::make_unique<Inside>(std::move(*vault), folder, clock, std::move(zone)));
}

Result<Desk> Desk::unlock(const std::filesystem::path& folder, bytes::View passphrase, const clock::Clock& clock,
                          aftercare::Zone zone)
{
    auto vault = vault::Vault::unlock(folder, passphrase, clock);
    if (!vault)
        return fail(vault.error());
    if (vault->owner() != vault::Vault::Owner::clinic)
        return fail(Reason::invalidState, "vault: it belongs to a patient's diary");
    return Desk(std::make_unique<Inside>(std::move(*vault), folder, clock, std::move(zone)));
}

void Desk::setPerson(std::string name) { m_inside->person = std::move(name); }
const std::string& Desk::person() const { return m_inside->person; }
clock::Moment Desk::now() const { return m_inside->now(); }
vault::Vault& Desk::vault() { return m_inside->vault; }

Done Desk::Inside::append(const records::Body& body, const std::optional<envelope::MailboxId>& mailbox,
                          const std::vector<std::string_view>& finished)
{
    const auto appended = vault.append({body}, now(), mailbox, {}, finished);
    return appended ? Done{} : Done(fail(appended.error()));
}

Done Desk::describeClinic(const records::ClinicDescribed& clinic)
{
    // Whom patients call is the last thing that whoever finds the desk open should be able to change.
    const auto& known = m_inside->vault.state().clinic;
    const bool numbers = known && (known->contacts.clinicPhone != clinic.contacts.clinicPhone
                                   || known->contacts.onCallPhone != clinic.contacts.onCallPhone
                                   || known->contacts.emergencyNumber != clinic.contacts.emergencyNumber);
    const bool people = known && (known->people != clinic.people || known->contacts.clinicName != clinic.contacts.clinicName);
    if (people)
        if (const Done may = m_inside->needsTask(records::Task::people); !may)
            return may;
    if (people && !m_inside->vault.state().roles.empty() && !m_inside->leavesSomebody(clinic.people, {}, records::Role::inCharge))
        return fail(Reason::notEnough, "people: somebody has to remain who may name people");
    if (numbers)
        if (const Done may = m_inside->needsTask(records::Task::numbers); !may)
            return may;
    if (numbers)
        if (const Done may = m_inside->needsStep(); !may)
            return may;
    const Done described = people ? m_inside->appendNamed(records::Task::people, {}, clinic) : m_inside->append(clinic);
    if (!described || !numbers)
        return described;
    return m_inside->stepTaken(records::Step::numbersChanged, {}, {});
}

std::optional<records::ClinicDescribed> Desk::clinic() const
{
    return m_inside->vault.state().clinic;
}

Done Desk::limitDose(const anaesthesia::Limits& limits)
{
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "limits: nobody is named at the desk");
    if (const Done may = m_inside->needsTask(records::Task::protocol); !may)
        return may;
    if (const Done checked = anaesthesia::check(limits); !checked)
        return checked;
    return m_inside->append(records::DoseLimited{limits, m_inside->person, m_inside->now()});
}

anaesthesia::Limits Desk::doseLimits() const
{
    const auto& limited = m_inside->vault.state().doseLimited;
    return limited ? limited->limits : anaesthesia::Limits{};
}

std::optional<records::DoseLimited> Desk::doseLimited() const
{
    return m_inside->vault.state().doseLimited;
}

Result<recovery::PatientId> Desk::registerPatient(const std::string& name, const std::string& phone,
                                                  const std::string& language)
{
    if (name.empty())
        return fail(Reason::notEnough, "patient: a name is needed");
    const recovery::PatientId id{crypto::randomArray<16>()};
    if (const Done done = m_inside->append(records::PatientRegistered{id, name, phone, language}); !done)
        return fail(done.error());
    return id;
}

std::vector<records::PatientRegistered> Desk::patients() const
{
    std::vector<records::PatientRegistered> patients;
    for (const auto& [id, patient] : m_inside->vault.state().patients)
        patients.push_back(patient);
    std::stable_sort(patients.begin(), patients.end(), [](const auto& a, const auto& b) { return a.name < b.name; });
    return patients;
}

recovery::Treatment Desk::blankTreatment(const recovery::PatientId& patient) const
{
    recovery::Treatment treatment;
    treatment.course = recovery::CourseId{crypto::randomArray<16>()};
    treatment.patient = patient;
    treatment.at = m_inside->now();
    return treatment;
}

Done Desk::setHub(const std::string& hostAndPort, bool tls, const bytes::Array<32>& keyHash)
{
    if (hostAndPort.empty() || hostAndPort.size() > 63)
        return fail(Reason::outOfRange, "hub: want host[:port] of at most 63 characters");
    return m_inside->vault.keep(
        hubName, bytes::Writer().u8(tls ? 1 : 0).raw(keyHash).block(bytes::viewOf(hostAndPort)).bytes());
}

std::optional<Desk::Hub> Desk::hub() const
{
    const auto stored = m_inside->vault.kept(hubName);
    if (!stored)
        return std::nullopt;
    bytes::Reader reader(*stored);
    Hub hub;
    hub.tls = reader.u8() == 1;
    hub.keyHash = reader.array<32>();
    const bytes::View host = reader.block(63);
    hub.host.assign(host.begin(), host.end());
    return reader.atEnd() ? std::optional(hub) : std::nullopt;
}

void Desk::syncNow(sync::Courier& courier, std::function<void(sync::Report)> done)
{
    Inside* const inside = m_inside.get();
    inside->tellHub(courier, [inside, &courier, done = std::move(done)](const std::optional<Error>& problem) {
        if (problem) {
            sync::Report stopped;
            stopped.problem = problem;
            return done(stopped);
        }
        sync::run(inside->vault, courier, [inside, done](sync::Report report) {
            // A hub that refuses some of it keeps nobody from a fresh key; without a network a colleague may have begun one.
            if (!report.problem || report.problem->reason != Reason::unreachable)
                if (const Done kept = inside->keepKeys(); !kept && !report.problem)
                    report.problem = kept.error();
            done(report);
        });
    });
}

}  // namespace ebbline::desk
