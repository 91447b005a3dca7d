#include "core/patient/inside.h"

#include "core/bytes/reader.h"
#include "core/sync/key_change.h"
#include "core/sync/least_version.h"
#include "core/triage/course_curve.h"

namespace ebbline::patient {

namespace {

constexpr const char* noteDraftName = "note-draft";
constexpr const char* announcedName = "key-announced";

}  // namespace

Diary::Diary(std::unique_ptr<Inside> inside) : m_inside(std::move(inside)) {}
Diary::Diary(Diary&&) noexcept = default;
Diary& Diary::operator=(Diary&&) noexcept = default;
Diary::~Diary() = default;

bool Diary::exists(const std::filesystem::path& folder)
{
    return vault::Vault::exists(folder);
}

Result<Diary> Diary::create(const std::filesystem::path& folder, bytes::View passphrase,
                            const crypto::StretchCost& cost, const clock::Clock& clock, aftercare::Zone zone)
{
    auto vault = vault::Vault::create(folder, vault::Vault::Owner::patient, passphrase, cost, clock);
    if (!vault)
        return fail(vault.error());
    return Diary(std::make_unique<Inside>(std::move(*vault), folder, clock, std::move(zone)));
}

Result<Diary> Diary::unlock(const std::filesystem::path& folder, bytes::View passphrase, const clock::Clock& clock,
                            aftercare::Zone zone)
{
    return unlock(folder, vault::Offered::passphrase(passphrase), clock, std::move(zone));
}

Result<Diary> Diary::unlock(const std::filesystem::path& folder, const vault::Offered& offered, const clock::Clock& clock,
                            aftercare::Zone zone)
{
    auto vault = vault::Vault::unlock(folder, offered, clock);
    if (!vault)
        return fail(vault.error());
    if (vault->owner() != vault::Vault::Owner::patient)
        return fail(Reason::invalidState, "vault: it belongs to a clinic's desk");
    auto inside = std::make_unique<Inside>(std::move(*vault), folder, clock, std::move(zone));
    (void)inside->publishContacts();
    return Diary(std::move(inside));
}

Result<vault::OpenInfo> Diary::openInfo(const std::filesystem::path& folder)
{
    return vault::readOpenInfo(folder);
}

const journal::CourseState* Diary::Inside::course() const
{
    const auto& courses = vault.state().courses;
    const auto found = courses.find(courseId());
    return found == courses.end() ? nullptr : &found->second;
}

recovery::CourseId Diary::Inside::courseId() const
{
    recovery::CourseId newest;
    const journal::CourseState* of = nullptr;
    std::size_t opened = 0;
    for (const auto& [id, course] : vault.state().courses) {
        opened += course.opened ? 1 : 0;
        if (course.opened && (!of || course.opened->treated.at > of->opened->treated.at)) {
            of = &course;
            newest = id;
        }
    }
    if (opened < 2)
        return newest;
    // Of several the one that is written to: what is recorded goes into its mailbox, whichever treatment is the newer.
    const auto way = link().value_or(std::nullopt);
    const auto& courses = vault.state().courses;
    const auto linked = way && !way->ended ? courses.find(way->course) : courses.end();
    return linked != courses.end() && linked->second.opened ? linked->first : newest;
}

Result<std::optional<vault::Link>> Diary::Inside::link() const
{
    auto links = vault.links();
    if (!links)
        return fail(links.error());
    const auto inUse = std::ranges::find(*links, false, &vault::Link::ended);
    if (inUse != links->end())
        return std::optional(std::move(*inUse));
    return links->empty() ? std::nullopt : std::optional(std::move(links->front()));
}

Result<std::vector<journal::OperationId>> Diary::Inside::append(const std::vector<records::Body>& bodies, const clock::Moment& entered,
                                                                std::optional<journal::OperationId> supersedes,
                                                                const std::vector<std::string_view>& finished)
{
    const auto found = link();
    if (!found)
        return fail(found.error());
    return vault.append(bodies, entered, *found ? std::optional((*found)->mailbox) : std::nullopt, supersedes, finished);
}

Done Diary::Inside::publishContacts()
{
    const journal::CourseState* current = course();
    if (!current)
        return {};
    const vault::OpenInfo info{current->opened->contacts, current->opened->treated};
    if (const auto known = vault::readOpenInfo(folder); known && *known == info)
        return {};
    return vault::writeOpenInfo(folder, info);
}

bool Diary::joined() const { return m_inside->course() != nullptr; }
bool Diary::linked() const { return link().has_value(); }
const records::CourseOpened& Diary::course() const { return *m_inside->course()->opened; }

bool Diary::replaced() const
{
    const auto found = link();
    return found && found->ended;
}

bool Diary::tooOld() const
{
    const auto found = link();
    return found && !found->ended && (sync::isTooOld(m_inside->vault, found->clinicRoot) || m_inside->vault.kept(sync::newerStatementName(found->mailbox)));
}

std::optional<sync::LeftBehind> Diary::leftBehind() const
{
    const auto found = link();
    return found && found->ended ? sync::leftBehind(m_inside->vault, found->mailbox).value_or(std::nullopt) : std::nullopt;
}

std::optional<vault::Link> Diary::link() const { return m_inside->link().value_or(std::nullopt); }

void Diary::travelTo(aftercare::Zone zone) { m_inside->zone = std::move(zone); }
vault::Vault& Diary::vault() { return m_inside->vault; }

std::vector<records::MessageWritten> Diary::messages() const
{
    const journal::CourseState* course = m_inside->course();
    return course ? course->messages : std::vector<records::MessageWritten>{};
}

std::optional<clock::Moment> Diary::readAt(const records::MessageId& message) const
{
    const journal::CourseState* course = m_inside->course();
    if (!course)
        return {};
    const auto found = course->reads.find(message);
    return found == course->reads.end() ? std::nullopt : std::optional(found->second.at);
}

Done Diary::readMessages()
{
    const journal::CourseState* course = m_inside->course();
    if (!course)
        return {};
    std::vector<records::Body> bodies;
    for (const records::MessageWritten& message : course->messages)
        if (!message.by.empty() && !course->reads.contains(message.message))
            bodies.push_back(records::MessageRead{course->opened->course, message.message, m_inside->now()});
    if (bodies.empty())
        return {};
    const auto appended = m_inside->append(bodies, m_inside->now());
    return appended ? Done{} : Done(fail(appended.error()));
}

Done Diary::writeMessage(const std::string& text)
{
    const journal::CourseState* course = m_inside->course();
    if (!course)
        return fail(Reason::invalidState, "message: no clinic has been joined");
    if (text.empty())
        return fail(Reason::notEnough, "message: it is empty");
    const auto appended = m_inside->append(
        {records::MessageWritten{course->opened->course, records::MessageId{crypto::randomArray<16>()}, text, {},
                                 m_inside->now()}},
        m_inside->now(), {}, {noteDraftName});
    return appended ? Done{} : Done(fail(appended.error()));
}

std::string Diary::noteDraft() const
{
    const auto kept = m_inside->vault.kept(noteDraftName);
    return kept ? std::string(kept->begin(), kept->end()) : std::string();
}

Done Diary::keepNoteDraft(const std::string& text) { return m_inside->vault.keep(noteDraftName, bytes::viewOf(text)); }

curves::Curve Diary::curve(const recovery::Stream& stream) const
{
    const journal::CourseState* course = m_inside->course();
    return triage::courseCurve(course ? *course : journal::CourseState{}, stream);
}

/// Which key this mailbox was told of is kept, so that a phone that is paired again tells its newest there as well.
Done Diary::Inside::announceKey()
{
    const journal::CourseState* current = course();
    const auto found = link();
    if (!found)
        return fail(found.error());
    if (!current || !*found || (*found)->ended)
        return {};
    const auto due = sync::isKeyDue(vault);
    if (!due)
        return fail(due.error());
    const std::uint32_t newest = vault.epochNumber() + (*due ? 1 : 0);
    const bytes::Bytes now = bytes::Writer().raw((*found)->mailbox.view()).u32(newest).bytes();
    const auto told = vault.kept(announcedName);
    if (!told && told.error().reason != Reason::notFound)
        return fail(told.error());
    // The first key went with the pairing.
    if (newest == 1 || (told && *told == now))
        return {};
    if (const Done announced = vault.announceKey(current->opened->course, (*found)->mailbox, this->now(), *due); !announced)
        return announced;
    return vault.keep(announcedName, now);
}

void Diary::syncNow(sync::Courier& courier, std::function<void(sync::Report)> done)
{
    Inside* const inside = m_inside.get();
    const Done announced = inside->announceKey();
    sync::run(inside->vault, courier, [inside, announced, done = std::move(done)](sync::Report report) {
        (void)inside->publishContacts();
        // Its keys hold up nothing that the patient wrote.
        const Done kept = announced ? sync::destroyOldKeys(inside->vault) : announced;
        if (!kept && !report.problem)
            report.problem = kept.error();
        done(report);
    });
}

}  // namespace ebbline::patient
