#pragma once
/// \file
/// One simulated clinic: a hub, desks and phones with clocks, lines and disks of their own, all on one
/// thread and one timeline, running the programs' own core.

#include "tests/faults/fault_disk.h"
#include "tests/simulation/clinic_template.h"
#include "tests/simulation/ledger.h"
#include "tests/simulation/network.h"

namespace ebbline::simulation {

struct WorldCounters {
    std::uint64_t photos = 0, photosTakenBack = 0, photosArrived = 0, photosRefused = 0, chunksSent = 0, chunksReceived = 0;
    std::uint64_t entries = 0, amended = 0, messages = 0, openings = 0, runs = 0, restarts = 0, cuts = 0, refused = 0;
    std::uint64_t operationsReceived = 0, envelopesReceived = 0, envelopesSent = 0;
    std::uint64_t gaps = 0, forks = 0, rolledBack = 0, quarantined = 0, garbled = 0, silent = 0, unproved = 0, problems = 0;
    // What happens to a clinic now and then (tests/simulation/clinic_turns.cpp).
    std::uint64_t desksJoined = 0, desksShutOut = 0, actsOnFindings = 0, findingsClosed = 0, actsTakenBack = 0, wordsHandedOver = 0;
    std::uint64_t actsOfFurtherDesks = 0;  ///< of those, and openings and messages, what another desk than the first one did
    std::uint64_t epochsBegun = 0, epochsBegunUnderWay = 0, phoneKeysBegun = 0, phoneKeysBegunUnderWay = 0, sealedToEarlierEpochs = 0;
    std::uint64_t phonesReplacedAtHand = 0, phonesLost = 0, hubsPutBack = 0, hubsTidied = 0;
    std::uint64_t desksRestored = 0, desksRestoredKnew = 0, phonesRestored = 0, phonesRestoredKnew = 0, setUpAnew = 0;
    std::uint64_t keptFromTheEnded = 0, refusedByHub = 0, acknowledgedEntries = 0, onlyOnPhones = 0;
    std::uint64_t goneWithADesk = 0;  ///< entries that nobody but a desk that was shut out later had acknowledged
};

class World {
public:
    /// Of one device: the file, and what it had done until then.
    struct Backup {
        std::filesystem::path file;
        std::map<envelope::MailboxId, std::uint64_t> heads;  ///< how far its own chains went
        std::set<recovery::EntryId> kept;
        std::map<photos::PhotoId, bytes::Bytes> pictures;
    };
    struct Device {
        Device(std::string called, std::filesystem::path where, const clock::Clock& real)
            : name(std::move(called)), folder(std::move(where)), clock(real)
        {
        }
        std::string name;
        std::filesystem::path folder;
        SkewedClock clock;
        std::unique_ptr<Line> line;
        std::optional<patient::Diary> diary;
        std::optional<desk::Desk> desk;
        bool isDesk = false;
        std::string person;             ///< at a desk
        recovery::CourseId course;      ///< of a phone
        envelope::MailboxId mailbox;    ///< of a phone
        bool busy = false;
        bool ended = false;             ///< replaced, lost or shut out: it goes on running, and nobody counts on it
        std::uint64_t life = 0;         ///< how often it started; answers of a former life count for nothing
        std::set<recovery::EntryId> kept;  ///< entries that the diary said it had recorded
        std::map<photos::PhotoId, bytes::Bytes> pictures;  ///< photographs that it said it keeps, and did not take back
        std::optional<Backup> backup;
        bool restored = false;
        std::set<envelope::MailboxId> sentSinceBackup;  ///< where it had sealed something that its restored vault knows nothing of
        std::vector<std::pair<recovery::CourseId, journal::OperationId>> acts;  ///< at a desk, on findings; for taking back
        std::set<journal::OperationId> looked;  ///< operations of its journal that were compared with the ledger in this life
        std::uint32_t keyNumber = 0;            ///< the newest of its keys that was counted
        sync::Report lastRun;

        vault::Vault& vault() { return diary ? diary->vault() : desk->vault(); }
    };

    /// `disk`: cut its power in some acts; empty for a disk that never fails.
    World(const ClinicTemplate& from, const std::filesystem::path& folder, std::uint64_t seed, Trace& trace, bool failingDisk);
    ~World();

    Timeline timeline;
    std::mt19937_64 random;
    Trace& trace;
    Network network;
    WorldCounters counters;
    Ledger ledger;
    std::vector<std::unique_ptr<Device>> devices;  ///< the first desk first, then the phones, then whoever came later
    std::vector<Ending> endings;
    /// In place of the honest hub, if set: is given the request and the honest service.
    std::function<mailbox::Response(const mailbox::Request&, const std::string& device)> lying;

    /// The one that holds the clinic's root key.
    Device& desk() { return *devices.front(); }
    std::vector<Device*> desks();  ///< all that are the clinic's, the first one first
    std::size_t phones() const { return m_current.size(); }
    Device& phone(std::size_t i) { return *m_current.at(i); }  ///< of the i-th course, the one that is in use
    Device* deviceOf(const envelope::DeviceId& id);            ///< null if it is none of these
    mailbox::Response honest(const mailbox::Request& request);

    // --- what people and devices do ---
    void writeEntry(Device& phone);
    void writeMessage(Device& device);
    /// Of one to four chunks.
    void takePhoto(Device& phone);
    void takePhotoBack(Device& phone);
    void openEntries() { openEntries(desk()); }
    void openEntries(Device& desk);
    /// Takes, calls about, closes or reopens a finding, takes back what it did, or hands a word over.
    void workOnFindings(Device& desk);
    void syncOnce(Device& device);
    void restart(Device& device);
    /// Puts a copy of a device's folder aside, and later in place of what it became.
    void copyAside(Device& device);
    void putCopyBack(Device& device);
    /// The same for the hub's store. A copy from before a pairing would know nothing of that device: it is not put back.
    void copyHubAside();
    bool hasHubCopy() const { return m_hubCopy; }
    /// Its process ends and another one takes over the same store.
    void restartHub();
    void rollHubBack();
    /// The hub forgets what was acknowledged, as if so much time had passed.
    void tidyHub(std::chrono::hours later);

    // --- what happens to a clinic now and then; people meet for it, so that the pairing itself goes undisturbed ---
    Device& joinDesk(const std::string& person);
    void shutOut(Device& desk);
    void beginEpoch();
    /// The phone is lost: its link ends, and another one comes only later, by replacePhone().
    void losePhone(std::size_t i);
    Device& replacePhone(std::size_t i);
    void backUp(Device& device);
    /// \pre backUp() was called
    void restore(Device& device);
    /// As the guides say, once everything was healed: a phone that is lost or goes on from an older copy is set up anew; so is a
    /// further desk. \returns whether there was anything to do.
    bool setUpAnew(std::vector<std::string>& wrong);

    /// Runs what a device does; now and then the power goes while it does it.
    void act(Device& device, const std::function<void()>& what);
    /// In thousandths of the acts.
    void setCuts(unsigned thousandths) { m_cuts = thousandths; }

    /// Runs the timeline dry.
    void settle();
    /// The network is well; everybody syncs until nothing changes for some rounds, some hours apart. \returns the rounds.
    int heal(int atMost, int quietEnough = 3);

    /// What is wrong now: a state ahead of its proof, or something that nobody wrote. Cheap; at any moment.
    void checkClaims(std::vector<std::string>& wrong);
    /// What is wrong once everything was healed: folds that differ, entries that are missing.
    void checkConvergence(std::vector<std::string>& wrong);
    /// Who is over is refused by the hub that was told, and opens nothing of what was sealed since by whoever knew of it.
    void checkEndings(std::vector<std::string>& wrong);

private:
    Device& add(const std::string& name, bool isDesk, const recovery::CourseId& course, const envelope::MailboxId& mailbox);
    void noteLedger();
    void checkEntries(Device& phone, std::vector<std::string>& wrong);
    void checkOpenings(Device& desk, std::vector<std::string>& wrong);
    void checkPhone(Device& phone, const std::set<journal::OperationId>& atDesk, std::vector<std::string>& wrong);
    /// Only desks that were shut out later ever held it.
    bool wentWithADesk(const journal::OperationId& entry);
    /// The text of everything in a course that both sides hold, but for what only one of them can know.
    std::string shared(Device& device, Device& phone, const std::set<journal::OperationId>& atDesk);
    void setClocksRight(Device& one, Device& other);
    void endAt(Device& device);
    void noteEnvelope(const mailbox::Request& request);
    bool somethingIsUnderWay(Device& to);
    void noteKeys(Device& device, bool underWay);
    void renewBackup();
    bool twoStories(const envelope::MailboxId& mailbox);
    bool opens(Device& device, const bytes::Bytes& sealed, const envelope::DeviceId& sender);
    void checkEnvelopes(const Ending& ending, std::vector<std::string>& wrong);
    void open(Device& device);
    void close(Device& device);
    void openHub();
    void powerCut(Device& device);
    void note(Device& device, const sync::Report& report);
    void checkPhotos(Device& phone, bool settled, std::vector<std::string>& wrong);

    const ClinicTemplate& m_from;
    std::filesystem::path m_folder;
    std::vector<Device*> m_current;  ///< the phone in use of each course
    std::map<std::tuple<envelope::MailboxId, envelope::DeviceId, std::uint64_t>, bytes::Bytes> m_envelopes;  ///< the first that the hub took
    std::uint64_t m_made = 0;        ///< devices that came later
    bool m_hubCopy = false;
    std::vector<std::string> m_wrong;  ///< what was seen between two checks
    std::unique_ptr<faults::FaultDisk> m_disk;
    std::unique_ptr<mailbox::MailStore> m_store;
    std::optional<mailbox::Service> m_service;
    unsigned m_cuts = 0;
};

}  // namespace ebbline::simulation
