// What people do in a simulated clinic: patients record, photograph and write, desks open, act and answer.

#include "tests/simulation/world.h"

#include "tests/core/photos/sample_jpeg.h"

namespace ebbline::simulation {

void World::writeEntry(Device& phone)
{
    patient::Diary& diary = *phone.diary;
    if (!diary.joined())
        return;
    const auto history = diary.history();
    auto entry = diary.blankEntry();
    entry.at.at = std::max(entry.at.at, diary.course().treated.at);
    const auto score = [&] { return *recovery::Score::of(static_cast<int>(random() % 8)); };
    entry.scores = {{{recovery::Symptom::swelling, recovery::Side::left}, score()},
                    {{recovery::Symptom::pain, recovery::Side::right}, score()}};
    if (random() % 6 == 0)
        entry.present = {recovery::Sign::warmer};
    entry.note = std::string(random() % 60, 'n');
    const bool amend = !history.empty() && random() % 5 == 0;
    const recovery::EntryId old = amend ? history[random() % history.size()].history.current().id : recovery::EntryId{};
    const auto saved = amend ? diary.amend(old, entry) : diary.record(entry);
    counters.refused += saved ? 0 : 1;
    if (!saved)
        return;
    counters.entries += amend ? 0 : 1;
    counters.amended += amend ? 1 : 0;
    phone.kept.insert(saved->entry);
    trace.line(timeline.now(), phone.name + " records " + bytes::toHex(saved->entry.view()));
}

void World::writeMessage(Device& device)
{
    const std::string text = "message " + std::to_string(random() % 100'000);
    const Done done = device.diary ? device.diary->writeMessage(text)
                                   : device.desk->writeMessage(phone(random() % phones()).course, text);
    counters.messages += done ? 1 : 0;
    counters.actsOfFurtherDesks += done && device.isDesk && &device != &desk() ? 1 : 0;
    trace.line(timeline.now(), device.name + " writes " + (done ? text : done.error().detail));
}

void World::takePhoto(Device& phone)
{
    if (!phone.diary->joined())
        return;
    const bytes::Bytes picture = test::sampleJpegOf(1000 + random() % 250'000, static_cast<unsigned>(random()));
    const auto pose = static_cast<photos::Pose>(1 + random() % 3);
    const auto photo = phone.diary->addPhoto(picture, pose, {}, phone.diary->today().now);
    counters.refused += photo ? 0 : 1;
    if (!photo)
        return;
    ++counters.photos;
    phone.pictures.emplace(*photo, picture);
    trace.line(timeline.now(), phone.name + " photographs " + bytes::toHex(photo->view()));
}

void World::takePhotoBack(Device& phone)
{
    if (phone.pictures.empty())
        return;
    const auto picture = std::next(phone.pictures.begin(), static_cast<std::ptrdiff_t>(random() % phone.pictures.size()));
    const Done removed = phone.diary->removePhoto(picture->first);
    trace.line(timeline.now(), phone.name + " takes back " + bytes::toHex(picture->first.view()));
    counters.photosTakenBack += removed ? 1 : 0;
    if (removed)
        phone.pictures.erase(picture);
}

void World::openEntries(Device& at)
{
    const Device& about = phone(random() % phones());
    if (const auto course = at.desk->course(about.course))
        for (const auto& [id, history] : course->state->entries)
            ledger.opened[history.versions.back().operation].insert(at.person);
    const Done done = at.desk->openEntries(about.course);
    counters.openings += done ? 1 : 0;
    counters.actsOfFurtherDesks += done && &at != &desk() ? 1 : 0;
    trace.line(timeline.now(), at.name + " opens entries of " + about.name);
}

void World::workOnFindings(Device& at)
{
    const auto id = phone(random() % phones()).course;
    const std::uint64_t dice = random() % 8;
    const bool further = &at != &desk();
    if (dice == 0) {
        const bool handed = at.desk->handOver("word " + std::to_string(random() % 1000)).has_value();
        counters.wordsHandedOver += handed ? 1 : 0;
        counters.actsOfFurtherDesks += handed && further ? 1 : 0;
        return trace.line(timeline.now(), at.name + " hands over");
    }
    if (dice == 1 && !at.acts.empty()) {
        const auto act = at.acts[random() % at.acts.size()];
        const bool back = at.desk->takeBack(act.first, {act.second}).has_value();
        counters.actsTakenBack += back ? 1 : 0;
        counters.actsOfFurtherDesks += back && further ? 1 : 0;
        return trace.line(timeline.now(), at.name + " takes an act back");
    }
    const auto course = at.desk->course(id);
    if (!course || course->findings.empty())
        return;
    constexpr std::array acts{records::Act::seen, records::Act::taken, records::Act::called, records::Act::closed, records::Act::closed,
                              records::Act::reopened};
    const records::Act act = acts[random() % acts.size()];
    const std::string key = course->findings[random() % course->findings.size()].key;
    const auto outcome = act == records::Act::closed ? records::Outcome::advised : records::Outcome::none;
    const auto done = at.desk->actOn(id, {key}, act, outcome);
    for (const journal::OperationId& operation : done ? *done : std::vector<journal::OperationId>())
        at.acts.emplace_back(id, operation);
    counters.actsOnFindings += done ? 1 : 0;
    counters.findingsClosed += done && act == records::Act::closed ? 1 : 0;
    counters.actsOfFurtherDesks += done && further ? 1 : 0;
    trace.line(timeline.now(), at.name + " acts on " + key);
}

}  // namespace ebbline::simulation
