#pragma once
/// \file
/// What the phone asks and what the clinic tells, in words for whoever reads a bundle elsewhere; inside of core/exchange only.

#include "core/exchange/fhir_json.h"

namespace ebbline::exchange::fhir {

/// Goes up whenever a question, its answers or its link changes: an entry names the version that it answered.
inline constexpr std::string_view questionnaireVersion = "1";

std::string questionnaireUrl();
/// As an answered questionnaire names it: url|version.
std::string questionnaireCanonical();

/// `score.<symptom>.<side>` and `sign.<sign>`, as the answers name what they answer.
std::string linkOf(const recovery::Stream& stream);
std::string linkOf(recovery::Sign sign);

/// What an instruction is called in our own code system.
struct NamedInstruction {
    std::string_view code;
    std::string_view text;  ///< English, for people
};
NamedInstruction named(aftercare::InstructionKind kind);

/// The whole questionnaire, a Questionnaire. Nothing in it has to be answered: missing is not zero.
Json entryQuestionnaire();

}  // namespace ebbline::exchange::fhir
