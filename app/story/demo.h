#pragma once
/// \file
/// A clinic of the last eight days, left as it is this evening, for somebody to open.

#include "core/result/result.h"

#include <QString>

namespace ebbline::story {

/// Makes `out`/work/desk, `out`/work/phone-plain and `out`/passphrase.txt with a hub of its own, which
/// it ends again; `out`/hub.port names the port under which the programs look for it.
Done seedDemo(const QString& out, const QString& hubProgram);

}  // namespace ebbline::story
