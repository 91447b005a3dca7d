#pragma once
/// \file
/// One simulated clinic: a hub, a desk and phones with clocks, lines and disks of their own, all on one
/// thread and one timeline, running the programs' own core.

#include "tests/faults/fault_disk.h"
#include "tests/simulation/clinic_template.h"
#include "tests/simulation/network.h"

#include <set>

namespace ebbline::simulation {

struct WorldCounters {
    std::uint64_t photos = 0, photosTakenBack = 0, photosArrived = 0, photosRefused = 0, chunksSent = 0, chunksReceived = 0;
    std::uint64_t entries = 0, amended = 0, messages = 0, openings = 0, runs = 0, restarts = 0, cuts = 0, refused = 0;
    std::uint64_t operationsReceived = 0, envelopesReceived = 0, envelopesSent = 0;
    std::uint64_t gaps = 0, forks = 0, rolledBack = 0, quarantined = 0, garbled = 0, silent = 0, unproved = 0, problems = 0;
};

class World {
public:
    struct Device {
        std::string name;
        std::filesystem::path folder;
        SkewedClock clock;
        std::unique_ptr<Line> line;
        std::optional<patient::Diary> diary;
        std::optional<desk::Desk> desk;
        recovery::CourseId course;      ///< of a phone
        envelope::MailboxId mailbox;    ///< of a phone
        bool busy = false;
        std::uint64_t life = 0;         ///< how often it started; answers of a former life count for nothing
        std::set<recovery::EntryId> kept;  ///< entries that the diary said it had recorded
        std::map<photos::PhotoId, bytes::Bytes> pictures;  ///< photographs that it said it keeps, and did not take back

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
    std::set<journal::OperationId> seen;  ///< versions of entries that stood on the desk's screen when it opened them
    std::vector<std::unique_ptr<Device>> devices;  ///< the desk first
    /// In place of the honest hub, if set: is given the request and the honest service.
    std::function<mailbox::Response(const mailbox::Request&, const std::string& device)> lying;

    Device& desk() { return *devices.front(); }
    std::size_t phones() const { return devices.size() - 1; }
    Device& phone(std::size_t i) { return *devices.at(i + 1); }
    mailbox::Response honest(const mailbox::Request& request);

    // --- what people and devices do ---
    void writeEntry(Device& phone);
    void writeMessage(Device& device);
    /// Of one to four chunks.
    void takePhoto(Device& phone);
    void takePhotoBack(Device& phone);
    void openEntries();
    void syncOnce(Device& device);
    void restart(Device& device);
    /// Puts a copy of a device's folder aside, and later in place of what it became.
    void copyAside(Device& device);
    void putCopyBack(Device& device);
    /// The same for the hub's store.
    void copyHubAside();
    /// Its process ends and another one takes over the same store.
    void restartHub();
    void rollHubBack();
    /// The hub forgets what was acknowledged, as if so much time had passed.
    void tidyHub(std::chrono::hours later);
    /// Runs what a device does; now and then the power goes while it does it.
    void act(Device& device, const std::function<void()>& what);
    /// In thousandths of the acts.
    void setCuts(unsigned thousandths) { m_cuts = thousandths; }

    /// Runs the timeline dry.
    void settle();
    /// The network is well; everybody syncs until nothing changes, some hours apart. \returns the rounds.
    int heal(int atMost);

    /// What is wrong now: a state ahead of its proof, or something that nobody wrote. Cheap; at any moment.
    void checkClaims(std::vector<std::string>& wrong);
    /// What is wrong once everything was healed: folds that differ, entries that are missing.
    void checkConvergence(std::vector<std::string>& wrong);
    /// The text of everything in a course that both sides hold.
    static std::string shared(vault::Vault& vault, const recovery::CourseId& course);

private:
    void open(Device& device);
    void close(Device& device);
    void openHub();
    void powerCut(Device& device);
    void note(Device& device, const sync::Report& report);
    void checkPhotos(Device& phone, bool settled, std::vector<std::string>& wrong);

    const ClinicTemplate& m_from;
    std::filesystem::path m_folder;
    std::unique_ptr<faults::FaultDisk> m_disk;
    std::unique_ptr<mailbox::MailStore> m_store;
    std::optional<mailbox::Service> m_service;
    unsigned m_cuts = 0;
};

}  // namespace ebbline::simulation
