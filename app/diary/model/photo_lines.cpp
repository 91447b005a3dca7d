#include "app/diary/model/photo_lines.h"

#include "app/diary/model/times.h"
#include "app/diary/model/words.h"
#include "core/bytes/text.h"

#include <QCoreApplication>

namespace ebbline::diaryapp {

namespace {

QString said(const char* text)
{
    return QCoreApplication::translate("DiaryPhotos", text);
}

QString stateOf(const patient::PhotoView& view, const clock::Moment& now, const aftercare::Zone& zone)
{
    const QString arrived = view.received ? whenText(zone.moment(view.received->at), now) : QString();
    if (view.here)
        return view.received ? said(QT_TRANSLATE_NOOP("DiaryPhotos", "On the clinic's computer since %1")).arg(arrived)
                             : said(QT_TRANSLATE_NOOP("DiaryPhotos", "Saved on this phone"));
    return view.received ? said(QT_TRANSLATE_NOOP("DiaryPhotos", "Not on this phone. On the clinic's computer since %1")).arg(arrived)
                         : said(QT_TRANSLATE_NOOP("DiaryPhotos", "Not on this phone. Your old phone may have it."));
}

}  // namespace

QString poseName(photos::Pose pose)
{
    switch (pose) {
    case photos::Pose::leftOblique: return said(QT_TRANSLATE_NOOP("DiaryPhotos", "Your left side"));
    case photos::Pose::rightOblique: return said(QT_TRANSLATE_NOOP("DiaryPhotos", "Your right side"));
    case photos::Pose::front: break;
    }
    return said(QT_TRANSLATE_NOOP("DiaryPhotos", "From the front"));
}

PhotoLine photoLine(const patient::PhotoView& view, const clock::Moment& now, const aftercare::Zone& zone)
{
    const QString name = poseName(view.pose);
    //: A photograph: which side, the day of recovery, and when
    return {QString::fromStdString(bytes::toHex(view.photo.view())), name,
            said(QT_TRANSLATE_NOOP("DiaryPhotos", "%1. %2, %3")).arg(name, dayText(view.day), whenText(view.at, now)), stateOf(view, now, zone),
            view.here};
}

QString photosState(const std::vector<patient::PhotoView>& views)
{
    const auto arrived = std::ranges::count_if(views, [](const patient::PhotoView& view) { return view.received.has_value(); });
    if (views.empty())
        return {};
    if (arrived == 0 && std::ranges::all_of(views, &patient::PhotoView::here))
        return said(QT_TRANSLATE_NOOP("DiaryPhotos", "Photographs: saved on this phone"));
    //: "Photographs: 2 of 3 on the clinic's computer"
    return said(QT_TRANSLATE_NOOP("DiaryPhotos", "Photographs: %1 of %2 on the clinic's computer"))
        .arg(digits(static_cast<int>(arrived)), digits(static_cast<int>(views.size())));
}

std::optional<photos::PhotoId> photoOf(const QString& key)
{
    const auto decoded = bytes::fromHex(key.toStdString());
    return decoded && decoded->size() == 16 ? std::optional(photos::PhotoId::from(*decoded)) : std::nullopt;
}

}  // namespace ebbline::diaryapp
