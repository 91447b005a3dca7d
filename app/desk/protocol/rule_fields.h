#pragma once
/// \file
/// The numbers of a protocol's rules that a person may change: guards in score points and days. Thresholds of
/// the statistics are not among them: those are calibrated, together with the usual range.

#include "core/triggers/protocol.h"

#include <QString>

#include <span>

namespace ebbline::deskapp {

struct RuleField {
    int triggers::Thresholds::* member;
    const char* rule;   ///< source text, context "RuleFields": which rule
    const char* what;   ///< source text: what the number is
    int from;
    int to;
    bool days;          ///< else score points
};

std::span<const RuleField> ruleFields();
QString ruleTitle(const RuleField& field);
QString ruleWhat(const RuleField& field);
/// "days" or "points".
QString ruleUnit(const RuleField& field);

}  // namespace ebbline::deskapp
