#pragma once
/// \file
/// Who was at a finding or a row last, and what they did, as a line.

#include "core/records/bodies.h"

#include <QString>

namespace ebbline::deskapp {

/// "Taken by Dr Ito, Today 14:05", "Dr Ito spoke with her, Today 14:05". \pre one of triage::newestAct()
QString lastActText(const records::FindingActed& act, const clock::Moment& now);

/// "Taken by Dr Ito 2 h ago, nothing noted since": of an act that covers a row no more.
QString lapsedText(const records::FindingActed& act, const clock::Moment& now);

}  // namespace ebbline::deskapp
