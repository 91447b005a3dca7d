#pragma once
/// \file
/// Versions of a clinic's band: what stands behind each, whether it held on courses that it had not
/// seen, which one is in use, and every choice that was ever made. A version never changes. The seed
/// band is version 0 of every clinic, labelled as an assumption, and can always be gone back to.
/// How a clinic changes its band: docs/clinical/band_versions.md.

#include "core/bands/coverage.h"
#include "core/bands/eligibility.h"
#include "core/clock/instant.h"

#include <map>
#include <string>
#include <vector>

namespace ebbline::bands {

inline constexpr std::size_t mostCourses = 5000;  ///< behind one version; of more, take the newest

/// What stands behind a band, in bytes that are the same for the same courses in any order:
///
///     "ebbline band grounds 2" | 32 hash of the band it is drawn towards | 4 count |
///     for each course by id: 16 id | 32 digest of what was told | 4 count | for each score by symptom, side, day: 1 1 2 1
///
/// Integers big-endian; a day is its number + 32768. The scores are those of the days; the digest is over every entry
/// with its moment, and the practitioner's scores. Form 1 had no digest: a version that was learned under it keeps its hash.
bytes::Bytes groundsOf(std::span<const Taught> courses, const Band& seed);

/// Hexadecimal BLAKE2b-256 of the grounds: Provenance::hash.
std::string groundsHash(std::span<const Taught> courses, const Band& seed);

/// Hexadecimal BLAKE2b-256 of distributions and movements, to the last bit.
std::string contentHash(const Band& band);

/// Of a version that came in a file: what the file calls it, and what it was checked on. Nothing in the file proves who
/// wrote it.
struct Brought {
    std::string name;            ///< the version in the file
    bool ofOthersAlone = false;  ///< who took it says that no course of this clinic is behind it; else only those
                                 ///< count that were treated after the band was learned
    bool operator==(const Brought&) const = default;
};

/// One learned version. Made by learnVersion() or broughtVersion(), never changed.
struct Learned {
    Band band = seedBand();
    std::string seed;                          ///< version of the band it is drawn towards
    std::vector<recovery::CourseId> courses;   ///< ascending; behind it or, of one that was brought, those it was checked on
    std::map<Refusal, std::int32_t> refused;   ///< how many courses may not teach, by reason
    Coverage coverage;
    std::string by;
    clock::Moment at;
    std::optional<Brought> brought{};          ///< empty: this clinic's own courses taught it

    const std::string& version() const { return band.provenance().version; }
    bool operator==(const Learned&) const = default;
};

/// Learns a band and checks it in one step. The version is "clinic-", the day and eight digits of
/// the hash. `sides` as for learnBand(). A band that fails its check is a version all the same: it is
/// kept with its reasons and cannot be used.
/// \returns as crossValidate(); Reason::tooLarge over mostCourses.
Result<Learned> learnVersion(std::vector<Taught> courses, std::map<Refusal, std::int32_t> refused, const Band& seed,
                             const Movement& sides, std::string by, const clock::Moment& at);

/// A version of a band that was learned elsewhere, checked on courses of this clinic that it has not seen (coverageOf()). It
/// is "brought-", the day and eight digits of a hash of what it says and of what it was checked on: more courses make another
/// version. What the band says of itself, number of courses, day and hash, is kept as it stands there.
/// \returns Reason::malformed if it names no grounds: a hash of 64 hexadecimal digits; as coverageOf(); Reason::tooLarge
///          over mostCourses.
Result<Learned> broughtVersion(const Band& band, bool ofOthersAlone, std::vector<Taught> unseen, std::string by,
                               const clock::Moment& at);

/// A version came into use, by being chosen or by going back to it.
struct Choice {
    std::string version;
    bool back = false;  ///< to one that was in use before
    std::string by;
    std::string reason;
    clock::Moment at;
    bool operator==(const Choice&) const = default;
};

class History {
public:
    /// The seed, in use.
    History();

    /// \returns Reason::alreadyExists for a version of that name, Reason::malformed without a name, a
    ///          hash or the courses that it counts (of one that was brought nobody can count them).
    Done add(Learned learned);

    /// Whether it would hold. \returns Reason::notFound for an unknown version, Reason::invalidState if
    /// it is in use, or if `back` names one that was not in use before; otherwise objection().
    Done allows(const Choice& choice) const;
    /// Nothing changes unless it is allowed.
    Done choose(Choice choice);

    const Band& active() const;
    const std::string& activeVersion() const { return m_inUse.back(); }
    /// What going back leads to; empty if the present one is the first.
    std::optional<std::string> previous() const;

    const Learned* find(std::string_view version) const;  ///< null for the seed and unknown ones
    /// The newest version that says exactly this, the one in use before any other and one that may be used before one that
    /// may not; empty if none does.
    std::optional<std::string> saying(const Band& band) const;
    const std::vector<Learned>& versions() const { return m_versions; }  ///< in the order they were added
    const std::vector<Choice>& choices() const { return m_choices; }     ///< oldest first
    bool operator==(const History&) const = default;

private:
    std::vector<Learned> m_versions;
    std::vector<Choice> m_choices;
    std::vector<std::string> m_inUse;  ///< the seed first; going back takes away what came after
};

}  // namespace ebbline::bands
