#pragma once
/// \file
/// Plays the invented scenario through the real programs and writes down what happened.

#include "app/story/story_folder.h"
#include "core/clock/instant.h"

#include <QString>

#include <optional>

namespace ebbline::story {

struct StorySetup {
    QString out;         ///< folder for screens, sheet and summary
    QString hubProgram;  ///< ebbline-hub
    bool screens = true;
    /// A demo: the story began eight days before, ends now, and leaves its last day unanswered.
    std::optional<clock::Instant> endsAt = {};
};

/// Needs a QApplication and its event loop. Prints progress on stderr. Without a hub's program nothing is touched.
/// \returns the folder, still held, or what went wrong; the summary then says how far it came.
Result<FolderHold> playStory(const StorySetup& setup);

}  // namespace ebbline::story
