#pragma once
/// \file
/// A treatment: one session of thread placement, as the practitioner wrote it down.

#include "core/recovery/entry.h"

#include <optional>
#include <string>
#include <vector>

namespace ebbline::recovery {

/// A point of the face chart, in the chart's own frame: 400 wide, 560 high, origin top left.
/// On the front view the patient's left is on the right of the picture, as when facing her.
struct ChartPoint {
    double x;  ///< 0..400
    double y;  ///< 0..560
    bool operator==(const ChartPoint&) const = default;
};
inline constexpr double chartWidth = 400;
inline constexpr double chartHeight = 560;

enum class ChartView : std::uint8_t { front = 1, leftOblique = 2, rightOblique = 3 };

/// Where a thread works. Stored: never renumber.
enum class Zone : std::uint8_t {
    brow = 1,
    temple = 2,
    midface = 3,
    cheek = 4,
    nasolabial = 5,   ///< fold from nose to mouth
    marionette = 6,   ///< fold from mouth to chin
    jawline = 7,
    submental = 8,    ///< under the chin
    neck = 9,
};
inline constexpr std::array allZones{Zone::brow,       Zone::temple,  Zone::midface,
                                     Zone::cheek,      Zone::nasolabial, Zone::marionette,
                                     Zone::jawline,    Zone::submental, Zone::neck};

/// Where a thread ends in relation to the zone that moves with speech and chewing.
enum class Ending : std::uint8_t { shortOfMovingZone = 1, pastMovingZone = 2 };

/// Absorbable thread materials by their chemical short names.
enum class Material : std::uint8_t { pdo = 1, plla = 2, pcl = 3, plcl = 4, other = 5 };
enum class Form : std::uint8_t { smooth = 1, twisted = 2, barbedOneWay = 3, barbedTwoWay = 4, moulded = 5, cones = 6 };

/// How a thread comes to lie where another one lay. Stored: never renumber.
enum class Redoing : std::uint8_t {
    replaced = 1,  ///< one was taken out, and this one was placed anew
    added = 2,     ///< one more along the same track
};

/// A thread that was redone in the same session, and why.
struct Redone {
    Redoing how = Redoing::replaced;
    std::string reason;  ///< in the practitioner's words, UTF-8, 1..400 bytes
    bool operator==(const Redone&) const = default;
};

/// What a thread was brought in with. Stored: never renumber.
enum class Instrument : std::uint8_t { sharpNeedle = 1, bluntCannula = 2 };

/// Where the local anaesthetic given for a thread held epinephrine. Stored: never renumber.
enum class EpinephrineAt : std::uint8_t {
    nowhere = 1,
    entryPoint = 2,  ///< at the entry point, and not along the track
    track = 3,       ///< along the track, and not at the entry point
    both = 4,        ///< in all of it
};

struct Placement {
    Side side = Side::left;
    Zone zone = Zone::midface;
    ChartView view = ChartView::front;
    ChartPoint entry{};
    ChartPoint end{};
    Ending ending = Ending::shortOfMovingZone;
    Material material = Material::pdo;
    Form form = Form::barbedTwoWay;
    int gauge = 19;            ///< needle or cannula gauge (G), 14..32; larger is thinner
    int lengthMm = 100;        ///< thread length, mm, 10..500
    std::string lot;           ///< as printed on the pack, UTF-8, at most 40 bytes
    std::optional<std::string> expiry;  ///< ISO date, as printed
    double anaestheticMl = 0;  ///< volume given along this track, mL, 0..20
    std::optional<Redone> redone{};  ///< empty: placed once
    std::optional<Instrument> instrument{};          ///< whose gauge `gauge` is; empty: not said
    std::optional<int> instrumentLengthMm{};         ///< of needle or cannula, mm, 10..500; empty: not said
    std::optional<EpinephrineAt> epinephrineAt{};    ///< empty: not said
    /// Which product the lot is of: the pack's trade item number, 14 digits, isArticle(); only with a lot. Empty: not known.
    std::optional<std::string> article{};

    bool operator==(const Placement&) const = default;
};

enum class Drug : std::uint8_t { lidocaine = 1, lidocaineWithEpinephrine = 2 };

/// The solution given along the tracks of a treatment. Other lidocaine is Treatment::otherwiseMg.
struct Anaesthetic {
    /// With epinephrine where any of it held some; which threads got that, they say: Placement::epinephrineAt.
    Drug drug = Drug::lidocaine;
    double percent = 1.0;          ///< grams per 100 mL before buffering, 0.1..4
    int epinephrineOneIn = 0;      ///< where it held some; 50000..1000000, e.g. 200000 for 1:200,000; 0 without it
    double bicarbonatePart = 0.0;  ///< parts of 8.4 % bicarbonate per part of solution, 0..1
    double extraMl = 0.0;          ///< mL of it given outside the tracks (entry points, blocks), 0..100
    bool operator==(const Anaesthetic&) const = default;
};

/// A decision: twice the largest amount that the label names in general. More is a slip of the finger.
inline constexpr double maximumOtherwiseMg = 1000;

/// Why a record was written anew, and by whom.
struct Correction {
    std::string reason;  ///< in the corrector's words, UTF-8, 1..400 bytes
    std::string by;      ///< UTF-8, at most 200 bytes; empty: it is not said
    std::uint32_t inSight = 1;  ///< records of the treatment that its writer knew of, 1 or more
    bool operator==(const Correction&) const = default;
};

struct Treatment {
    CourseId course;
    PatientId patient;
    clock::Moment at;
    std::vector<Placement> placements;  ///< 1..60
    Anaesthetic anaesthetic;
    std::optional<double> weightKg;     ///< 30..300; without it no maximum is shown
    bool dressings = true;              ///< small dressings on the entry points
    bool cautionsGiven = false;
    bool consentGiven = false;
    bool learningConsent = false;       ///< may her course teach the band
    Scores baseline;   ///< practitioner's scores right after treatment
    std::string note;  ///< UTF-8, at most 4000 bytes
    std::string placedBy{};  ///< who placed the threads, UTF-8, at most 200 bytes; empty: not written down
    /// Lidocaine given otherwise than in `anaesthetic`, mg, 0..maximumOtherwiseMg: nerve blocks with another
    /// solution, other strengths. Empty: not written down, as in every treatment of an older program.
    std::optional<double> otherwiseMg{};
    /// What was planned before the patient lay down, each as asPlanned(), 0..60; empty: no plan was kept.
    std::vector<Placement> planned{};
    std::optional<Correction> corrected{};  ///< it stands in place of an earlier record of its course; empty: it is the first writing

    bool operator==(const Treatment&) const = default;
};

/// Checks every bound named above, and that no thread had epinephrine of a solution without. \returns Reason::outOfRange or Reason::malformed, naming the
/// field and, for placements, their number counted from 1.
Done check(const Treatment& treatment);
Done check(const Placement& placement);

/// 14 digits of which the last one checks the others. Source: GS1 General Specifications, section 7.9, from memory.
bool isArticle(std::string_view digits);

/// A thread as a plan has it: what its pack said, what was injected for it and that it was redone belong to what was done.
Placement asPlanned(const Placement& placement);

/// The same thread on the other side: points mirrored about the middle of the front view, an
/// oblique view exchanged for the other. What was redone on one side was not by that on the other.
Placement mirrored(const Placement& placement);

std::string_view word(Zone zone);
std::string_view word(Material material);
std::string_view word(Form form);
std::string_view word(Ending ending);

}  // namespace ebbline::recovery
