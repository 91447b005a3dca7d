#pragma once
/// \file
/// Who did what at the clinic's desks, as far as it is in the journal: grave steps are (records::Step); what is no
/// operation, as looking at a course, leaves no line. Inspecting the vault shows a line that was changed or taken out.

#include "core/journal/state.h"

namespace ebbline::desk {

struct Trace {
    journal::OperationId id;     ///< the desk it was done at, and its running number there
    clock::Moment at;            ///< that desk's wall clock
    records::Kind kind = records::Kind::findingActed;
    std::string by;              ///< as the desk named the person; empty where a kind carries no name
    recovery::CourseId course;   ///< null for what belongs to none
    std::string patient;         ///< her name; empty: about nobody, or not known here
    std::optional<records::Act> act;  ///< of findingActed
    std::optional<records::Step> step = {};  ///< of stepTaken
    std::string with = {};       ///< who stood by
    bool corrected = false;      ///< of patientRegistered: the patient was registered before; of treatmentRecorded: in place of an earlier record
    bool brought = false;        ///< of bandLearned: it came in a file
    std::size_t entries = 0;     ///< of versionsOpened, and of entriesOpened
    std::string person = {};     ///< of roleGiven: whose role it is
    std::optional<records::Role> role = {};  ///< of roleGiven
    std::optional<records::Task> task = {};  ///< for which a role is asked; empty: it is open to everyone, or nobody knows who did it
    bool beyondRole = false;     ///< the role of `by` did not allow it by what the journal says before it
};

/// The newest first. What patients write, answer, read and photograph is not here, nor what a
/// desk does by itself. Looking at a
/// course leaves nothing; entries that were opened do. Reads all of `operations` (in fold order).
std::vector<Trace> traces(const journal::State& state, const std::vector<journal::Operation>& operations);

}  // namespace ebbline::desk
