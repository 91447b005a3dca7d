#include "app/diary/model/photo_frame.h"

#include <QPainter>

namespace ebbline::diaryapp {

void PhotoFrame::setShelf(PhotoShelf* shelf)
{
    if (m_shelf == shelf)
        return;
    if (m_shelf)
        m_shelf->disconnect(this);
    m_shelf = shelf;
    if (shelf) {
        connect(shelf, &PhotoShelf::arrived, this, [this](const QString& key) {
            if (key == m_photo)
                look();
        });
        connect(shelf, &PhotoShelf::emptied, this, [this] { show({}); });
        connect(shelf, &QObject::destroyed, this, [this] { m_shelf = nullptr; });
    }
    look();
    Q_EMIT sourceChanged();
}

void PhotoFrame::setPhoto(const QString& key)
{
    if (m_photo == key)
        return;
    m_photo = key;
    show({});
    look();
    Q_EMIT sourceChanged();
}

void PhotoFrame::setPicture(const QImage& picture)
{
    show(picture);
    Q_EMIT sourceChanged();
}

void PhotoFrame::setWhole(bool whole)
{
    if (m_whole == whole)
        return;
    m_whole = whole;
    look();
    update();
    Q_EMIT sourceChanged();
}

void PhotoFrame::look()
{
    if (!m_shelf || m_photo.isEmpty())
        return;
    if (const QImage there = m_shelf->picture(m_photo, m_whole ? PhotoShelf::Size::Whole : PhotoShelf::Size::Small); !there.isNull())
        show(there);
}

void PhotoFrame::show(const QImage& picture)
{
    m_picture = picture;
    update();
    Q_EMIT pictureChanged();
}

void PhotoFrame::paint(QPainter* painter)
{
    if (m_picture.isNull())
        return;
    painter->setRenderHint(QPainter::SmoothPixmapTransform);
    const QRectF frame(0, 0, width(), height());
    QRectF target(QPointF(), QSizeF(m_picture.size()).scaled(frame.size(), m_whole ? Qt::KeepAspectRatio : Qt::KeepAspectRatioByExpanding));
    target.moveCenter(frame.center());
    painter->setClipRect(frame);
    painter->drawImage(target, m_picture);
}

}  // namespace ebbline::diaryapp
