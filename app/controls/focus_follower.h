#pragma once
/// \file
/// Keeps what has the keyboard inside the visible part of a scrolling area, also when that part
/// shrinks because a keyboard came up on the screen.

#include <QPointer>
#include <QQuickItem>
#include <QtQml/qqmlregistration.h>

namespace ebbline::controls {

class FocusFollower : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    /// A Flickable: its contentItem holds what scrolls.
    Q_PROPERTY(QQuickItem* area READ area WRITE setArea NOTIFY areaChanged FINAL)
    Q_PROPERTY(qreal margin MEMBER m_margin NOTIFY areaChanged FINAL)

public:
    explicit FocusFollower(QQuickItem* parent = nullptr);

    QQuickItem* area() const { return m_area; }
    void setArea(QQuickItem* area);

Q_SIGNALS:
    void areaChanged();

private:
    void follow();

    QPointer<QQuickItem> m_area;
    qreal m_margin = 16;
    bool m_unsettled = false;  ///< the focus moved, and no frame was drawn since
};

}  // namespace ebbline::controls
