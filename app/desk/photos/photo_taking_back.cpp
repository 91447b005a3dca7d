// The part of the comparison in which a photograph of the clinic's is taken back.
#include "app/desk/photos/photo_comparison.h"
#include "app/desk/photos/photo_rows.h"

#include <algorithm>

namespace ebbline::deskapp {

QString PhotoComparison::takeBackQuestion() const
{
    const auto found = m_takingBack ? std::ranges::find(m_all, *m_takingBack, &desk::CoursePhoto::photo) : m_all.end();
    return found == m_all.end()
               ? QString()
               : tr("Take this photograph back: %1, right after the treatment? Every desk of the clinic lets it go, and it does not come back.", "view")
                     .arg(poseName(found->pose));
}

void PhotoComparison::askTakeBack(int half)
{
    const auto* photo = half == Earlier || half == Later ? photoOf(half) : nullptr;
    if (photo == nullptr || !photo->putInBy || !m_workplace.isOpen()) {
        return;
    }
    if (*photo->putInBy != m_workplace.desk().person() && !m_workplace.mayDo(records::Task::treat)) {
        return;
    }
    leaveMarking();
    m_takingBack = photo->photo;
    Q_EMIT changed();
}

void PhotoComparison::takeBack()
{
    if (!m_takingBack || !m_workplace.isOpen()) {
        return;
    }
    const auto photo = *m_takingBack;
    m_takingBack.reset();
    m_workplace.settle(m_workplace.desk().takeBackPhoto(m_course, photo));
    refresh();
}

void PhotoComparison::leaveTakingBack()
{
    if (m_takingBack) {
        m_takingBack.reset();
        Q_EMIT changed();
    }
}

}  // namespace ebbline::deskapp
