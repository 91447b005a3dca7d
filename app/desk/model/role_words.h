#pragma once
/// \file
/// Roles in words: their names, what they allow, and who may do what the person at the desk may not.

#include "core/desk/desk.h"

#include <QString>

namespace ebbline::deskapp {

QString roleName(records::Role role);  ///< "Colleague on call"
/// What a role allows beyond what is open to everyone; empty: of somebody without a role, who may do everything.
QString roleText(std::optional<records::Role> role);

/// Why the person at the desk may not do this, and who may: "Closing a finding: for Dr Ito. Your role here: Assistant."
/// Empty: she may.
QString barredText(const desk::Desk& desk, records::Task task);

/// Behind an act that the role of whoever did it did not allow at the time.
QString beyondRoleText();

/// Why a change of people or roles was refused that would leave nobody to name people.
QString nobodyLeftText();

}  // namespace ebbline::deskapp
