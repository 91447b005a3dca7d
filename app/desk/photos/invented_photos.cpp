#include "app/desk/photos/invented_photos.h"

#include "app/desk/photos/photo_lay.h"
#include "app/face/drawn_face.h"
#include "core/photos/sealed_photo.h"

#include <algorithm>

namespace ebbline::deskapp {

namespace {

constexpr std::size_t mostCourses = 3;
constexpr std::size_t fewestEntries = 3;

bytes::View viewOf(const QByteArray& jpeg)
{
    return {reinterpret_cast<const std::uint8_t*>(jpeg.constData()), static_cast<std::size_t>(jpeg.size())};
}

/// As the clinic's own camera sees it right after the treatment.
Done addClinicPhoto(desk::Desk& desk, const recovery::CourseId& course, photos::Pose pose)
{
    const auto drawn = face::drawnFace({.view = static_cast<recovery::ChartView>(pose), .marked = 0.4});
    const auto added = desk.addClinicPhoto(course, viewOf(face::jpegOf(drawn.picture)), pose);
    return added ? desk.markEyes(course, *added, {spotOf(drawn.leftEye, drawn.picture.size()), spotOf(drawn.rightEye, drawn.picture.size())})
                 : Done(fail(added.error()));
}

Done addPhoto(desk::Desk& desk, const recovery::CourseId& course, const recovery::Entry& entry, photos::Pose pose, const face::DrawnFace& face, bool eyesMarked)
{
    const auto drawn = face::drawnFace(face);
    const auto jpeg = face::jpegOf(drawn.picture);
    const auto sealed = photos::seal(viewOf(jpeg));
    if (!sealed) {
        return fail(sealed.error());
    }
    const auto added = desk.vault().appendPhoto({course, sealed->manifest, pose, entry.id, entry.at}, sealed->chunks, entry.recordedAt, {});
    if (!added) {
        return fail(added.error());
    }
    return eyesMarked ? desk.markEyes(course, sealed->manifest.photo, {spotOf(drawn.leftEye, drawn.picture.size()), spotOf(drawn.rightEye, drawn.picture.size())})
                      : Done{};
}

std::vector<recovery::Entry> entriesOf(const journal::CourseState& course)
{
    std::vector<recovery::Entry> entries;
    for (const auto& [id, history] : course.entries) {
        entries.push_back(history.current());
    }
    std::ranges::sort(entries, {}, [](const recovery::Entry& entry) { return entry.at.at; });
    return entries;
}

}  // namespace

Done addInventedPhotos(desk::Desk& desk)
{
    std::size_t filled = 0;
    for (const auto& summary : desk.courses()) {
        const auto found = desk.vault().state().courses.find(summary.course);
        if (summary.closed || filled == mostCourses || found == desk.vault().state().courses.end()) {
            continue;
        }
        const auto entries = entriesOf(found->second);
        if (entries.size() < fewestEntries) {
            continue;
        }
        for (const auto pose : {photos::Pose::front, photos::Pose::leftOblique}) {
            if (const auto added = filled == 0 ? addClinicPhoto(desk, summary.course, pose) : Done{}; !added) {
                return added;
            }
        }
        int number = 0;
        for (const auto at : {std::size_t{0}, entries.size() / 2, entries.size() - 1}) {
            ++number;
            for (const auto pose : {photos::Pose::front, photos::Pose::leftOblique}) {
                const face::DrawnFace face{.view = static_cast<recovery::ChartView>(pose), .marked = 0.9 / number, .turned = 4.0 * number - 7,
                                           .size = 0.78 + 0.07 * number, .shift = {9.0 * number - 16, 6.0 - 5 * number}};
                if (const auto added = addPhoto(desk, summary.course, entries[at], pose, face, filled == 0); !added) {
                    return added;
                }
            }
        }
        ++filled;
    }
    return {};
}

}  // namespace ebbline::deskapp
