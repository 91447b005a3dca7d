#pragma once
/// \file
/// Pairing as the phone lives it.

#include "core/patient/diary.h"
#include "core/sync/enrolling.h"

namespace ebbline::patient {

/// Joins the clinic by the code that its desk shows. The code of a desk is refused.
class Joining : public sync::Enrolling {
public:
    /// \pre the diary outlives it
    Joining(Diary& diary, const clock::Clock& clock);
    Joining(const Joining&) = delete;
    Joining& operator=(const Joining&) = delete;

    std::string clinicName() const { return m_clinicName; }  ///< empty until linked

private:
    Done takeLink(const pairing::Offer& offer, bytes::View link);

    Diary& m_diary;
    std::string m_clinicName;
};

}  // namespace ebbline::patient
