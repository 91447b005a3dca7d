// Writes a few well-formed inputs for each target, so that the fuzzer starts behind the first
// checks. usage: fuzz_seeds FOLDER

#include "core/clock/iso8601.h"
#include "core/envelope/envelope.h"
#include "core/exchange/fhir_bundle.h"
#include "core/exchange/protocol_file.h"
#include "core/exchange/tables.h"
#include "core/mailbox/ending.h"
#include "core/mailbox/wire.h"
#include "core/pairing/handshake.h"
#include "core/pairing/statement.h"
#include "core/photos/sealed_photo.h"
#include "core/sync/messages.h"
#include "core/vault/container.h"
#include "core/vault/key_slots.h"
#include "tests/core/photos/sample_jpeg.h"

#include <cstdio>
#include <fstream>
#include <iterator>

using namespace ebbline;

namespace {

class Seeds {
public:
    explicit Seeds(std::filesystem::path folder) : m_folder(std::move(folder)) {}

    void add(const std::string& target, bytes::View input)
    {
        const auto folder = m_folder / target;
        std::filesystem::create_directories(folder);
        std::ofstream file(folder / ("seed-" + std::to_string(m_count++)), std::ios::binary);
        file.write(reinterpret_cast<const char*>(input.data()), static_cast<std::streamsize>(input.size()));
    }
    void add(const std::string& target, std::string_view text) { add(target, bytes::viewOf(text)); }

private:
    std::filesystem::path m_folder;
    int m_count = 0;
};

const clock::Moment evening{clock::Instant{std::chrono::sys_days{std::chrono::year{2027} / 3 / 1} + std::chrono::hours{19}},
                            std::chrono::minutes{60}, "Europe/Berlin"};

std::vector<records::Body> bodies()
{
    records::Contacts contacts{"Invented clinic", "+49 30 555 0100", "+49 30 555 0101", "112"};
    recovery::CourseId course{crypto::randomArray<16>()};
    return {records::PatientRegistered{recovery::PatientId{crypto::randomArray<16>()}, "Invented", "555", "de"},
            records::ClinicDescribed{contacts, "Europe/Berlin", {"A", "B"}},
            records::ReminderAnswered{course, "dressings", records::ReminderAnswer::done, evening, {}},
            records::MessageWritten{course, records::MessageId{crypto::randomArray<16>()}, "hello", "", evening},
            records::FindingActed{course, "level:swelling", records::Act::called, records::Outcome::advised, "A", "note", evening},
            records::FollowUpRecorded{course, records::GlobalChange::better, 4, {}, true, "m", "n", "A", evening}};
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc != 2 || !crypto::initialise()) {
        std::fputs("usage: fuzz_seeds FOLDER\n", stderr);
        return 2;
    }
    Seeds seeds(argv[1]);

    const auto sender = crypto::SigningKey::generate();
    const auto recipient = crypto::BoxKey::generate();
    envelope::Header header;
    header.mailbox = envelope::MailboxId{crypto::randomArray<16>()};
    header.sender = envelope::deviceIdOf(sender.publicKey());
    header.sequence = 1;

    std::vector<journal::Operation> operations;
    for (const auto& body : bodies()) {
        const auto encoded = records::encode(body);
        bytes::Bytes chosen{static_cast<std::uint8_t>(records::kindOf(body))};
        chosen.insert(chosen.end(), encoded.begin(), encoded.end());
        seeds.add("record_body", chosen);

        journal::Operation operation;
        operation.id = {header.sender, operations.size() + 1};
        operation.entered = evening;
        operation.kind = static_cast<std::uint16_t>(records::kindOf(body));
        operation.course = records::courseOf(body);
        operation.body = encoded;
        seeds.add("operation", journal::encode(operation));
        operations.push_back(operation);
    }
    const auto batch = sync::packOperations(operations);
    seeds.add("sync_message", batch);
    seeds.add("sync_message", sync::pack(sync::Acknowledgement{header.sender, {7, {}}, evening.at}));
    if (const auto sealed = envelope::seal(header, sender, {recipient.publicKey()}, batch)) {
        seeds.add("envelope", *sealed);
        bytes::Bytes request = bytes::Bytes{1};
        const auto path = bytes::viewOf("/v1/mailboxes/AAAAAAAAAAAAAAAAAAAAAAAAAA/1\n\n\n");
        request.insert(request.end(), path.begin(), path.end());
        request.insert(request.end(), sealed->begin(), sealed->end());
        seeds.add("hub_request", request);
    }
    seeds.add("hub_request", std::string_view("\0/v1/health\n\n\n", 14));
    mailbox::Request news{"GET", "/v1/news", {}, {}, {}};
    mailbox::signRequest(news, sender, clock::Instant{std::chrono::hours{500'000}});
    seeds.add("hub_request", std::string(1, '\0') + news.path + "\n\n" + news.authorisation + "\n");

    if (const auto made = vault::KeySlots::create(vault::SlotKind::passphrase, bytes::viewOf("a passphrase"), {1, 8192}))
        seeds.add("key_slots", made->first.encode());
    bytes::Bytes info(bytes::viewOf("EBO1").begin(), bytes::viewOf("EBO1").end());
    info.resize(info.size() + 5 * 4 + 10);
    seeds.add("open_info", info);

    pairing::Offer offer;
    offer.expires = evening.at;
    offer.hub = "hub.example:8443";
    seeds.add("pairing_code", pairing::toQrText(offer));
    seeds.add("pairing_code", pairing::toText(pairing::TypedCode{{0, 1, 2, 3}, {1, 2, 3, 4, 5, 6, 7, 8, 9}}));
    seeds.add("pairing_messages", pairing::signPatientLink({header.mailbox, sender.publicKey(), sender.publicKey(), "Clinic"}, sender));

    // Without their signatures, which each run makes anew.
    const auto unsignedPart = [](const bytes::Bytes& whole) { return bytes::View(whole).first(whole.size() - 64); };
    pairing::Roster roster;
    roster.desks = {{sender.publicKey(), recipient.publicKey(), true}};
    roster.epochKey = recipient.publicKey();
    roster.revoked = {envelope::DeviceId{crypto::randomArray<16>()}};
    const auto signedRoster = pairing::signStatement(roster, sender);
    seeds.add("clinic_statement", unsignedPart(signedRoster));
    seeds.add("clinic_statement", unsignedPart(pairing::signStatement(pairing::PhoneReplaced{header.mailbox, header.sender, 7, evening.at}, sender)));
    const auto ending = mailbox::signEnding({header.sender, evening.at}, sender);
    seeds.add("clinic_ending", unsignedPart(ending));
    seeds.add("clinic_ending", bytes::Writer().block(ending).block(ending).bytes());
    for (const std::size_t seedSize : {0u, 32u})
        seeds.add("desk_link", unsignedPart(pairing::signDeskLink({header.mailbox, sender.publicKey(), sender.publicKey(), recipient.publicKey(), 3,
                                                                   crypto::BoxKey::generate(), bytes::Bytes(seedSize, 5)},
                                                                  sender)));
    seeds.add("packed_statement", sync::packSigned(signedRoster));
    seeds.add("packed_statement", sync::pack(sync::EpochSecret{2, crypto::BoxKey::generate()}));
    const std::vector<vault::Vault::Head> heads{{header.mailbox, header.sender, {9, {}}}};
    seeds.add("packed_statement", sync::pack(heads));
    seeds.add("packed_statement", sync::pack(sync::OlderCopy{41}));

    const auto work = std::filesystem::path(argv[1]) / "work";
    std::filesystem::create_directories(work);
    const auto put = [&](const char* name, bytes::View contents) {
        std::ofstream file(work / name, std::ios::binary | std::ios::trunc);
        file.write(reinterpret_cast<const char*>(contents.data()), static_cast<std::streamsize>(contents.size()));
    };
    put("vault.keys", bytes::Bytes(vault::KeySlots::fileSize, 0));
    if (const auto made = vault::KeySlots::create(vault::SlotKind::passphrase, bytes::viewOf("a passphrase"), {1, 8192}))
        put("vault.keys", made->first.encode());
    put("open.info", info);
    put("vault.db", bytes::viewOf("pages"));
    std::filesystem::remove(work / "backup");
    if (vault::pack(work, evening.at, work / "backup")) {
        std::ifstream file(work / "backup", std::ios::binary);
        const bytes::Bytes whole{std::istreambuf_iterator<char>(file), {}};
        seeds.add("backup", whole);
        seeds.add("backup", bytes::View(whole).first(whole.size() - 32));
    }
    std::filesystem::remove_all(work);

    const auto http = [&](const std::string& text) { seeds.add("hub_http", '\1' + text); };
    http("GET /v1/health HTTP/1.1\r\nHost: hub\r\n\r\n");
    http("GET /v1/health HTTP/1.1\r\nHost: hub\r\n\r\nGET /v1/news?wait=25&known=00 HTTP/1.1\r\nHost: hub\r\nEB-Auth: " + news.authorisation + "\r\n\r\n");
    http("PUT /v1/m/00/11/1 HTTP/1.1\r\nHost: hub\r\nContent-Length: 4\r\n\r\nbody");
    http("POST /v1/desks HTTP/1.1\r\nHost: hub\r\nContent-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n");
    http("GET / HTTP/1.0\r\nConnection: keep-alive\r\nExpect: 100-continue\r\n\r\n");

    seeds.add("photo_intake", test::sampleJpegOf(60));
    seeds.add("photo_intake", test::sampleJpeg({.components = 1, .coded = 20}));
    const auto photo = [&](std::uint8_t which, bytes::View contents) {
        seeds.add("photo", bytes::Writer().u8(which).raw(contents).bytes());
    };
    photo(1, test::sampleJpegOf(60));
    photo(1, test::sampleJpeg({.components = 1, .coded = 20}));
    if (const auto sealed = photos::seal(test::sampleJpegOf(100'000))) {
        photo(0, photos::encode(sealed->manifest));
        const recovery::CourseId course{crypto::randomArray<16>()};
        const records::Body body = records::PhotoTaken{course, sealed->manifest, photos::Pose::front, {}, evening};
        seeds.add("record_body", bytes::Writer().u8(static_cast<std::uint8_t>(records::kindOf(body))).raw(records::encode(body)).bytes());
    }

    seeds.add("time", clock::toIso8601(evening));
    seeds.add("tables", "course,treated_at,entered_at,symptom,side,score\r\n"
                        "a,2027-03-01T10:00:00+01:00,2027-03-01T19:00:00+01:00,swelling,left,4\r\n");
    seeds.add("tables", "course,treated_at,entered_at,sign,present\r\n"
                        "a,2027-03-01T10:00:00+01:00,2027-03-01T19:00:00+01:00,breathing,no\r\n");
    exchange::CourseRecord record;
    record.course = recovery::CourseId{crypto::randomArray<16>()};
    record.treated = evening;
    for (const records::Body& body : bodies()) {
        if (const auto* message = std::get_if<records::MessageWritten>(&body))
            record.messages = {*message};
        if (const auto* visit = std::get_if<records::FollowUpRecorded>(&body))
            record.followUp = *visit;
    }
    record.entries = {{recovery::EntryId{crypto::randomArray<16>()}, record.course, evening, evening,
                       {{{recovery::Symptom::pain, recovery::Side::left}, *recovery::Score::of(4)}},
                       {recovery::Sign::warmer},
                       {recovery::Sign::vision},
                       {},
                       "a note"}};
    record.corrections = {{record.entries.front().id, evening}};
    record.care = exchange::PlannedCare{"seed", aftercare::defaultCarePlan(), evening};
    record.pictures = {{photos::PhotoId{crypto::randomArray<16>()}, photos::Pose::front, record.entries.front().id, evening,
                        exchange::PictureFacts{"photo-001-day-0-front.jpg", 1000, {}}}};
    seeds.add("bundle", exchange::writeBundle(record, {}, {.patientName = "", .written = evening, .program = "seed"}));
    seeds.add("protocol_file", exchange::protocolText({triggers::defaultProtocol(), "seed", evening}));
    seeds.add("tables", "course,kind,onset_at,side\r\na,plain,,-\r\n");
    return 0;
}
