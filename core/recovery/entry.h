#pragma once
/// \file
/// An entry: what the patient recorded at one moment.

#include "core/bytes/bytes.h"
#include "core/clock/instant.h"
#include "core/recovery/answers.h"

#include <optional>
#include <string>

namespace ebbline::recovery {

using CourseId = bytes::Id<struct CourseTag>;
using EntryId = bytes::Id<struct EntryTag>;
using PatientId = bytes::Id<struct PatientTag>;

/// Degrees Celsius. 38.0 is 38.0: Fahrenheit is converted exactly, before any rounding.
class Temperature {
public:
    static constexpr double lowestCelsius = 30.0;
    static constexpr double highestCelsius = 45.0;

    /// \returns Reason::notFinite or Reason::outOfRange outside 30..45 °C.
    static Result<Temperature> celsius(double degrees);
    /// The same bounds after conversion: (F - 32) * 5 / 9.
    static Result<Temperature> fahrenheit(double degrees);

    double celsius() const { return m_celsius; }
    double fahrenheit() const { return m_celsius * 9.0 / 5.0 + 32.0; }
    auto operator<=>(const Temperature&) const = default;

private:
    explicit Temperature(double degrees) : m_celsius(degrees) {}
    double m_celsius;
};

struct Entry {
    EntryId id;
    CourseId course;
    clock::Moment at;          ///< the moment the entry speaks of
    clock::Moment recordedAt;  ///< when it was typed; later than `at` for a forgotten moment
    Scores scores;  ///< only what was answered: missing is not zero
    Signs present;          ///< signs answered yes
    Signs absent;           ///< signs answered no; neither: not asked or skipped
    std::optional<Temperature> temperature;
    std::string note;  ///< UTF-8, at most maximumNote bytes

    static constexpr std::size_t maximumNote = 2000;

    bool operator==(const Entry&) const = default;
    /// Recorded more than an hour after the moment it speaks of.
    bool isLate() const { return recordedAt.at - at.at > std::chrono::hours(1); }
};

/// Checks everything that an Entry promises: known enumerators, a side where the symptom has
/// one, no sign both present and absent, note length and UTF-8, `at` not after `recordedAt`
/// by more than five minutes, something answered at all.
/// \returns Reason::outOfRange, Reason::malformed, Reason::tooLarge (the note) or Reason::notEnough,
///          naming the field.
Done check(const Entry& entry);

}  // namespace ebbline::recovery
