// leak_person FOLDER: a clinic and a patient in one process, for leak_campaign, which tells it over a pipe what to write. What it is
// told comes and goes masked, so that what is found of it afterwards was left by the programs' own core.

#include "core/bytes/text.h"
#include "core/desk/desk.h"
#include "core/desk/inviting.h"
#include "core/patient/diary.h"
#include "core/patient/joining.h"
#include "core/vault/backup.h"
#include "tests/core/photos/sample_jpeg.h"
#include "tests/faults/leak_person.h"
#include "tests/platform/server/raw_client.h"

#include <cstdio>
#include <iostream>
#include <map>

using namespace ebbline;

namespace {

constexpr crypto::StretchCost cheap{1, 8 * 1024};

[[noreturn]] void giveUp(const std::string& what)
{
    std::cout << "failed " << what << std::endl;
    std::exit(1);
}

void must(bool holds, const char* what)
{
    if (!holds)
        giveUp(what);
}

/// Text that is wiped when it goes.
class Word {
public:
    explicit Word(std::string_view masked)
    {
        auto raw = bytes::fromHex(masked);
        must(raw.has_value(), "a word in hexadecimal");
        for (std::uint8_t& byte : *raw)
            byte ^= faults::leakMask;
        m_text.assign(raw->begin(), raw->end());
        crypto::wipe(*raw);
    }
    ~Word() { crypto::wipe({reinterpret_cast<std::uint8_t*>(m_text.data()), m_text.size()}); }
    Word(Word&& other) noexcept : m_text(other.m_text) {}
    Word& operator=(Word&&) = delete;
    const std::string& text() const { return m_text; }
    bytes::View view() const { return bytes::viewOf(m_text); }

private:
    std::string m_text;
};

/// Tells a key, masked.
void tell(const std::string& name, bytes::View key)
{
    bytes::Bytes masked(key.begin(), key.end());
    for (std::uint8_t& byte : masked)
        byte ^= faults::leakMask;
    std::cout << "key " << name << ' ' << bytes::toHex(masked) << std::endl;
}

class WireCourier final : public sync::Courier {
public:
    explicit WireCourier(std::uint16_t port) : m_port(port) {}
    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override
    {
        std::string text = request.method + ' ' + request.path + (request.query.empty() ? "" : "?" + request.query)
                           + " HTTP/1.1\r\nHost: hub\r\nConnection: close\r\nContent-Length: " + std::to_string(request.body.size()) + "\r\n";
        if (!request.authorisation.empty())
            text += "EB-Auth: " + request.authorisation + "\r\n";
        text += "\r\n";
        text.append(request.body.begin(), request.body.end());
        const std::string said = test::RawClient(m_port, 1, std::chrono::seconds(20)).ask(text);
        const auto end = said.find("\r\n\r\n");
        if (!said.starts_with("HTTP/1.1 ") || end == std::string::npos)
            return answer(fail(Reason::unreachable, "no answer"));
        mailbox::Response response;
        response.status = std::stoi(said.substr(9, 3));
        response.body.assign(said.begin() + static_cast<std::ptrdiff_t>(end) + 4, said.end());
        if (const auto time = said.find("EB-Time: "); time < end)
            response.hubTime = said.substr(time + 9, said.find("\r\n", time) - time - 9);
        answer(std::move(response));
    }

private:
    std::uint16_t m_port;
};

struct People {
    std::filesystem::path folder;
    std::map<std::string, Word>& words;
    clock::SystemClock clock;
    aftercare::Zone zone = *aftercare::Zone::find("Europe/Berlin");
    std::optional<desk::Desk> desk;
    std::optional<patient::Diary> diary;
    recovery::CourseId course{};

    const std::string& word(const char* name) const { return words.at(name).text(); }

    void makeDesk()
    {
        auto made = desk::Desk::create(folder / "desk", words.at("desk-passphrase").view(), cheap, clock, zone);
        must(made.has_value(), "a desk");
        desk.emplace(std::move(*made));
        desk->setPerson(word("practitioner"));
        must(desk->describeClinic({{word("clinic"), "+00 555 0110", "+00 555 0119", "112"}, "Europe/Berlin", {word("practitioner")}}).has_value(),
             "a clinic");
    }

    void pair(sync::Courier& courier)
    {
        const auto patient = desk->registerPatient(word("patient"), word("patient-phone"), "en");
        must(patient.has_value(), "a patient");
        auto treatment = desk->blankTreatment(*patient);
        recovery::Placement placement;
        placement.entry = {296, 170};
        placement.end = {256, 256};
        placement.lot = word("lot");
        placement.expiry = "2099-06-30";
        placement.anaestheticMl = 0.4;
        treatment.placements = {placement};
        treatment.weightKg = 62;
        must(desk->recordTreatment(treatment).has_value(), "a treatment");
        course = treatment.course;
        auto made = patient::Diary::create(folder / "phone", words.at("phone-passphrase").view(), cheap, clock, zone);
        must(made.has_value(), "a diary");
        diary.emplace(std::move(*made));
        desk::Inviting inviting(*desk, clock, course, triggers::defaultProtocol(), zone.moment(clock.now() + std::chrono::hours(24 * 21)));
        inviting.start(courier, [] {});
        patient::Joining joining(*diary, clock);
        must(joining.start(inviting.qrText()).has_value(), "a code");
        for (int i = 0; i < 4; ++i) {
            joining.poll(courier, [] {});
            inviting.poll(courier, [] {});
        }
        inviting.confirm(courier, [] {});
        joining.poll(courier, [] {});
        must(joining.step() == patient::Joining::Step::linked, "a link");
        sync(courier);
        must(diary->joined(), "a course on the phone");
    }

    void sync(sync::Courier& courier)
    {
        for (int i = 0; i < 2; ++i) {
            desk->syncNow(courier, [](const sync::Report& report) { must(!report.problem, "a run of the desk"); });
            diary->syncNow(courier, [](const sync::Report& report) { must(!report.problem, "a run of the phone"); });
        }
    }

    void write(sync::Courier& courier, std::uint64_t photoSeed)
    {
        auto entry = diary->blankEntry();
        entry.scores = {{{recovery::Symptom::swelling, recovery::Side::left}, *recovery::Score::of(3)}};
        entry.note = word("note");
        const auto saved = diary->record(entry);
        must(saved.has_value(), "an entry");
        entry.note = word("corrected-note");
        must(diary->amend(saved->entry, entry).has_value(), "a correction");
        patient::Draft draft;
        draft.entry = diary->blankEntry();
        draft.entry.note = word("draft");
        must(diary->keepDraft(draft).has_value(), "a draft");
        must(diary->writeMessage(word("message-of-patient")).has_value(), "a message of the patient");
        must(desk->writeMessage(course, word("message-of-clinic")).has_value(), "a message of the clinic");
        bytes::Bytes picture = test::sampleJpegOf(70'000, static_cast<unsigned>(photoSeed));
        must(diary->addPhoto(picture, photos::Pose::front, {}, zone.moment(clock.now())).has_value(), "a photograph");
        tell("photograph", bytes::View(picture).subspan(40'000, 32));
        crypto::wipe(picture);
        sync(courier);
        must(desk->openEntries(course).has_value(), "an opening");
        must(desk->recordFollowUp({course, records::GlobalChange::better, 4, {}, true, word("management"), word("next-plan"), "", {}}).has_value(),
             "a follow-up");
        sync(courier);
        // What was written on one side is read on the other: the scan below is about something.
        const auto view = desk->course(course);
        must(view && !view->state->entries.empty() && view->state->entries.begin()->second.current().note == word("corrected-note"),
             "the note at the desk");
        const auto back = vault::backup(folder / "phone", vault::Offered::passphrase(words.at("phone-passphrase").view()), clock.readings(),
                                        folder / "phone.backup");
        must(back.has_value(), "a backup");
    }

    void tellKeys()
    {
        for (const auto& [name, vault, passphrase] : {std::tuple("desk", &desk->vault(), &words.at("desk-passphrase")),
                                                      std::tuple("phone", &diary->vault(), &words.at("phone-passphrase"))}) {
            const std::string who = name;
            tell(who + "-signing-key", vault->signingKey().seed());
            tell(who + "-box-key", vault->boxKey().secret());
            const auto data = vault::openDataKey(folder / name, vault::Offered::passphrase(passphrase->view()), clock.readings());
            must(data.has_value(), "a data key");
            tell(who + "-data-key", data->view());
            const crypto::Secret database = crypto::derive(*data, 1, "eb-vault");
            tell(who + "-database-key", database.view());
        }
    }
};

std::string said()
{
    std::string line;
    std::getline(std::cin, line);
    return line;
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc != 2 || !crypto::initialise())
        return 2;
    std::map<std::string, Word> words;
    std::uint64_t photoSeed = 0;
    for (std::string line; line = said(), line != "go";) {
        const auto space = line.find(' ');
        if (space == std::string::npos)
            giveUp("a line of two words");
        if (line.starts_with("photo "))
            photoSeed = std::stoull(line.substr(space + 1));
        else
            words.emplace(line.substr(0, space), Word(std::string_view(line).substr(space + 1)));
    }
    std::optional<People> people(std::in_place, std::filesystem::path(argv[1]), words);
    people->makeDesk();
    std::cout << "root " << bytes::toHex(people->desk->vault().clinicRoot().publicKey().value) << std::endl;
    WireCourier courier(static_cast<std::uint16_t>(std::stoi(said())));
    must(people->desk->setHub("hub.example", true, {}).has_value(), "a hub");
    people->pair(courier);
    people->write(courier, photoSeed);
    people->tellKeys();
    std::cout << "open" << std::endl;
    (void)said();
    people.reset();
    words.clear();
    std::cout << "locked" << std::endl;
    (void)said();
    return 0;
}
