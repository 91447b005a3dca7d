#pragma once
/// \file
/// Keeps what has the keyboard inside the visible part of a scrolling area.

#include <QPointer>
#include <QQuickItem>
#include <QtQml/qqmlregistration.h>

namespace ebbline::controls {

class FocusFollower : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    /// A Flickable: its contentItem holds what scrolls.
    Q_PROPERTY(QQuickItem* area MEMBER m_area NOTIFY areaChanged FINAL)
    Q_PROPERTY(qreal margin MEMBER m_margin NOTIFY areaChanged FINAL)

public:
    explicit FocusFollower(QQuickItem* parent = nullptr);

Q_SIGNALS:
    void areaChanged();

private:
    void follow();

    QPointer<QQuickItem> m_area;
    qreal m_margin = 16;
};

}  // namespace ebbline::controls
