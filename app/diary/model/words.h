#pragma once
/// \file
/// The diary's words: questions, instructions and advice, in the second person, short, for a tired
/// reader. English at reading grade 6 or below (tests/app/diary). Translated.

#include "core/aftercare/care_plan.h"
#include "core/triage/queue.h"

#include <QString>

namespace ebbline::diaryapp {

QString symptomName(recovery::Symptom symptom);      ///< "Swelling"
QString symptomQuestion(recovery::Symptom symptom);  ///< "How swollen is it?"
QString lowestWord(recovery::Symptom symptom);       ///< "0: none"
QString highestWord(recovery::Symptom symptom);      ///< "10: worst you can think of"
QString sideName(recovery::Side side);               ///< "Your left"
QString sideInSentence(recovery::Side side);         ///< "your left", inside a sentence

/// A yes/no question in plain words; colour is always compared with the other side.
QString signQuestion(recovery::Sign sign);

QString instructionTitle(aftercare::InstructionKind kind);  ///< "Dressings off"
/// What, until when, and why, in at most two short sentences.
QString instructionText(aftercare::InstructionKind kind);

/// What her own hands can do at once about it; empty: nothing.
QString handsOn(const triage::Finding& finding);

/// What a finding means for the patient, and what to do. Never softened.
struct Advice {
    QString title;   ///< "Call the clinic now"
    QString doNow;   ///< what to do first
    QString reason;  ///< why, with what was written
};
Advice adviceFor(const triage::Finding& finding, bool fahrenheit = false);
/// Of several as one, most urgent first: the title and what to do of the most urgent, the first things to do
/// and the reasons of all. Empty of none.
Advice adviceFor(const std::vector<triage::Finding>& findings, bool fahrenheit = false);
/// The same as lines to read: what to do, then why.
QString adviceText(const std::vector<triage::Finding>& findings, bool fahrenheit);

/// What a loud finding can mean, in plain words: beside what to do, never in its place. Of a rule that is never loud it is empty.
QString meaningOf(const triage::Finding& finding);
/// The same where nobody may read what was found: of how urgent it is alone.
QString unnamedMeaning(recovery::Urgency urgency);

/// What went wrong and what to do about it.
QString errorText(const Error& error);

QString digits(int number);  ///< in the digits of the language

}  // namespace ebbline::diaryapp
