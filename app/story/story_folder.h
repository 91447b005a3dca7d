#pragma once
/// \file
/// The folder that a story fills: emptied first, and so only one that holds a story or nothing.

#include "core/result/result.h"

#include <QString>

namespace ebbline::story {

/// Whether the folder may be emptied: it is not there, is empty, or holds the summary.json of a story.
/// \returns Reason::refused with a sentence for the person who named it.
Done mayEmpty(const QString& folder);

/// Empties the folder, or makes it, and leaves a summary.json that says that the story has not ended, so that
/// a story that stops on the way can be played again.
/// \returns the same, or Reason::storageFailed.
Done emptyForStory(const QString& folder);

}  // namespace ebbline::story
