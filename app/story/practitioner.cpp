#include "app/story/practitioner.h"

#include "app/desk/model/words.h"

#include <QLocale>

#include <algorithm>

namespace ebbline::story {

namespace {

using deskapp::TreatmentEditor;
using recovery::Placement;
using recovery::Treatment;

Done wrong(const std::string& what)
{
    return fail(Reason::invalidState, "practitioner: " + what);
}

/// Tries what there is to choose until it is what it should be.
template <typename Choose, typename Is>
void choose(qsizetype choices, Choose&& take, Is&& isTaken)
{
    for (int i = 0; i < choices && !isTaken(); ++i)
        take(i);
}

void drawThread(TreatmentEditor& page, const Placement& thread)
{
    page.setView(static_cast<int>(thread.view));
    page.draw({thread.entry.x, thread.entry.y}, {thread.end.x, thread.end.y});
    // The page proposes side, zone and ending by the drawing, and the rest as in the thread before.
    page.setSide(static_cast<int>(thread.side));
    page.setZone(static_cast<int>(thread.zone));
    page.setEnding(static_cast<int>(thread.ending));
    page.setMaterial(static_cast<int>(thread.material));
    page.setForm(static_cast<int>(thread.form));
    page.setInstrument(thread.instrument ? static_cast<int>(*thread.instrument) : 0);
    page.setGauge(thread.gauge);
    page.setInstrumentLengthMm(thread.instrumentLengthMm.value_or(0));
    page.setLengthMm(thread.lengthMm);
    page.setTrackMl(thread.anaestheticMl);
    page.setLot(QString::fromStdString(thread.lot));
    page.setExpiry(QString::fromStdString(thread.expiry.value_or(std::string())));
}

/// As written, but for whose it is and when.
Treatment asWritten(TreatmentEditor& page, Treatment treated)
{
    const Treatment written = page.treatment();
    treated.course = written.course;
    treated.patient = written.patient;
    treated.at = written.at;
    // The order of threads says nothing.
    if (std::ranges::is_permutation(treated.placements, written.placements))
        treated.placements = written.placements;
    return treated;
}

}  // namespace

Done registerPatient(app::DeskProgram& desk, const Patient& patient)
{
    desk.openTreatment();
    TreatmentEditor& page = *desk.treatment();
    const auto language = static_cast<int>(deskapp::diaryLanguages().indexOf(QString::fromStdString(patient.language)));
    if (desk.page() != app::DeskProgram::Page::treatment
        || !page.registerPatient(QString::fromStdString(patient.name), QString::fromStdString(patient.phone), language))
        return wrong("a patient is not registered");
    return page.patientName() == QString::fromStdString(patient.name) ? Done{} : wrong("another patient is treated than was registered");
}

Done writeThreads(app::DeskProgram& desk, const Treatment& treated)
{
    TreatmentEditor& page = *desk.treatment();
    page.setStep(1);
    for (const Placement& thread : treated.placements) {
        const auto drawn = page.treatment().placements;
        if (std::ranges::find(drawn, recovery::mirrored(thread).entry, &Placement::entry) == drawn.end())
            drawThread(page, thread);
    }
    page.mirrorAll();
    page.choose(1);
    return page.treatment().placements.size() == treated.placements.size() ? Done{} : wrong("other threads are drawn than were placed");
}

Done writeAnaesthetic(app::DeskProgram& desk, const Treatment& treated)
{
    TreatmentEditor& page = *desk.treatment();
    const recovery::Anaesthetic& given = treated.anaesthetic;
    page.setStep(2);
    page.setDrug(static_cast<int>(given.drug));
    choose(page.percentNames().size(), [&](int i) { page.setPercentIndex(i); }, [&] { return page.treatment().anaesthetic.percent == given.percent; });
    choose(page.dilutionNames().size(), [&](int i) { page.setDilutionIndex(i); },
           [&] { return page.treatment().anaesthetic.epinephrineOneIn == given.epinephrineOneIn; });
    choose(page.bufferNames().size(), [&](int i) { page.setBufferIndex(i); },
           [&] { return page.treatment().anaesthetic.bicarbonatePart == given.bicarbonatePart; });
    choose(page.epinephrineNames().size(), [&](int i) { page.setEpinephrineOfAll(i); },
           [&] { return page.treatment().placements.front().epinephrineAt == treated.placements.front().epinephrineAt; });
    page.setExtraMl(given.extraMl);
    page.setWeight(treated.weightKg ? QLocale().toString(*treated.weightKg, 'f', QLocale::FloatingPointShortest) : QString());
    const bool counted = !page.doseGiven().isEmpty() && !page.doseShare().isEmpty() && page.doseProblem().isEmpty();
    return page.treatment().anaesthetic == given && counted ? Done{} : wrong("what was injected is not counted against the label's maximum");
}

Done writeCare(app::DeskProgram& desk, const Treatment& treated)
{
    TreatmentEditor& page = *desk.treatment();
    page.setStep(3);
    page.setPlacedBy(static_cast<int>(page.placedByNames().indexOf(QString::fromStdString(treated.placedBy))));
    page.setDressings(treated.dressings);
    page.setCautionsGiven(treated.cautionsGiven);
    page.setConsentGiven(treated.consentGiven);
    page.setLearningConsent(treated.learningConsent);
    for (const auto& [stream, score] : treated.baseline)
        page.setBaseline(static_cast<int>(stream.symptom), static_cast<int>(stream.side), score.points());
    if (page.treatment() != asWritten(page, treated))
        return wrong("another treatment is written down than was done");
    return page.missing().isEmpty() ? Done{} : wrong("a treatment cannot be recorded: " + page.missing().join(QLatin1Char(' ')).toStdString());
}

Result<recovery::CourseId> recordTreatment(app::DeskProgram& desk, const Treatment& treated)
{
    TreatmentEditor& page = *desk.treatment();
    const Treatment wanted = asWritten(page, treated);
    page.save();
    const auto& courses = desk.workplace().state().courses;
    const auto course = courses.find(wanted.course);
    if (course == courses.end() || !course->second.treatment || desk.page() != app::DeskProgram::Page::pairing)
        return fail(Reason::invalidState, "practitioner: a treatment is not recorded");
    Treatment recorded = course->second.treatment->treatment;
    recorded.at = wanted.at;  // renewed as it was recorded
    if (recorded != wanted)
        return fail(Reason::invalidState, "practitioner: another treatment is recorded than was done");
    return wanted.course;
}

Done writeFollowUp(app::DeskProgram& desk, const recovery::CourseId& course, const FollowUp& found)
{
    desk.openFollowUp(deskapp::keyOf(course));
    deskapp::FollowUpEditor& page = *desk.followUp();
    if (desk.page() != app::DeskProgram::Page::followUp || page.course() != course)
        return wrong("no page of a follow-up opens");
    page.setChange(static_cast<int>(found.change));
    page.setSatisfaction(found.satisfaction);
    for (const std::string& complication : found.complications)
        page.tick(QString::fromStdString(complication), true);
    page.setUncomplicated(found.complications.empty() ? 1 : 2);
    const auto open = page.answers()->rows();
    for (const auto& row : open)
        page.answer(row.key, static_cast<int>(records::Outcome::treatedInClinic));
    page.setNextPlan(QString::fromStdString(found.nextPlan));
    return page.missing().isEmpty() ? Done{} : wrong("a follow-up cannot be recorded: " + page.missing().join(QLatin1Char(' ')).toStdString());
}

Done recordFollowUp(app::DeskProgram& desk, const recovery::CourseId& course, const FollowUp& found)
{
    desk.followUp()->save();
    const auto view = desk.workplace().desk().course(course);
    if (!view || view->state == nullptr || !view->state->followUp)
        return wrong("a follow-up is not recorded");
    const auto& kept = *view->state->followUp;
    const bool same = kept.change == found.change && kept.satisfaction == found.satisfaction && kept.complications == found.complications
                      && kept.uncomplicated == found.complications.empty() && kept.nextPlan == found.nextPlan;
    return same ? Done{} : wrong("another follow-up is recorded than was held");
}

}  // namespace ebbline::story
