// What of a course goes out, taken from what the journal says.
#include "core/exchange/fhir_bundle.h"

#include "core/aftercare/visit.h"
#include "core/exchange/picture_digest.h"
#include "core/photos/jpeg_scan.h"

#include <algorithm>

namespace ebbline::exchange {

namespace {

void takeEntries(CourseRecord& record, const journal::CourseState& course)
{
    for (const auto& [entry, history] : course.entries) {
        record.entries.push_back(history.current());
        for (std::size_t i = 1; i < history.versions.size(); ++i)
            record.corrections.push_back({entry, history.versions[i].entered});
    }
}

void takePictures(CourseRecord& record, const journal::CourseState& course)
{
    for (const auto& [photo, version] : course.photos) {
        // The clinic's own are its notes: the patient neither took nor holds them.
        if (course.photosRemoved.contains(photo) || course.clinicPhotos.contains(photo))
            continue;
        const records::PhotoTaken& taken = version.value;
        // An entry that has not arrived is named to nobody.
        const recovery::EntryId beside = course.entries.contains(taken.entry) ? taken.entry : recovery::EntryId{};
        record.pictures.push_back({photo, taken.pose, beside, taken.at, std::nullopt});
    }
    std::ranges::stable_sort(record.pictures, {}, [](const CoursePicture& picture) { return std::pair(picture.at.at, picture.pose); });
}

}  // namespace

Result<CourseRecord> recordOf(const recovery::CourseId& id, const journal::CourseState& course)
{
    CourseRecord record;
    record.course = id;
    if (course.treatment) {
        record.treatment = course.treatment->treatment;
        record.treatment->corrected.reset();  // a bundle tells what holds; what stood before is the clinic's own
        record.treated = record.treatment->at;
        record.baseline = record.treatment->baseline;
    }
    // What findings, days and the plan in the bundle are counted by, where the record says otherwise.
    if (course.opened) {
        record.treated = course.opened->treated;
        record.baseline = course.opened->baseline;
        if (record.treatment) {
            record.treatment->at = record.treated;
            record.treatment->baseline = record.baseline;
        }
    } else if (!course.treatment) {
        return fail(Reason::notFound, "export: this course has no treatment");
    }
    takeEntries(record, course);
    if (course.opened) {
        const records::CourseOpened& opened = *course.opened;
        record.care = PlannedCare{opened.protocol.name,
                                  aftercare::planFor(opened.protocol.carePlan, opened.treated, aftercare::visitOf(opened.followUp)),
                                  opened.followUp};
    }
    for (const auto& [key, answer] : course.reminders)
        record.answers.push_back(answer);
    record.messages = course.messages;
    for (const records::MessageWritten& message : course.messages)
        if (const auto read = course.reads.find(message.message); read != course.reads.end())
            record.reads.push_back(read->second);
    takePictures(record, course);
    record.followUp = course.followUp;
    return record;
}

void describePictures(CourseRecord& record, const OpenPicture& open, std::span<const std::pair<std::string, photos::PhotoId>> files)
{
    for (CoursePicture& picture : record.pictures) {
        const auto jpeg = open(picture.photo);
        if (!jpeg || jpeg->empty() || jpeg->size() > photos::maximumJpeg)
            continue;
        const auto file = std::ranges::find(files, picture.photo, &std::pair<std::string, photos::PhotoId>::second);
        picture.picture = PictureFacts{file == files.end() ? std::string() : file->first, static_cast<std::uint32_t>(jpeg->size()), sha1(*jpeg)};
    }
}

std::vector<DueReminder> remindersOf(const journal::CourseState& course, const aftercare::Zone& zone, const aftercare::QuietHours& quiet)
{
    std::vector<DueReminder> due;
    if (!course.opened)
        return due;
    const records::CourseOpened& opened = *course.opened;
    for (const aftercare::Reminder& reminder :
         aftercare::remindersOf(opened.protocol.carePlan, opened.treated, aftercare::visitOf(opened.followUp), zone, quiet)) {
        if (reminder.kind == aftercare::InstructionKind::diaryEntry)
            continue;
        const auto answer = course.reminders.find(reminder.key);
        const bool isOlder = answer != course.reminders.end() && reminder.kind == aftercare::InstructionKind::followUp
                             && course.visits.size() > 1 && answer->second.at.at < course.visits.back().entered.at;
        due.push_back({reminder.key, zone.moment(reminder.due), isOlder});
    }
    return due;
}

}  // namespace ebbline::exchange
