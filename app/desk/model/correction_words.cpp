#include "app/desk/model/correction_words.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/treatment_editor.h"
#include "app/desk/model/treatment_rows.h"
#include "app/desk/model/words.h"
#include "core/aftercare/visit.h"
#include "core/recovery/treatment_changes.h"

#include <QCoreApplication>

namespace ebbline::deskapp {

namespace {

using Part = recovery::TreatmentPart;

class Treatment {
    Q_DECLARE_TR_FUNCTIONS(Treatment)
};

QString orUnsaid(const QString& text)
{
    return text.isEmpty() ? Treatment::tr("not written down") : text;
}

const recovery::Placement& threadAt(const recovery::Treatment& treatment, int number)
{
    return treatment.placements[static_cast<std::size_t>(number) - 1];
}

QString threadValue(Part part, const recovery::Placement& thread)
{
    switch (part) {
    case Part::side:
        return sideTitle(thread.side);
    case Part::zone:
        return zoneName(thread.zone);
    case Part::ending:
        return endingName(thread.ending);
    case Part::thread:
        return threadText(thread);
    case Part::instrument:
        return orUnsaid(instrumentText(thread));
    case Part::lot:
        return lotText(thread);
    case Part::volume:
        return placementRows({thread}).first().value.value<PlacementRow>().volume;
    case Part::epinephrine:
        return orUnsaid(epinephrineText(thread));
    case Part::redoing:
        return thread.redone ? redoneText(thread) : TreatmentEditor::tr("Placed once");
    default:
        return {};
    }
}

QString betweenText(const QString& label, const QString& now, const QString& former)
{
    return Treatment::tr("%1: %2; until then %3", "label, what stands there now, what stood there").arg(label, now, former);
}

QString threadLine(const recovery::TreatmentChange& change, const recovery::Treatment& former, const recovery::Treatment& now)
{
    const auto spoken = [](const recovery::Treatment& treatment, int number) {
        return placementRows(treatment.placements).at(number - 1).value.value<PlacementRow>().spoken;
    };
    if (change.part == Part::threadAdded) {
        return Treatment::tr("Written in: %1", "a thread").arg(spoken(now, change.now));
    }
    if (change.part == Part::threadRemoved) {
        return Treatment::tr("Taken out of the record: %1", "a thread").arg(spoken(former, change.former));
    }
    const auto label = change.former == change.now ? Treatment::tr("Thread %1", "its number").arg(charts::digits(change.now))
                                                   : Treatment::tr("Thread %1, until then %2", "its number, its former number")
                                                         .arg(charts::digits(change.now), charts::digits(change.former));
    return change.part == Part::track ? Treatment::tr("%1: %2", "label, value").arg(label, Treatment::tr("drawn elsewhere"))
                                      : betweenText(label, threadValue(change.part, threadAt(now, change.now)),
                                                    threadValue(change.part, threadAt(former, change.former)));
}

/// Its place among careFacts(); -1: none of them.
int factOf(Part part)
{
    switch (part) {
    case Part::placedBy:
        return 0;
    case Part::dressings:
        return 1;
    case Part::consent:
        return 2;
    case Part::cautions:
        return 3;
    case Part::learningConsent:
        return 4;
    case Part::weight:
        return 5;
    case Part::otherwise:
        return 6;
    case Part::baseline:
        return 7;
    default:
        return -1;
    }
}

QString changeLine(const recovery::TreatmentChange& change, const recovery::Treatment& former, const recovery::Treatment& now)
{
    const auto orNone = [](const QString& text) { return text.isEmpty() ? Treatment::tr("none") : text; };
    const auto when = [](const clock::Moment& at) { return dateText(at) + QStringLiteral(", ") + clockText(at); };
    const auto solution = [](const recovery::Treatment& treatment) { return solutionTexts(treatment.anaesthetic).join(QStringLiteral(" · ")); };
    const auto planned = [&](const recovery::Treatment& treatment) {
        return treatment.planned.empty() ? orNone({}) : charts::digits(static_cast<int>(treatment.planned.size()));
    };
    if (const int fact = factOf(change.part); fact >= 0) {
        return betweenText(careFacts(now).at(fact).first, careFacts(now).at(fact).second, careFacts(former).at(fact).second);
    }
    switch (change.part) {
    case Part::time:
        return betweenText(Treatment::tr("When the treatment was"), when(now.at), when(former.at));
    case Part::threadOrder:
        return Treatment::tr("The threads are numbered otherwise.");
    case Part::solution:
        return betweenText(Treatment::tr("Anaesthetic"), solution(now), solution(former));
    case Part::plan:
        return betweenText(Treatment::tr("Threads of the plan"), planned(now), planned(former));
    case Part::note:
        return betweenText(Treatment::tr("Note"), orNone(QString::fromStdString(now.note)), orNone(QString::fromStdString(former.note)));
    default:
        return threadLine(change, former, now);
    }
}

QString headOf(const journal::Version<records::TreatmentRecorded>& version, const Stamp& stamp)
{
    const auto& corrected = version.value.treatment.corrected;
    if (!corrected) {
        return Treatment::tr("Recorded again %1, without a reason", "when").arg(stamp(version.entered));
    }
    const auto who = corrected->by.empty() ? Treatment::tr("somebody") : QString::fromStdString(corrected->by);
    return Treatment::tr("Corrected %1 by %2. Why: %3", "when, who, reason").arg(stamp(version.entered), who, QString::fromStdString(corrected->reason));
}

}  // namespace

QStringList changeLines(const recovery::Treatment& former, const recovery::Treatment& now)
{
    QStringList lines;
    for (const auto& change : recovery::changesOf(former, now)) {
        lines << changeLine(change, former, now);
    }
    return lines;
}

QStringList treatmentCorrectionLines(const journal::CourseState& course, const Stamp& stamp)
{
    const auto& all = course.treatmentVersions;
    QStringList lines;
    for (auto i = all.size(); i-- > 0;) {
        if (i == 0 && all[i].value.treatment.corrected) {
            lines << headOf(all[i], stamp) << Treatment::tr("What stood there until then has not arrived at this desk.");
        } else if (i > 0) {
            const auto changes = changeLines(all[i - 1].value.treatment, all[i].value.treatment);
            lines << headOf(all[i], stamp) << (changes.isEmpty() ? QStringList{Treatment::tr("Nothing differs from what stood there.")} : changes);
        }
    }
    return lines;
}

QString treatmentCrossedText(const journal::CourseState& course)
{
    return course.isTreatmentCrossed()
               ? Treatment::tr("Two desks recorded this without knowing of each other. The later record holds as a whole; look below what the other one said, and correct what is missing.")
               : QString();
}

QString countedOtherwiseText(const journal::CourseState& course)
{
    return course.isCountedOtherwise()
               ? Treatment::tr("This course and its phone count by another day of the treatment, or by other scores right after it, than the record says. Correct the record, or record it once more as it is: then they count by it.")
               : QString();
}

QString phoneKeepsText(const journal::CourseState& course, const recovery::Treatment& corrected)
{
    if (!course.opened) {
        return Treatment::tr("No phone has this course: nothing changes on one.");
    }
    if (course.opened->treated == corrected.at && course.opened->baseline == corrected.baseline) {
        return Treatment::tr("Her phone holds of the treatment only when it was and the scores right after. Both stay as they are; nothing of this goes there.");
    }
    auto text = Treatment::tr("With the next sync her phone gets when the treatment was and the scores right after, and counts days, reminders and warnings by them. Until then it goes by the old ones. "
                              "Findings are judged anew by both; what was raised stays, but a phone with an older program drops what the new day does not raise.");
    if (!aftercare::check(aftercare::visitOf(course.opened->followUp), corrected.at)) {
        text += u' ' + Treatment::tr("The visit that was agreed does not lie 1 to 60 days after that: agree on another one.");
    }
    return text;
}

}  // namespace ebbline::deskapp
