// Photographs that patients sent.

#include "core/desk/inside.h"

#include <algorithm>

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
        found.push_back({photo, taken.pose, taken.entry, taken.at,
                         treated ? std::max(0, clock::dayOfRecovery(*treated, taken.at)) : 0, taken.manifest.chunkHashes.size(),
                         chunks == held->end() ? 0 : chunks->second,
                         eyes == course->eyes.end() ? std::nullopt : std::optional(eyes->second.eyes), standing && *standing && (*standing)->refused});
    }
    std::ranges::stable_sort(found, {}, [](const CoursePhoto& photo) { return std::pair(photo.at.at, photo.pose); });
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

Done Desk::markEyes(const recovery::CourseId& id, const photos::PhotoId& photo, const photos::Eyes& eyes)
{
    const journal::CourseState* course = m_inside->course(id);
    if (!course || !course->photo(photo))
        return fail(Reason::notFound, "photo: there is none");
    return m_inside->append(records::EyesMarked{id, photo, eyes, m_inside->person, m_inside->now()});
}

}  // namespace ebbline::desk
