#pragma once
/// \file
/// An invented clinic and five invented patients, told as data: who was treated when, what each
/// wrote down and when, what was really going on, and what the clinic did. The story plays it
/// through the real programs; nothing in it knows what will be found.

#include "core/photos/manifest.h"
#include "core/records/bodies.h"
#include "core/recovery/treatment.h"

#include <optional>
#include <string>
#include <vector>

namespace ebbline::story {

/// One entry of a patient, by day of recovery and local minute of that day.
struct Telling {
    int day;
    int minuteOfDay;
    recovery::Scores scores;
    recovery::Signs signs;
    std::optional<double> celsius;
    std::string note;
    std::vector<photos::Pose> photos = {};  ///< taken beside it
};

/// What was found and agreed at the end; uncomplicated without a complication.
struct FollowUp {
    records::GlobalChange change = records::GlobalChange::muchBetter;
    int satisfaction = 4;
    std::vector<std::string> complications = {};  ///< words of the desk's list
    std::string nextPlan = {};
};

struct Patient {
    std::string kind;   ///< what is going on: plain, haematoma, infection, silent, puckering
    std::string name;
    std::string phone;
    std::string language;
    int treatedOnDay;        ///< of the story, 0 = its first day
    int treatedAtMinute;
    bool byHand = false;     ///< entries tapped in, and findings answered, on the pages; the others by what lies beneath them
    bool typedCode = false;  ///< joins with the typed code instead of the picture
    int offlineFromDay = -1; ///< days of recovery without a network, for honest states
    int offlineToDay = -1;
    recovery::Treatment treatment;  ///< without ids and times
    std::vector<Telling> tellings;
    /// When it began, minutes after the treatment; empty for an ordinary course.
    std::optional<int> onsetMinutes;
    recovery::Side side = recovery::Side::none;
    FollowUp followUp = {};
};

struct Scenario {
    std::string clinicName;
    std::string clinicPhone;
    std::string onCallPhone;
    std::string emergencyNumber;
    std::string zone;
    std::string practitioner;
    std::string colleague;
    std::string otherProtocol;  ///< beside the usual one, for whom the face is not treated
    clock::LocalDay firstDay;
    int days;  ///< how long the story lasts
    std::vector<Patient> patients;
};

Scenario inventedScenario();

}  // namespace ebbline::story
