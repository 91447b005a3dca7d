// The part of the comparison in which a person marks the eyes.
#include "app/desk/photos/photo_comparison.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/words.h"

#include <algorithm>
#include <cmath>

namespace ebbline::deskapp {

void PhotoComparison::startMarking(int half)
{
    const auto* photo = half == Earlier || half == Later ? photoOf(half) : nullptr;
    if (photo == nullptr || imageOf(half).isNull()) {
        return;
    }
    m_takingBack.reset();
    m_marking = Marking{half, photo->photo, EyeMarking(photo->eyes)};
    m_problem.clear();
    m_cursor = {0.5, 0.4};
    Q_EMIT changed();
    Q_EMIT cursorMoved();
}

void PhotoComparison::leaveMarking()
{
    leaveTakingBack();
    if (m_marking) {
        m_marking.reset();
        m_problem.clear();
        Q_EMIT changed();
    }
}

void PhotoComparison::putSpot(const photos::Spot& spot)
{
    m_marking->draft.put(spot);
    m_problem.clear();
    Q_EMIT changed();
    Q_EMIT cursorMoved();
}

void PhotoComparison::put(const QPointF& place, const QRectF& frame)
{
    const auto transform = m_marking ? toFrame(m_marking->half, frame) : std::nullopt;
    if (!transform) {
        return;
    }
    const QSizeF size = imageOf(m_marking->half).size();
    const auto point = transform->inverted().map(place);
    if (!QRectF(QPointF(), size).contains(point)) {
        return;  // beside the picture
    }
    m_cursor = {point.x() / size.width(), point.y() / size.height()};
    putSpot(spotOf(point, size));
}

void PhotoComparison::putAtCursor()
{
    if (m_marking) {
        putSpot(spotOf(m_cursor, {1, 1}));
    }
}

void PhotoComparison::moveCursor(const QPointF& by)
{
    if (!m_marking) {
        return;
    }
    const auto moved = m_cursor + by / m_sight.zoom;
    m_cursor = {std::clamp(moved.x(), 0.0, 1.0), std::clamp(moved.y(), 0.0, 1.0)};
    // The cursor pulls the sight along.
    const double reach = 0.45 / m_sight.zoom;
    look({m_sight.zoom, {std::clamp(m_sight.centre.x(), m_cursor.x() - reach, m_cursor.x() + reach),
                         std::clamp(m_sight.centre.y(), m_cursor.y() - reach, m_cursor.y() + reach)}});
    Q_EMIT cursorMoved();
}

void PhotoComparison::undo()
{
    if (canUndo()) {
        m_marking->draft.undo();
        m_problem.clear();
        Q_EMIT changed();
        Q_EMIT cursorMoved();
    }
}

void PhotoComparison::keep()
{
    const auto eyes = m_marking ? m_marking->draft.eyes() : std::nullopt;
    if (!eyes || !m_workplace.isOpen()) {
        return;
    }
    // Told in words of the page, not as a failure of the desk: the marks stay for another try.
    if (!photos::check(*eyes)) {
        m_problem = tr("The two marks are too close together to turn a picture by. Mark the middle of each pupil.");
        Q_EMIT changed();
        return;
    }
    const auto photo = m_marking->photo;
    m_marking.reset();
    m_workplace.settle(m_workplace.desk().markEyes(m_course, photo, *eyes));
    refresh();
}

QString PhotoComparison::prompt() const
{
    if (!m_marking) {
        return {};
    }
    const bool front = m_pose == photos::Pose::front;
    const auto next = m_marking->draft.next();
    if (!next) {
        return tr("Both eyes are marked. Keep them, or mark again: the nearer mark moves.");
    }
    if (*next == EyeMarking::Eye::right) {
        return front ? tr("Mark the middle of the patient's right pupil: the one on the left of the picture.")
                     : tr("Mark the middle of the patient's right pupil.");
    }
    return front ? tr("Now the patient's left pupil: the one on the right of the picture.") : tr("Now the patient's left pupil.");
}

QString PhotoComparison::caution() const
{
    if (!m_problem.isEmpty()) {
        return m_problem;
    }
    return m_marking && m_marking->draft.looksSwapped()
               ? tr("The patient's left eye is marked to the left of the right one. If the picture is upright, the two are swapped.")
               : QString();
}

QString PhotoComparison::cursorText() const
{
    if (!m_marking) {
        return {};
    }
    const auto share = [](double part) { return charts::digits(static_cast<int>(std::lround(part * 100))); };
    return tr("%1 Cursor %2% across, %3% down. Space marks.", "what to mark, shares of the picture")
        .arg(prompt(), share(m_cursor.x()), share(m_cursor.y()));
}

}  // namespace ebbline::deskapp
