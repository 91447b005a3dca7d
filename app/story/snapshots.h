#pragma once
/// \file
/// What a patient's camera gives in the story: drawn faces that go the way a photograph goes, through the phone's
/// vault and the hub to the desk, and what the clinic then does with them.

#include "app/story/stage.h"

#include <map>

namespace ebbline::story {

class Snapshots {
public:
    /// Adds what the telling speaks of to the phone's diary. \returns as patient::Diary::addPhoto().
    Done take(Phone& phone, const Telling& telling, const recovery::Entry& entry);
    /// The eyes are marked at the desk in the first and the last photograph of each view of a course.
    Done markEyes(Stage& stage, const recovery::CourseId& course);
    std::size_t taken() const { return m_eyes.size(); }
    /// How many of all that were taken the desk holds, whole.
    std::size_t atTheDesk(Stage& stage) const;

private:
    std::map<photos::PhotoId, photos::Eyes> m_eyes;  ///< known, since the faces are drawn
};

}  // namespace ebbline::story
