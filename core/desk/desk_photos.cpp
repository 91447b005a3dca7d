// Photographs: those that patients sent, and the clinic's own from right after the treatment.

#include "core/desk/inside.h"
#include "core/photos/sealed_photo.h"

#include <algorithm>
#include <tuple>

namespace ebbline::desk {

std::vector<CoursePhoto> Desk::photos(const recovery::CourseId& id) const
{
    std::vector<CoursePhoto> found;
    const journal::CourseState* course = m_inside->course(id);
    const auto held = m_inside->vault.heldPhotoChunks();
    if (!course || !held)
        return found;
    const clock::Moment* treated = course->treatment ? &course->treatment->treatment.at : nullptr;
    for (const auto& [photo, version] : course->photos) {
        if (course->photosRemoved.contains(photo))
            continue;
        const records::PhotoTaken& taken = version.value;
        const auto chunks = held->find(photo);
        const auto standing = m_inside->vault.photoStanding(photo);
        const auto eyes = course->eyes.find(photo);
        const auto own = course->clinicPhotos.find(photo);
        // Right after the treatment is as close as is known.
        const clock::Moment& at = own != course->clinicPhotos.end() && treated ? *treated : taken.at;
        found.push_back({photo, taken.pose, taken.entry, at,
                         treated ? std::max(0, clock::dayOfRecovery(*treated, at)) : 0, taken.manifest.chunkHashes.size(),
                         chunks == held->end() ? 0 : chunks->second,
                         eyes == course->eyes.end() ? std::nullopt : std::optional(eyes->second.eyes), standing && *standing && (*standing)->refused,
                         own == course->clinicPhotos.end() ? std::nullopt : std::optional(own->second)});
    }
    std::ranges::stable_sort(found, {}, [](const CoursePhoto& photo) { return std::tuple(!photo.putInBy, photo.at.at, photo.pose); });
    return found;
}

Result<bytes::Bytes> Desk::photo(const recovery::CourseId& id, const photos::PhotoId& photo) const
{
    const journal::CourseState* course = m_inside->course(id);
    const records::PhotoTaken* taken = course ? course->photo(photo) : nullptr;
    if (!taken)
        return fail(Reason::notFound, "photo: there is none");
    return m_inside->vault.photo(taken->manifest);
}

Result<photos::PhotoId> Desk::addClinicPhoto(const recovery::CourseId& id, bytes::View jpeg, photos::Pose pose)
{
    const journal::CourseState* course = m_inside->course(id);
    if (!course || !course->treatment)
        return fail(Reason::notFound, "photo: the course has no treatment");
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "photo: nobody is named at the desk");
    const auto standing = std::ranges::count_if(course->clinicPhotos, [&](const auto& each) { return !course->photosRemoved.contains(each.first); });
    if (static_cast<std::size_t>(standing) >= mostClinicPhotos)
        return fail(Reason::storageFull, "photo: this course has as many of the clinic's as it may have");
    auto sealed = photos::seal(jpeg);
    if (!sealed)
        return fail(sealed.error());
    const clock::Moment now = m_inside->now();
    const auto kept = m_inside->vault.appendPhoto(records::ClinicPhotoTaken{id, sealed->manifest, pose, m_inside->person, now}, sealed->chunks, now);
    if (!kept)
        return fail(kept.error());
    return sealed->manifest.photo;
}

Done Desk::takeBackPhoto(const recovery::CourseId& id, const photos::PhotoId& photo)
{
    const journal::CourseState* course = m_inside->course(id);
    if (!course || !course->photo(photo) || !course->clinicPhotos.contains(photo))
        return fail(Reason::notFound, "photo: there is none of the clinic's");
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "photo: nobody is named at the desk");
    // Whoever put it in undoes it; a colleague's is part of the treatment's record.
    if (course->clinicPhotos.at(photo) != m_inside->person)
        if (const Done may = m_inside->needsTask(records::Task::treat); !may)
            return may;
    return m_inside->append(records::ClinicPhotoRemoved{id, photo, m_inside->person, m_inside->now()});
}

Done Desk::markEyes(const recovery::CourseId& id, const photos::PhotoId& photo, const photos::Eyes& eyes)
{
    const journal::CourseState* course = m_inside->course(id);
    if (!course || !course->photo(photo))
        return fail(Reason::notFound, "photo: there is none");
    return m_inside->append(records::EyesMarked{id, photo, eyes, m_inside->person, m_inside->now()});
}

}  // namespace ebbline::desk
