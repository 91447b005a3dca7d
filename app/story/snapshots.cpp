#include "app/story/snapshots.h"

#include "app/desk/photos/photo_lay.h"
#include "app/face/drawn_face.h"

#include <algorithm>

namespace ebbline::story {

Done Snapshots::take(Phone& phone, const Telling& telling, const recovery::Entry& entry)
{
    for (const photos::Pose pose : telling.photos) {
        face::DrawnFace face;
        face.view = static_cast<recovery::ChartView>(pose);
        const auto swelling = telling.scores.find({recovery::Symptom::swelling, recovery::Side::left});
        face.marked = swelling == telling.scores.end() ? 0 : swelling->second.points() / 8.0;
        // Nobody holds a phone twice in the same way.
        face.turned = telling.day * 37 % 11 - 5;
        face.size = 0.8 + telling.day * 7 % 5 * 0.05;
        face.shift = {static_cast<double>(telling.day * 13 % 31 - 15), static_cast<double>(telling.day * 17 % 25 - 12)};
        const auto drawn = face::drawnFace(face);
        const QByteArray jpeg = face::jpegOf(drawn.picture);
        const auto added = phone.program->home().diary().addPhoto({reinterpret_cast<const std::uint8_t*>(jpeg.constData()), static_cast<std::size_t>(jpeg.size())},
                                                                  pose, entry.id, entry.at);
        if (!added)
            return fail(added.error());
        m_eyes[*added] = {deskapp::spotOf(drawn.leftEye, drawn.picture.size()), deskapp::spotOf(drawn.rightEye, drawn.picture.size())};
    }
    return {};
}

Done Snapshots::markEyes(Stage& stage, const recovery::CourseId& course)
{
    desk::Desk& desk = stage.desk().workplace().desk();
    const auto all = desk.photos(course);
    for (const auto pose : {photos::Pose::front, photos::Pose::leftOblique, photos::Pose::rightOblique}) {
        const auto isOfPose = [pose](const desk::CoursePhoto& photo) { return photo.pose == pose; };
        const auto first = std::find_if(all.begin(), all.end(), isOfPose);
        const auto last = std::find_if(all.rbegin(), all.rend(), isOfPose);
        if (first == all.end() || first->photo == last->photo)
            continue;
        for (const auto& photo : {first->photo, last->photo})
            if (const Done marked = desk.markEyes(course, photo, m_eyes.at(photo)); !marked)
                return marked;
    }
    stage.desk().workplace().settle(Done{});
    return {};
}

std::size_t Snapshots::atTheDesk(Stage& stage) const
{
    std::size_t held = 0;
    for (const auto& phone : stage.phones())
        for (const auto& photo : stage.desk().workplace().desk().photos(phone->course))
            held += m_eyes.contains(photo.photo) && photo.isHere() && !photo.refused ? 1 : 0;
    return held;
}

}  // namespace ebbline::story
