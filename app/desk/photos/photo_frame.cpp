#include "app/desk/photos/photo_frame.h"

#include <QCursor>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>

#include <cmath>

namespace ebbline::deskapp {

namespace {

constexpr double markRadius = 9;     ///< px
constexpr double cursorReach = 16;   ///< px
constexpr double cursorStep = 0.02;  ///< of what is in sight; a tenth of it with Shift
constexpr double panStep = 0.1;

/// Twice: a wide halo and the line on it, so that it shows on light and dark skin alike.
template <typename Draw>
void outlined(QPainter& painter, const QColor& ink, const QColor& halo, Qt::PenStyle style, Draw draw)
{
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(halo, 5));
    draw();
    painter.setPen(QPen(ink, 2.2, style));
    draw();
}

QPointF arrowOf(int key)
{
    switch (key) {
    case Qt::Key_Left:
        return {-1, 0};
    case Qt::Key_Right:
        return {1, 0};
    case Qt::Key_Up:
        return {0, -1};
    case Qt::Key_Down:
        return {0, 1};
    default:
        return {};
    }
}

}  // namespace

PhotoThumb::PhotoThumb(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    connect(this, &PhotoThumb::changed, this, [this] { update(); });
}

void PhotoThumb::setPictures(PhotoPictures* pictures)
{
    if (pictures == m_pictures) {
        return;
    }
    if (m_pictures) {
        m_pictures->disconnect(this);
    }
    m_pictures = pictures;
    if (pictures != nullptr) {
        connect(pictures, &PhotoPictures::arrived, this, [this](const QString& key) {
            if (key == m_photo) {
                update();
            }
        });
    }
    Q_EMIT changed();
}

void PhotoThumb::setPicture(const QImage& picture)
{
    m_picture = picture;
    Q_EMIT changed();
}

void PhotoThumb::paint(QPainter* painter)
{
    const auto picture = !m_picture.isNull() || !m_pictures || m_photo.isEmpty()
                             ? m_picture
                             : m_pictures->picture(photoFromKey(m_photo), PhotoPictures::Size::thumbnail);
    if (!picture.isNull()) {
        const QRectF box(0, 0, width(), height());
        paintLaid(*painter, box, picture, fitted(picture.size(), box));
    }
}

PhotoFrame::PhotoFrame(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    setAcceptedMouseButtons(Qt::LeftButton);
    setActiveFocusOnTab(true);
    connect(this, &PhotoFrame::changed, this, [this] { update(); });
    connect(this, &QQuickItem::activeFocusChanged, this, [this] { update(); });
}

void PhotoFrame::setComparison(PhotoComparison* comparison)
{
    if (comparison == m_comparison) {
        return;
    }
    if (m_comparison) {
        m_comparison->disconnect(this);
    }
    m_comparison = comparison;
    if (comparison != nullptr) {
        for (const auto signal : {&PhotoComparison::changed, &PhotoComparison::sightChanged, &PhotoComparison::cursorMoved}) {
            connect(comparison, signal, this, [this] {
                isMarking() ? setCursor(Qt::CrossCursor) : unsetCursor();
                update();
            });
        }
    }
    Q_EMIT changed();
}

void PhotoFrame::paint(QPainter* painter)
{
    const auto transform = m_comparison ? m_comparison->toFrame(m_half, frame()) : std::nullopt;
    if (!transform) {
        return;
    }
    const auto picture = m_comparison->imageOf(m_half);
    paintLaid(*painter, frame(), picture, *transform);
    if (isMarking()) {
        paintMarks(*painter, *transform, picture.size());
    }
}

void PhotoFrame::paintMarks(QPainter& painter, const QTransform& toFrame, const QSizeF& picture) const
{
    const auto* draft = m_comparison->draft();
    if (const auto right = draft->right()) {
        const auto place = toFrame.map(pointOf(*right, picture));
        outlined(painter, m_right, m_halo, Qt::DashLine, [&] {
            painter.drawRect(QRectF(place - QPointF(markRadius, markRadius), place + QPointF(markRadius, markRadius)));
        });
    }
    if (const auto left = draft->left()) {
        outlined(painter, m_left, m_halo, Qt::SolidLine, [&] { painter.drawEllipse(toFrame.map(pointOf(*left, picture)), markRadius, markRadius); });
    }
    if (hasActiveFocus()) {
        const auto share = m_comparison->cursor();
        const auto place = toFrame.map(QPointF(share.x() * picture.width(), share.y() * picture.height()));
        outlined(painter, m_cursor, m_halo, Qt::SolidLine, [&] {
            painter.drawLine(place - QPointF(cursorReach, 0), place + QPointF(cursorReach, 0));
            painter.drawLine(place - QPointF(0, cursorReach), place + QPointF(0, cursorReach));
        });
    }
}

void PhotoFrame::mousePressEvent(QMouseEvent* event)
{
    forceActiveFocus(Qt::MouseFocusReason);
    // A finger on a photograph must not scroll the page under it.
    setKeepMouseGrab(true);
    setKeepTouchGrab(true);
    m_pressed = event->position();
    if (isMarking()) {
        m_comparison->put(m_pressed, frame());
    }
}

void PhotoFrame::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_comparison || isMarking() || width() <= 0 || height() <= 0) {
        return;
    }
    const auto moved = event->position() - m_pressed;
    m_pressed = event->position();
    m_comparison->pan({-moved.x() / width(), -moved.y() / height()});
}

void PhotoFrame::wheelEvent(QWheelEvent* event)
{
    // Without Ctrl the page scrolls.
    if (!m_comparison || !event->modifiers().testFlag(Qt::ControlModifier)) {
        event->ignore();
        return;
    }
    constexpr double notch = 120;
    const auto transform = m_comparison->toFrame(PhotoComparison::Earlier, frame());
    const QSizeF picture = m_comparison->imageOf(PhotoComparison::Earlier).size();
    if (transform && !picture.isEmpty()) {
        const auto point = transform->inverted().map(event->position());
        m_comparison->zoom(std::pow(1.25, event->angleDelta().y() / notch), {point.x() / picture.width(), point.y() / picture.height()});
    }
    event->accept();
}

bool PhotoFrame::mark(const QKeyEvent& event)
{
    const auto arrow = arrowOf(event.key());
    if (!arrow.isNull()) {
        m_comparison->moveCursor(arrow * (event.modifiers().testFlag(Qt::ShiftModifier) ? cursorStep / 10 : cursorStep));
        return true;
    }
    switch (event.key()) {
    case Qt::Key_Space:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        m_comparison->putAtCursor();
        return true;
    case Qt::Key_Backspace:
        m_comparison->undo();
        return true;
    case Qt::Key_Escape:
        m_comparison->leaveMarking();
        return true;
    default:
        return false;
    }
}

bool PhotoFrame::lookAround(const QKeyEvent& event)
{
    const auto arrow = arrowOf(event.key());
    if (!arrow.isNull()) {
        m_comparison->pan(arrow * panStep);
        return true;
    }
    switch (event.key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        m_comparison->zoomIn();
        return true;
    case Qt::Key_Minus:
        m_comparison->zoomOut();
        return true;
    case Qt::Key_0:
        m_comparison->whole();
        return true;
    default:
        return false;
    }
}

void PhotoFrame::keyPressEvent(QKeyEvent* event)
{
    if (m_comparison && ((isMarking() && mark(*event)) || lookAround(*event))) {
        event->accept();
    } else {
        QQuickPaintedItem::keyPressEvent(event);
    }
}

}  // namespace ebbline::deskapp
