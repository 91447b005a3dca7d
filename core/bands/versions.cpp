#include "core/bands/versions.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/clock/iso8601.h"
#include "core/crypto/crypto.h"

#include <algorithm>
#include <bit>
#include <tuple>

namespace ebbline::bands {

namespace {

constexpr std::string_view groundsName = "ebbline band grounds 2";
constexpr std::string_view contentName = "ebbline band content 2";
constexpr std::string_view broughtName = "ebbline band brought 1";
constexpr std::size_t shownDigits = 8;  // of the hash, in a version's name

void write(bytes::Writer& writer, double number)
{
    writer.u64(std::bit_cast<std::uint64_t>(number));
}

void write(bytes::Writer& writer, const Movement& movement)
{
    for (const double variance : {movement.noise, movement.drift, movement.start})
        write(writer, variance);
}

bytes::Array<32> contentDigest(const Band& band)
{
    bytes::Writer writer;
    writer.raw(bytes::viewOf(contentName));
    for (const auto& days : band.table())
        for (const Distribution& distribution : days)
            for (const double probability : distribution)
                write(writer, probability);
    for (const Movement& movement : band.movements().score)
        write(writer, movement);
    write(writer, band.movements().sides);
    write(writer, band.movements().sums);
    return crypto::hash256(writer.bytes());
}

void sortById(std::vector<Taught>& courses)
{
    std::sort(courses.begin(), courses.end(), [](const Taught& a, const Taught& b) { return a.course < b.course; });
}

}  // namespace

bytes::Bytes groundsOf(std::span<const Taught> courses, const Band& seed)
{
    std::vector<Taught> sorted(courses.begin(), courses.end());
    sortById(sorted);
    bytes::Writer writer;
    writer.raw(bytes::viewOf(groundsName)).raw(contentDigest(seed)).u32(static_cast<std::uint32_t>(sorted.size()));
    for (Taught& course : sorted) {
        std::sort(course.days.begin(), course.days.end(), [](const DayScore& a, const DayScore& b) {
            return std::tie(a.symptom, a.side, a.day, a.points) < std::tie(b.symptom, b.side, b.day, b.points);
        });
        writer.raw(course.course.view()).raw(course.told).u32(static_cast<std::uint32_t>(course.days.size()));
        for (const DayScore& score : course.days)
            writer.u8(static_cast<std::uint8_t>(score.symptom))
                .u8(static_cast<std::uint8_t>(score.side))
                .u16(static_cast<std::uint16_t>(score.day + 32768))
                .u8(static_cast<std::uint8_t>(score.points));
    }
    return std::move(writer).bytes();
}

std::string groundsHash(std::span<const Taught> courses, const Band& seed)
{
    return bytes::toHex(crypto::hash256(groundsOf(courses, seed)));
}

std::string contentHash(const Band& band)
{
    return bytes::toHex(contentDigest(band));
}

Result<Learned> learnVersion(std::vector<Taught> courses, std::map<Refusal, std::int32_t> refused, const Band& seed,
                             const Movement& sides, std::string by, const clock::Moment& at)
{
    if (courses.size() > mostCourses)
        return fail(Reason::tooLarge, "courses: at most " + std::to_string(mostCourses) + " behind one version");
    const auto coverage = crossValidate(courses, seed);
    if (!coverage)
        return fail(coverage.error());
    // One order, whatever the caller's: the movements are found by sums that depend on it.
    sortById(courses);
    std::vector<TaughtCourse> days;
    Learned learned;
    for (const Taught& course : courses) {
        days.push_back(course.days);
        learned.courses.push_back(course.course);
    }
    Provenance provenance;
    provenance.learnedOn = clock::toIso8601(at.day());
    provenance.hash = groundsHash(courses, seed);
    provenance.version = "clinic-" + provenance.learnedOn + "-" + provenance.hash.substr(0, shownDigits);
    auto band = learnBand(days, seed, std::move(provenance), sides);
    if (!band)
        return fail(band.error());
    learned.band = *band;
    learned.seed = seed.provenance().version;
    learned.refused = std::move(refused);
    learned.coverage = *coverage;
    learned.by = std::move(by);
    learned.at = at;
    return learned;
}

Result<Learned> broughtVersion(const Band& band, bool ofOthersAlone, std::vector<Taught> unseen, std::string by,
                               const clock::Moment& at)
{
    if (unseen.size() > mostCourses)
        return fail(Reason::tooLarge, "courses: at most " + std::to_string(mostCourses) + " to check one version on");
    Provenance provenance = band.provenance();
    if (provenance.hash.size() != 64 || provenance.hash.find_first_not_of("0123456789abcdef") != std::string::npos)
        return fail(Reason::malformed, "band.hash: want the 64 digits of what stands behind a band");
    const auto coverage = coverageOf(unseen, band);
    if (!coverage)
        return fail(coverage.error());
    sortById(unseen);
    Learned learned;
    bytes::Writer check;
    check.raw(bytes::viewOf(broughtName)).raw(contentDigest(band)).u8(ofOthersAlone ? 1 : 0);
    for (const Taught& course : unseen) {
        learned.courses.push_back(course.course);
        check.raw(course.course.view()).raw(course.told);
    }
    learned.brought = Brought{provenance.version, ofOthersAlone};
    provenance.version = "brought-" + clock::toIso8601(at.day()) + "-" + bytes::toHex(crypto::hash256(check.bytes())).substr(0, shownDigits);
    auto named = Band::create(std::move(provenance), band.table(), band.movements());
    if (!named)
        return fail(named.error());
    learned.band = *named;
    learned.coverage = *coverage;
    learned.by = std::move(by);
    learned.at = at;
    return learned;
}

History::History() : m_inUse{seedBand().provenance().version} {}

Done History::add(Learned learned)
{
    const Provenance& provenance = learned.band.provenance();
    if (provenance.version.empty() || provenance.hash.empty()
        || (!learned.brought && static_cast<std::size_t>(provenance.courses) != learned.courses.size()))
        return fail(Reason::malformed, "band: a version needs its name, its hash and the courses that it counts");
    if (provenance.version == seedBand().provenance().version || find(provenance.version))
        return fail(Reason::alreadyExists, "band: there is a version of that name");
    m_versions.push_back(std::move(learned));
    return {};
}

Done History::allows(const Choice& choice) const
{
    if (choice.version == activeVersion())
        return fail(Reason::invalidState, "band: this version is in use");
    const bool before = std::find(m_inUse.begin(), m_inUse.end(), choice.version) != m_inUse.end();
    if (choice.back)
        return before ? Done{} : Done(fail(Reason::invalidState, "band: this version was not in use before"));
    if (choice.version == seedBand().provenance().version)
        return {};
    const Learned* learned = find(choice.version);
    if (!learned)
        return fail(Reason::notFound, "band: no such version");
    const auto against = objection(learned->coverage);
    return against ? Done(fail(*against)) : Done{};
}

Done History::choose(Choice choice)
{
    if (const Done allowed = allows(choice); !allowed)
        return allowed;
    if (choice.back)
        m_inUse.erase(std::next(std::find(m_inUse.begin(), m_inUse.end(), choice.version)), m_inUse.end());
    else
        m_inUse.push_back(choice.version);
    m_choices.push_back(std::move(choice));
    return {};
}

const Band& History::active() const
{
    const Learned* learned = find(activeVersion());
    return learned ? learned->band : seedBand();
}

std::optional<std::string> History::previous() const
{
    return m_inUse.size() > 1 ? std::optional(m_inUse[m_inUse.size() - 2]) : std::nullopt;
}

const Learned* History::find(std::string_view version) const
{
    const auto found = std::find_if(m_versions.begin(), m_versions.end(),
                                    [&](const Learned& each) { return each.version() == version; });
    return found == m_versions.end() ? nullptr : &*found;
}

std::optional<std::string> History::saying(const Band& band) const
{
    const auto same = [wanted = contentDigest(band)](const Band& other) { return contentDigest(other) == wanted; };
    if (same(active()))
        return activeVersion();
    std::optional<std::string> found;
    for (auto each = m_versions.rbegin(); each != m_versions.rend(); ++each)
        if (same(each->band)) {
            if (!objection(each->coverage))
                return each->version();
            if (!found)
                found = each->version();
        }
    return found ? found : same(seedBand()) ? std::optional(seedBand().provenance().version) : std::nullopt;
}

}  // namespace ebbline::bands
