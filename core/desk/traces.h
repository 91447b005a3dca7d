#pragma once
/// \file
/// Who did what at the clinic's desks, as far as it is in the journal: grave steps are (a desk added or shut out, a phone ended or
/// replaced, a fresh key, changed numbers); what is no operation leaves no line: a backup, a passphrase, a file that was saved,
/// looking at a course (docs/decisions/0031-plainer-than-planned.md). Inspecting the vault shows a line that was changed or taken out.

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
    std::size_t entries = 0;     ///< of versionsOpened, and of entriesOpened
};

inline constexpr std::size_t mostTraces = 1000;

/// The newest first, at most `most`. What patients write, answer, read and photograph is not here, nor what a
/// desk does by itself. Looking at a
/// course leaves nothing; entries that were opened do. Reads all of `operations` (in fold order).
std::vector<Trace> traces(const journal::State& state, const std::vector<journal::Operation>& operations,
                          std::size_t most = mostTraces);

}  // namespace ebbline::desk
