#pragma once
/// \file
/// Shows a picture: one from the shelf by its key, or one at hand.

#include "app/diary/model/photo_shelf.h"

#include <QQuickPaintedItem>

namespace ebbline::diaryapp {

class PhotoFrame : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(ebbline::diaryapp::PhotoShelf* shelf READ shelf WRITE setShelf NOTIFY sourceChanged FINAL)
    Q_PROPERTY(QString photo READ photo WRITE setPhoto NOTIFY sourceChanged FINAL)      ///< its key on the shelf
    Q_PROPERTY(QImage picture READ picture WRITE setPicture NOTIFY sourceChanged FINAL)  ///< one at hand
    Q_PROPERTY(bool whole READ isWhole WRITE setWhole NOTIFY sourceChanged FINAL)  ///< all of it; else it fills the item, cut at its edges
    Q_PROPERTY(qreal shape READ shape NOTIFY pictureChanged FINAL)  ///< height by width; 0 while there is no picture

public:
    explicit PhotoFrame(QQuickItem* parent = nullptr) : QQuickPaintedItem(parent) {}

    PhotoShelf* shelf() const { return m_shelf; }
    void setShelf(PhotoShelf* shelf);
    QString photo() const { return m_photo; }
    void setPhoto(const QString& key);
    QImage picture() const { return m_picture; }
    void setPicture(const QImage& picture);
    bool isWhole() const { return m_whole; }
    void setWhole(bool whole);
    qreal shape() const { return m_picture.isNull() ? 0 : qreal(m_picture.height()) / m_picture.width(); }

    void paint(QPainter* painter) override;

Q_SIGNALS:
    void sourceChanged();
    void pictureChanged();

private:
    void look();
    void show(const QImage& picture);

    PhotoShelf* m_shelf = nullptr;
    QString m_photo;
    QImage m_picture;
    bool m_whole = false;
};

}  // namespace ebbline::diaryapp
