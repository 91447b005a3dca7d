#pragma once
/// \file
/// Keeps what has the keyboard inside the visible part of a scrolling area, also when that part
/// shrinks because a keyboard came up on the screen. Of a text that is higher than that part it
/// keeps the line that is typed. What is said about the typing comes into sight as it appears, and
/// stays there as long as both have room.

#include <QPointer>
#include <QQuickItem>
#include <QtQml/qqmlregistration.h>

namespace ebbline::controls {

class FocusFollower : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    /// A Flickable: its contentItem holds what scrolls.
    Q_PROPERTY(QQuickItem* area READ area WRITE setArea NOTIFY areaChanged FINAL)
    /// Within the area: a sentence about what is typed. May be null.
    Q_PROPERTY(QQuickItem* alert READ alert WRITE setAlert NOTIFY alertChanged FINAL)
    Q_PROPERTY(qreal margin MEMBER m_margin NOTIFY areaChanged FINAL)

public:
    explicit FocusFollower(QQuickItem* parent = nullptr);

    QQuickItem* area() const { return m_area; }
    void setArea(QQuickItem* area);
    QQuickItem* alert() const { return m_alert; }
    void setAlert(QQuickItem* alert);

Q_SIGNALS:
    void areaChanged();
    void alertChanged();

private Q_SLOTS:
    void follow();
    void typed();

private:
    void listen();

    QPointer<QQuickItem> m_area;
    QPointer<QQuickItem> m_alert;
    QPointer<QQuickItem> m_heard;  ///< the text whose cursor is followed
    qreal m_margin = 16;
    bool m_unsettled = false;  ///< the focus or the cursor moved, and no frame was drawn since
    bool m_told = false;       ///< the alert appeared, and no frame was drawn since
};

}  // namespace ebbline::controls
