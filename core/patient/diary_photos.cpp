// Photographs: kept here first, and with the clinic when its desk says so.

#include "core/patient/inside.h"

#include "core/clock/iso8601.h"
#include "core/exchange/tables.h"
#include "core/photos/sealed_photo.h"

namespace ebbline::patient {

namespace {

const char* poseWord(photos::Pose pose)
{
    switch (pose) {
    case photos::Pose::leftOblique: return "left";
    case photos::Pose::rightOblique: return "right";
    case photos::Pose::front: break;
    }
    return "front";
}

}  // namespace

Result<photos::PhotoId> Diary::addPhoto(bytes::View jpeg, photos::Pose pose, const recovery::EntryId& entry,
                                        const clock::Moment& at)
{
    const journal::CourseState* course = m_inside->course();
    if (!course)
        return fail(Reason::invalidState, "photo: no clinic has been joined");
    if (photos().size() >= mostPhotos)
        return fail(Reason::storageFull, "photo: this course has as many as it may have");
    auto sealed = photos::seal(jpeg);
    if (!sealed)
        return fail(sealed.error());
    const records::PhotoTaken taken{course->opened->course, sealed->manifest, pose, entry, at};
    const auto link = m_inside->link();
    if (!link)
        return fail(link.error());
    const auto kept = m_inside->vault.appendPhoto(taken, sealed->chunks, m_inside->now(),
                                                  *link ? std::optional((*link)->mailbox) : std::nullopt);
    if (!kept)
        return fail(kept.error());
    return sealed->manifest.photo;
}

std::vector<PhotoView> Diary::photos() const
{
    std::vector<PhotoView> views;
    const journal::CourseState* course = m_inside->course();
    const auto held = m_inside->vault.heldPhotoChunks();
    if (!course || !held)
        return views;
    for (const auto& [photo, version] : course->photos) {
        if (course->photosRemoved.contains(photo))
            continue;
        const records::PhotoTaken& taken = version.value;
        const auto chunks = held->find(photo);
        const auto received = course->photosReceived.find(photo);
        views.push_back({photo, taken.pose, taken.entry, taken.at,
                         std::max(0, clock::dayOfRecovery(course->opened->treated, taken.at)),
                         chunks != held->end() && chunks->second == taken.manifest.chunkHashes.size(),
                         received == course->photosReceived.end() ? std::nullopt : std::optional(received->second)});
    }
    std::ranges::stable_sort(views, {}, [](const PhotoView& view) { return std::pair(view.at.at, view.pose); });
    return views;
}

Result<bytes::Bytes> Diary::photo(const photos::PhotoId& photo) const
{
    const journal::CourseState* course = m_inside->course();
    const records::PhotoTaken* taken = course ? course->photo(photo) : nullptr;
    if (!taken)
        return fail(Reason::notFound, "photo: there is none");
    return m_inside->vault.photo(taken->manifest);
}

Done Diary::removePhoto(const photos::PhotoId& photo)
{
    const journal::CourseState* course = m_inside->course();
    if (!course || !course->photo(photo))
        return fail(Reason::notFound, "photo: there is none");
    const auto removed = m_inside->append({records::PhotoRemoved{course->opened->course, photo, m_inside->now()}}, m_inside->now());
    return removed ? Done{} : Done(fail(removed.error()));
}

std::vector<std::pair<std::string, photos::PhotoId>> Diary::photoFiles() const
{
    std::vector<std::pair<std::string, photos::PhotoId>> files;
    int number = 0;
    for (const PhotoView& view : photos()) {
        const std::string count = std::to_string(++number);
        if (view.here)
            files.emplace_back("photo-" + std::string(count.size() < 3 ? 3 - count.size() : 0, '0') + count + "-day-"
                                   + std::to_string(view.day) + "-" + poseWord(view.pose) + ".jpg",
                               view.photo);
    }
    return files;
}

std::string Diary::Inside::photoTable(const std::vector<PhotoView>& views,
                                      const std::vector<std::pair<std::string, photos::PhotoId>>& files)
{
    exchange::CsvWriter table;
    table.row({"file", "taken", "view", "entry", "state"});
    for (const PhotoView& view : views) {
        const auto file = std::ranges::find(files, view.photo, &std::pair<std::string, photos::PhotoId>::second);
        table.row({file == files.end() ? std::string() : file->first, clock::toIso8601(view.at), poseWord(view.pose),
                   view.entry.isNull() ? std::string() : shortName(view.entry),
                   view.received ? std::string("with-clinic") : std::string("saved-here")});
    }
    return std::move(table).take();
}

}  // namespace ebbline::patient
