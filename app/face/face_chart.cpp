#include "app/face/face_chart.h"

#include "app/face/placement_hint.h"

#include <QCursor>
#include <QKeyEvent>
#include <QLineF>
#include <QPainter>

#include <algorithm>

namespace ebbline::face {

namespace {

constexpr double nearPoint = 11;  ///< frame units within which a point can be taken hold of
constexpr double nearLine = 8;
constexpr double shortestTrack = 8;  ///< shorter is a click, not a thread

double distanceToLine(const QPointF& point, const Track& track)
{
    const QPointF along = track.end - track.entry;
    const double square = QPointF::dotProduct(along, along);
    const double part =
        square > 0 ? std::clamp(QPointF::dotProduct(point - track.entry, along) / square, 0.0, 1.0) : 0.0;
    return QLineF(point, track.entry + along * part).length();
}

}  // namespace

FaceChart::FaceChart(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    setFlag(QQuickItem::ItemIsFocusScope, false);
    connect(this, &FaceChart::paletteChanged, this, [this] { update(); });
    connect(this, &FaceChart::cursorMoved, this, [this] { update(); });
    connect(this, &QQuickItem::activeFocusChanged, this, [this] { update(); });
}

void FaceChart::setView(int view)
{
    const auto next = static_cast<recovery::ChartView>(std::clamp(view, 1, 3));
    if (next != m_view) {
        m_view = next;
        forgetKeys();
        dropGesture();
        Q_EMIT viewChanged();
        Q_EMIT cursorMoved();
    }
}

void FaceChart::setTracks(const QList<Track>& tracks)
{
    if (tracks != m_tracks) {
        m_tracks = tracks;
        update();
        Q_EMIT tracksChanged();
    }
}

void FaceChart::setSelected(int number)
{
    if (number != m_selected) {
        m_selected = number;
        m_carried = Gesture::none;
        update();
        Q_EMIT selectedChanged();
        Q_EMIT cursorMoved();
    }
}

void FaceChart::setDrawable(bool drawable)
{
    if (drawable != m_drawable) {
        m_drawable = drawable;
        setAcceptedMouseButtons(drawable ? Qt::LeftButton : Qt::NoButton);
        setActiveFocusOnTab(drawable);
        if (drawable) {
            setCursor(Qt::CrossCursor);
        } else {
            unsetCursor();
        }
        update();
        Q_EMIT drawableChanged();
    }
}

void FaceChart::setCautionsShown(bool shown)
{
    if (shown != m_cautionsShown) {
        m_cautionsShown = shown;
        update();
        Q_EMIT cautionsShownChanged();
    }
}

void FaceChart::setTintedSide(int side)
{
    if (side != m_tintedSide) {
        m_tintedSide = side;
        update();
        Q_EMIT tintedSideChanged();
    }
}

QString FaceChart::cursorText() const
{
    const auto across = qRound(m_cursor.x());
    const auto down = qRound(m_cursor.y());
    if (m_carried == Gesture::movingEntry) {
        return tr("Entry point of thread %1 taken, now %2 across, %3 down: Space puts it down.").arg(m_selected).arg(across).arg(down);
    }
    if (m_carried == Gesture::movingEnd) {
        return tr("End of thread %1 taken, now %2 across, %3 down: Space puts it down.").arg(m_selected).arg(across).arg(down);
    }
    return m_keyEntry ? tr("Entry point set. Cursor %1 across, %2 down: Space sets the end.").arg(across).arg(down)
                      : tr("Cursor %1 across, %2 down: Space sets the entry point.").arg(across).arg(down);
}

QTransform FaceChart::frameToItem() const
{
    const double scale = std::min(width() / recovery::chartWidth, height() / recovery::chartHeight);
    QTransform transform;
    transform.translate((width() - recovery::chartWidth * scale) / 2,
                        (height() - recovery::chartHeight * scale) / 2);
    transform.scale(scale, scale);
    return transform;
}

QPointF FaceChart::toFrame(const QPointF& item) const
{
    const auto point = frameToItem().inverted().map(item);
    const auto inside = clampedToChart(point.x(), point.y());
    return {inside.x, inside.y};
}

const Track* FaceChart::trackAt(const QPointF& frame) const
{
    const Track* nearest = nullptr;
    double best = nearLine;
    for (const auto& track : m_tracks) {
        if (track.view != view()) {
            continue;
        }
        if (const double distance = distanceToLine(frame, track); distance < best) {
            best = distance;
            nearest = &track;
        }
    }
    return nearest;
}

const Track* FaceChart::selectedTrack() const
{
    const auto found = std::find_if(m_tracks.begin(), m_tracks.end(), [this](const Track& track) {
        return track.number == m_selected && track.view == view();
    });
    return found == m_tracks.end() ? nullptr : &*found;
}

void FaceChart::dropGesture()
{
    m_gesture = Gesture::none;
    update();
}

QList<Track> FaceChart::shownTracks() const
{
    auto tracks = m_tracks;
    if (m_gesture == Gesture::drawing) {
        const auto hint = hintFor(m_view, {m_pressed.x(), m_pressed.y()}, {m_current.x(), m_current.y()});
        tracks.append({0, view(), hint.side == recovery::Side::left, m_pressed, m_current});
        return tracks;
    }
    const auto moving = m_gesture == Gesture::none ? m_carried : m_gesture;
    if (moving != Gesture::none) {
        for (auto& track : tracks) {
            if (track.number == m_selected) {
                (moving == Gesture::movingEntry ? track.entry : track.end) = m_gesture == Gesture::none ? m_cursor : m_current;
            }
        }
    }
    return tracks;
}

void FaceChart::paint(QPainter* painter)
{
    if (width() <= 0 || height() <= 0) {
        return;
    }
    const FacePalette palette{m_ink, m_fold, m_left, m_right, m_caution, m_paper, m_selection};
    const auto transform = frameToItem();
    FaceWords words{m_leftWord, m_rightWord, m_movingZoneWord, m_notchWord, QFont(m_fontFamily)};
    // The size on screen stays what the theme says, whatever the chart is scaled to.
    words.font.setPointSizeF(m_textSize / transform.m11() * 0.75);
    words.font.setPixelSize(std::max(1, qRound(m_textSize / transform.m11())));

    painter->setTransform(transform, true);
    if (m_tintedSide != 0 && m_view == recovery::ChartView::front) {
        const bool left = m_tintedSide == static_cast<int>(recovery::Side::left);
        auto tint = left ? m_left : m_right;
        tint.setAlphaF(0.16f);
        painter->save();
        painter->setClipPath(artOf(m_view).strokes.front().path);
        painter->fillRect(QRectF(left ? recovery::chartWidth / 2 : 0, 0, recovery::chartWidth / 2,
                                 recovery::chartHeight), tint);
        painter->restore();
    }
    if (m_cautionsShown) {
        paintCautions(*painter, m_view, palette, words);
    }
    paintDrawing(*painter, m_view, palette);
    paintTracks(*painter, m_view, shownTracks(), m_selected, palette, words);
    paintSides(*painter, m_view, palette, words);

    if (m_drawable && hasActiveFocus()) {
        painter->setPen(QPen(m_selection, 1.4));
        painter->setBrush(Qt::NoBrush);
        painter->drawEllipse(m_cursor, 7, 7);
        painter->drawLine(m_cursor - QPointF(12, 0), m_cursor + QPointF(12, 0));
        painter->drawLine(m_cursor - QPointF(0, 12), m_cursor + QPointF(0, 12));
        if (m_keyEntry) {
            painter->setPen(QPen(m_selection, 2, Qt::DotLine));
            painter->drawLine(*m_keyEntry, m_cursor);
        }
    }
}

void FaceChart::mousePressEvent(QMouseEvent* event)
{
    forceActiveFocus(Qt::MouseFocusReason);
    forgetKeys();
    // A thread drawn with finger or pen must not scroll the page under it.
    setKeepMouseGrab(true);
    setKeepTouchGrab(true);
    m_pressed = toFrame(event->position());
    m_current = m_pressed;
    m_gesture = Gesture::drawing;
    if (const auto* track = selectedTrack()) {
        if (QLineF(m_pressed, track->entry).length() < nearPoint) {
            m_gesture = Gesture::movingEntry;
        } else if (QLineF(m_pressed, track->end).length() < nearPoint) {
            m_gesture = Gesture::movingEnd;
        }
    }
    update();
}

void FaceChart::mouseMoveEvent(QMouseEvent* event)
{
    if (m_gesture != Gesture::none) {
        m_current = toFrame(event->position());
        update();
    }
}

void FaceChart::mouseReleaseEvent(QMouseEvent* event)
{
    const auto gesture = m_gesture;
    m_current = toFrame(event->position());
    dropGesture();
    const bool travelled = QLineF(m_pressed, m_current).length() >= shortestTrack;
    if (gesture == Gesture::drawing && !travelled) {
        const auto* track = trackAt(m_pressed);
        Q_EMIT chosen(track == nullptr ? 0 : track->number);
    } else if (gesture == Gesture::drawing) {
        Q_EMIT drawn(m_pressed, m_current);
    } else if (const auto* track = selectedTrack(); track != nullptr && travelled) {
        const bool entry = gesture == Gesture::movingEntry;
        Q_EMIT moved(m_selected, entry ? m_current : track->entry, entry ? track->end : m_current);
    }
}

void FaceChart::mouseUngrabEvent()
{
    dropGesture();
}

void FaceChart::moveCursor(double dx, double dy)
{
    const auto inside = clampedToChart(m_cursor.x() + dx, m_cursor.y() + dy);
    m_cursor = {inside.x, inside.y};
    Q_EMIT cursorMoved();
}

void FaceChart::chooseBeside(int step)
{
    QList<int> here;
    for (const auto& track : m_tracks) {
        if (track.view == view()) {
            here << track.number;
        }
    }
    if (!here.isEmpty()) {
        const auto at = here.indexOf(m_selected);
        const auto next = at < 0 ? (step > 0 ? 0 : here.size() - 1) : (at + step + here.size()) % here.size();
        forgetKeys();
        Q_EMIT chosen(here[next]);
    }
}

void FaceChart::takeHold(Gesture end)
{
    const auto* track = selectedTrack();
    if (track == nullptr) {
        return;
    }
    m_keyEntry.reset();
    m_carried = end;
    m_cursor = end == Gesture::movingEntry ? track->entry : track->end;
    Q_EMIT cursorMoved();
}

void FaceChart::setPoint()
{
    if (const auto* track = selectedTrack(); m_carried != Gesture::none && track != nullptr) {
        const bool entry = m_carried == Gesture::movingEntry;
        const auto from = entry ? m_cursor : track->entry;
        const auto to = entry ? track->end : m_cursor;
        if (QLineF(from, to).length() >= shortestTrack) {
            m_carried = Gesture::none;
            Q_EMIT moved(m_selected, from, to);
        }
    } else if (!m_keyEntry) {
        m_keyEntry = m_cursor;
    } else if (QLineF(*m_keyEntry, m_cursor).length() >= shortestTrack) {
        const auto entry = *m_keyEntry;
        m_keyEntry.reset();
        Q_EMIT drawn(entry, m_cursor);
    }
    Q_EMIT cursorMoved();
}

bool FaceChart::forgetKeys()
{
    const bool held = m_keyEntry.has_value() || m_carried != Gesture::none;
    m_keyEntry.reset();
    m_carried = Gesture::none;
    return held;
}

void FaceChart::keyPressEvent(QKeyEvent* event)
{
    if (!m_drawable) {
        QQuickPaintedItem::keyPressEvent(event);
        return;
    }
    const double step = event->modifiers().testFlag(Qt::ShiftModifier) ? 1 : 8;
    switch (event->key()) {
    case Qt::Key_Left:
        moveCursor(-step, 0);
        break;
    case Qt::Key_Right:
        moveCursor(step, 0);
        break;
    case Qt::Key_Up:
        moveCursor(0, -step);
        break;
    case Qt::Key_Down:
        moveCursor(0, step);
        break;
    case Qt::Key_PageUp:
        chooseBeside(-1);
        break;
    case Qt::Key_PageDown:
        chooseBeside(1);
        break;
    case Qt::Key_Home:
        takeHold(Gesture::movingEntry);
        break;
    case Qt::Key_End:
        takeHold(Gesture::movingEnd);
        break;
    case Qt::Key_Space:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        setPoint();
        break;
    case Qt::Key_Escape:
        if (!forgetKeys()) {
            event->ignore();
            return;
        }
        Q_EMIT cursorMoved();
        break;
    default:
        event->ignore();
        return;
    }
    event->accept();
}

}  // namespace ebbline::face
