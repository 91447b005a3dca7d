#include "app/desk/sheet/sheet_photos.h"

#include "app/desk/model/times.h"
#include "app/desk/photos/photo_rows.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

namespace ebbline::deskapp {

namespace {

class Sheet {
    Q_DECLARE_TR_FUNCTIONS(Sheet)
};

constexpr double gap = 16;
constexpr double captionHeight = 18;

SheetPhoto photoOf(const desk::CoursePhoto& photo)
{
    const auto taken = photo.putInBy ? Sheet::tr("right after the treatment") : stampText(photo.at);
    return {photo.photo, Sheet::tr("%1, %2", "day, time").arg(dayText(photo.day), taken), {{}, photo.eyes}, false};
}

/// The later picture as it lies over the earlier one, cut to it: what is outside does not go into a file either.
QImage laidPicture(const QImage& later, const QTransform& laid, const QSize& earlier)
{
    QImage composed(earlier, QImage::Format_RGB32);
    composed.fill(Qt::white);
    QPainter painter(&composed);
    paintLaid(painter, QRectF(QPointF(), earlier), later, laid);
    return composed;
}

void paintOne(QPainter& painter, const QRectF& column, const SheetPhoto& photo, const QImage& picture, const QFont& font)
{
    const QRectF box(column.left(), column.top(), column.width(), column.height() - captionHeight);
    if (!picture.isNull()) {
        const auto whole = fitted(picture.size(), box);
        paintLaid(painter, box, picture, whole);
        painter.setPen(QPen(QColor(0x88, 0x88, 0x88), 0.6));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(whole.mapRect(QRectF(picture.rect())));
    }
    painter.setPen(Qt::black);
    painter.setFont(font);
    painter.drawText(QRectF(column.left(), box.bottom() + 2, column.width(), captionHeight), Qt::AlignHCenter | Qt::AlignTop,
                     photo.unreadable ? Sheet::tr("%1: could not be opened").arg(photo.when) : photo.when);
}

}  // namespace

QString SheetPhotoPair::how() const
{
    if (!last) {
        return Sheet::tr("The only photograph of this view.");
    }
    return isAligned() ? Sheet::tr("Aligned by the eyes, not stretched and not mirrored.") : Sheet::tr("As they were taken, perhaps not on one scale.");
}

QString SheetPhotoPair::asText() const
{
    return last ? Sheet::tr("Photographs, %1: %2, and %3. %4", "view, first, last, how").arg(view, first.when, last->when, how())
                : Sheet::tr("Photograph, %1: %2. %3", "view, when, how").arg(view, first.when, how());
}

QList<SheetPhotoPair> sheetPhotosOf(Workplace& workplace, const recovery::CourseId& course)
{
    QList<SheetPhotoPair> pairs;
    const auto all = workplace.desk().photos(course);
    for (const auto pose : {photos::Pose::front, photos::Pose::leftOblique, photos::Pose::rightOblique}) {
        const desk::CoursePhoto* first = nullptr;
        const desk::CoursePhoto* last = nullptr;
        for (const auto& photo : all) {
            if (photo.pose == pose && photo.isHere() && !photo.refused) {
                first = first == nullptr ? &photo : first;
                last = &photo;
            }
        }
        if (first != nullptr) {
            pairs.append({poseName(pose), photoOf(*first), first == last ? std::nullopt : std::optional(photoOf(*last))});
        }
    }
    return pairs;
}

void paintSheetPhotos(QPainter& painter, const QRectF& area, const SheetPhotoPair& pair, const QFont& font)
{
    const double half = (area.width() - gap) / 2;
    paintOne(painter, {area.left(), area.top(), half, area.height()}, pair.first, pair.first.marked.picture, font);
    if (pair.last) {
        const auto& own = pair.last->marked.picture;
        const auto laid = laidOver(pair.last->marked, pair.first.marked);
        paintOne(painter, {area.left() + half + gap, area.top(), half, area.height()}, *pair.last,
                 laid ? laidPicture(own, *laid, pair.first.marked.picture.size()) : own, font);
    }
}

}  // namespace ebbline::deskapp
