#pragma once
/// \file
/// Photographs as items: a small one in the strip or of what is at hand, and one of the two that stand beside each other, in which the
/// eyes are marked by mouse, pen, touch or keys.
///
/// Painted from memory; nothing of a picture goes through a file or a cache of Qt's. The patient's left stays
/// where the camera saw it in every language.
///
/// Keys in a frame: + and - zoom, 0 shows the whole; arrows move what is in sight. While marking, arrows move a
/// cursor (with Shift in small steps), Space or Enter marks, Backspace undoes, Escape ends.

#include "app/desk/photos/photo_comparison.h"

#include <QColor>
#include <QPointer>
#include <QQuickPaintedItem>

namespace ebbline::deskapp {

class PhotoThumb : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(ebbline::deskapp::PhotoPictures* pictures READ pictures WRITE setPictures NOTIFY changed FINAL)
    Q_PROPERTY(QString photo MEMBER m_photo NOTIFY changed FINAL)  ///< its key
    Q_PROPERTY(QImage picture READ picture WRITE setPicture NOTIFY changed FINAL)  ///< one at hand, in its place

public:
    explicit PhotoThumb(QQuickItem* parent = nullptr);
    PhotoPictures* pictures() const { return m_pictures; }
    void setPictures(PhotoPictures* pictures);
    QImage picture() const { return m_picture; }
    void setPicture(const QImage& picture);
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void changed();

private:
    QPointer<PhotoPictures> m_pictures;
    QString m_photo;
    QImage m_picture;
};

class PhotoFrame : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(ebbline::deskapp::PhotoComparison* comparison READ comparison WRITE setComparison NOTIFY changed FINAL)
    Q_PROPERTY(int half MEMBER m_half NOTIFY changed FINAL)  ///< PhotoComparison::Half
    Q_PROPERTY(QColor leftColor MEMBER m_left NOTIFY changed FINAL)
    Q_PROPERTY(QColor rightColor MEMBER m_right NOTIFY changed FINAL)
    Q_PROPERTY(QColor cursorColor MEMBER m_cursor NOTIFY changed FINAL)
    Q_PROPERTY(QColor halo MEMBER m_halo NOTIFY changed FINAL)  ///< around marks, so that they show on any ground

public:
    explicit PhotoFrame(QQuickItem* parent = nullptr);
    PhotoComparison* comparison() const { return m_comparison; }
    void setComparison(PhotoComparison* comparison);
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void changed();

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    bool isMarking() const { return m_comparison && m_comparison->marking() == m_half; }
    QRectF frame() const { return {0, 0, width(), height()}; }
    void paintMarks(QPainter& painter, const QTransform& toFrame, const QSizeF& picture) const;
    bool mark(const QKeyEvent& event);
    bool lookAround(const QKeyEvent& event);

    QPointer<PhotoComparison> m_comparison;
    int m_half = PhotoComparison::Earlier;
    QColor m_left{Qt::black};
    QColor m_right{Qt::black};
    QColor m_cursor{Qt::black};
    QColor m_halo{Qt::white};
    QPointF m_pressed;
};

}  // namespace ebbline::deskapp
