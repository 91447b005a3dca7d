#pragma once
/// \file
/// The desk's words for what core names by enumerators, translated. For the practitioner's eyes:
/// short, trade words allowed. Words that the open tables use are core's own `word()`.

#include "core/records/bodies.h"

#include <QString>
#include <QStringList>

namespace ebbline::deskapp {

/// "Emergency", "Call now", "Next working day", "At the follow-up".
QString urgencyName(recovery::Urgency urgency);
/// What it asks of the clinic. `shown`: the phone wrote down that it showed the warning (isShownByPhone); without that
/// nothing is said about what the patient was told.
QString urgencyAdvice(recovery::Urgency urgency, bool shown);

/// What the patient answered yes to: "Hard to breathe or to swallow".
QString signName(recovery::Sign sign);

QString zoneName(recovery::Zone zone);
QString materialName(recovery::Material material);
QString formName(recovery::Form form);
QString endingName(recovery::Ending ending);
QString sideTitle(recovery::Side side);   ///< "Left", "Right", "Both"
QString viewName(recovery::ChartView view);
QString drugName(recovery::Drug drug);

QString actName(records::Act act);              ///< "Taken"
QString outcomeName(records::Outcome outcome);  ///< "Reassured: usual course, explained"
QString changeName(records::GlobalChange change);
/// Our own list; the words are stored in English, so that they stay the same in every language.
QStringList complicationWords();
QString complicationName(const QString& word);
QString complicationMeaning(const QString& word);  ///< one sentence, docs/clinical/complications.md; empty for a word that is none

/// A language in its own name: "Deutsch". Empty for an unknown one.
QString languageName(const QString& code);

/// What thresholds were calibrated on, as kept in English ("8000 invented courses"), in the desk's language, without
/// the mark of a change (core/rehearsal/grounds.h); a text that is none of ours stays as it is.
QString cohortText(const std::string& kept);

/// Those that the diary speaks, as a patient is registered with.
QStringList diaryLanguages();

/// The one of `offered` that a locale's name ("pt_PT") comes nearest to: itself, or another of its language,
/// or else the first.
QString nearestLanguage(const QString& locale, const QStringList& offered);

/// Keeps a phone number, a lot or an address in its own order inside text that runs from the right.
QString leftToRight(const std::string& text);

/// A failure, said to the person at the desk: what is true now and what to do.
QString errorText(const Error& error);

}  // namespace ebbline::deskapp
