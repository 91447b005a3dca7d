#pragma once
/// \file
/// The encrypted store of one device: its keys, its journal, and what waits to be sent.
///
/// Whatever belongs together commits together: an operation and its place in the outbox; an
/// envelope received, its operations and the cursor. Signed public facts that must be readable
/// while locked (whom to call, warning advice) stand outside, in `open.info`.

#include "core/journal/state.h"
#include "core/store/database.h"
#include "core/vault/attempt_guard.h"
#include "core/vault/ways_in.h"

#include <map>
#include <set>

namespace ebbline::vault {

/// The other end of a mailbox, as pairing left it.
struct Link {
    envelope::MailboxId mailbox;
    recovery::CourseId course;             ///< null until the course is opened
    crypto::SigningPublicKey peerSigning;  ///< phone: the desk's; desk: the phone's
    crypto::BoxPublicKey peerBox;          ///< phone: the clinic epoch's; desk: the phone's
    crypto::SigningPublicKey clinicRoot;
    std::uint32_t epoch = 1;
    std::string hub;                       ///< base address, "https://host:port"
    bytes::Array<32> hubKeyHash{};         ///< SHA-256 of the hub's public key, zeros without TLS
    bool ended = false;                    ///< another phone took this one's place
    std::uint64_t roster = 0;              ///< desk: the newest roster that this phone was sent
};

/// The way from one desk of a clinic to another. Everything that one knows goes to the other.
struct Channel {
    envelope::MailboxId mailbox;
    crypto::SigningPublicKey peerSigning;
    crypto::BoxPublicKey peerBox;
    std::string hub;
    std::uint64_t roster = 0;  ///< the newest roster that the other was sent
    bool ended = false;        ///< the other was revoked
};

/// A roster as sync has verified it (core/pairing/statement.h), with what the vault acts on.
struct KeptRoster {
    std::uint64_t number = 0;
    std::uint32_t epoch = 0;
    crypto::BoxPublicKey epochKey;
    bytes::Bytes signedBytes;
};

/// What this device tried with a hub about a photograph.
struct PhotoStanding {
    bool atHub = false;    ///< the hub said that it holds all of it; proves nothing about the clinic
    bool refused = false;  ///< it came whole, and is none that may be shown
    clock::Instant triedAt{};
};

/// An envelope of ours that the recipient has not acknowledged yet.
struct Outgoing {
    envelope::MailboxId mailbox;
    std::uint64_t sequence;
    bytes::Bytes envelope;
    bool atHub = false;
    clock::Instant offeredAt{};  ///< when the hub last took it, by our clock
};

struct Cursor {
    std::uint64_t sequence = 0;  ///< highest without a gap
    envelope::Hash hash{};
};

/// How far the recipient has acknowledged our operations.
struct Delivered {
    std::uint64_t sequence = 0;
    clock::Instant at{};  ///< the time in the recipient's signed acknowledgement
};

/// How it stands with a mailbox. All of it is proved by signatures and timed by our own clock; nothing
/// rests on what a hub says.
struct Standing {
    std::optional<clock::Instant> spokeAt;        ///< when we last sealed anything for it
    std::optional<clock::Instant> heardAt;        ///< when something new of a peer was last accepted
    std::optional<clock::Instant> unprovedSince;  ///< since when our oldest unacknowledged operations wait
    bool gap = false;          ///< an envelope is missing before one that came
    bool fork = false;         ///< a peer sealed two envelopes with one number
    bool rolledBack = false;   ///< a peer holds more of ours than we know of: this vault is an older copy
    bool peerOlder = false;    ///< a peer said, signed, that it is an older copy of itself
    std::size_t refused = 0;   ///< envelopes that were refused, whether they are kept or not
};

class Vault {
public:
    Vault(Vault&&) noexcept;
    Vault& operator=(Vault&&) noexcept;
    ~Vault();

    enum class Owner : std::uint8_t { patient = 1, clinic = 2 };

    /// Creates the folder, fresh device keys and, for a clinic, root and epoch keys.
    /// \returns Reason::alreadyExists if there is a vault.
    static Result<Vault> create(const std::filesystem::path& folder, Owner owner, bytes::View passphrase,
                                const crypto::StretchCost& cost, const clock::Clock& clock);

    /// \returns Reason::wrongKey, Reason::damaged, Reason::notFound, Reason::tooSoon.
    static Result<Vault> unlock(const std::filesystem::path& folder, bytes::View passphrase,
                                const clock::Clock& clock);
    /// With passphrase or recovery code; afterwards changePassphrase() sets a new one.
    static Result<Vault> unlock(const std::filesystem::path& folder, const Offered& offered, const clock::Clock& clock);
    /// With the data key at hand, from openDataKey().
    static Result<Vault> open(const std::filesystem::path& folder, const crypto::Secret& dataKey, const clock::Clock& clock);

    /// True if there are keys: a database without keys opens for nobody; create() sets it aside.
    static bool exists(const std::filesystem::path& folder);

    Owner owner() const;
    const envelope::DeviceId& device() const;
    const crypto::SigningKey& signingKey() const;
    const crypto::BoxKey& boxKey() const;
    bool holdsRoot() const;                        ///< a clinic's first desk, and those it shared the key with
    const crypto::SigningKey& clinicRoot() const;  ///< \pre holdsRoot()
    const crypto::SigningPublicKey& clinicRootKey() const;  ///< \pre owner() == clinic
    const crypto::BoxKey& clinicEpoch() const;     ///< the newest. \pre owner() == clinic
    std::uint32_t epochNumber() const;             ///< of clinicEpoch()
    /// Of an earlier epoch, too: what was sealed to it still opens. Null if it is not known.
    const crypto::BoxKey* epochKey(std::uint32_t number) const;
    const clock::Clock& clock() const;

    const journal::State& state() const;
    std::vector<journal::Operation> operations() const;  ///< in fold order

    /// Appends operations of this device in one durable transaction; those for the patient and
    /// the clinic (records::goesBetween()) enter the outbox of `mailbox` in the same one. What was kept under the names in
    /// `finished` goes in it, too: a draft whose words are recorded. A course that is opened anew supersedes the opening that holds
    /// here, whatever else is superseded.
    Result<std::vector<journal::OperationId>> append(const std::vector<records::Body>& bodies,
                                                     const clock::Moment& entered,
                                                     std::optional<envelope::MailboxId> mailbox = {},
                                                     std::optional<journal::OperationId> supersedes = {},
                                                     const std::vector<std::string_view>& finished = {});

    /// A small value kept durably but never synced (a draft, a setting). Empty removes it.
    Done keep(std::string_view name, bytes::View value);
    /// \returns Reason::notFound if nothing is kept under the name, Reason::storageFailed if it cannot be read.
    Result<bytes::Bytes> kept(std::string_view name) const;
    /// All that is kept under names that begin so and go on with a letter or digit, by name. \returns Reason::storageFailed.
    Result<std::vector<std::pair<std::string, bytes::Bytes>>> keptUnder(std::string_view prefix) const;

    // --- photographs: the sealed bytes; what they are stands in the journal ---
    /// As append(), with all chunks of a photograph in the same transaction. They are kept as they are, so that
    /// sending never seals twice. \returns also Reason::notEnough or Reason::forged if they are not those of the manifest.
    Result<journal::OperationId> appendPhoto(const records::PhotoTaken& photo, const std::vector<bytes::Bytes>& chunks,
                                             const clock::Moment& entered, std::optional<envelope::MailboxId> mailbox);
    /// The same of one that the clinic took: for its desks alone.
    Result<journal::OperationId> appendPhoto(const records::ClinicPhotoTaken& photo, const std::vector<bytes::Bytes>& chunks,
                                             const clock::Moment& entered);
    /// Keeps one chunk that came from elsewhere; one that is here already is not an error.
    /// \returns Reason::forged if it is not the one that the manifest names, Reason::notFound for a photograph that
    ///          the journal does not hold or that was removed.
    Done putPhotoChunk(const records::PhotoTaken& photo, std::uint32_t number, bytes::View chunk);
    Result<std::vector<std::uint32_t>> missingPhotoChunks(const photos::Manifest& manifest) const;
    /// How many chunks of each photograph are here.
    Result<std::map<photos::PhotoId, std::size_t>> heldPhotoChunks() const;
    Result<bytes::Bytes> photoChunk(const photos::PhotoId& photo, std::uint32_t number) const;  ///< Reason::notFound
    /// The picture, as JPEG bytes without anything else in them. \returns as photos::open().
    Result<bytes::Bytes> photo(const photos::Manifest& manifest) const;
    /// Lets a photograph's chunks go, where they are no good.
    Done dropPhotoChunks(const photos::PhotoId& photo);
    Result<std::optional<PhotoStanding>> photoStanding(const photos::PhotoId& photo) const;
    Done notePhoto(const photos::PhotoId& photo, const PhotoStanding& standing);
    Done forgetPhoto(const photos::PhotoId& photo);  ///< its standing; nothing if there is none

    // --- what sync needs ---
    Done putLink(const Link& link);
    /// As putLink(), and ends every other one in the same transaction: a phone that is paired again.
    Done putOnlyLink(const Link& link);
    Result<std::vector<Link>> links() const;  ///< Reason::storageFailed
    /// Operations in the outbox of a mailbox that no envelope carries yet, oldest first.
    Result<std::vector<journal::Operation>> unsealed(const envelope::MailboxId& mailbox) const;
    /// Whether any operation waits to be sealed for a mailbox; yes if it cannot be told.
    bool hasUnsealed() const;
    /// Stores a sealed envelope, takes its operations out of the outbox and moves our head: one transaction.
    Done storeSealed(const envelope::MailboxId& mailbox, std::uint64_t sequence, bytes::View envelope,
                     const std::vector<journal::OperationId>& carried);
    Result<std::vector<Outgoing>> outgoing(const envelope::MailboxId& mailbox) const;
    Done markAtHub(const envelope::MailboxId& mailbox, std::uint64_t sequence);
    /// How far the chain of a device goes in a mailbox; sequence 0 before its first envelope.
    /// \returns Reason::storageFailed.
    Result<Cursor> ownHead(const envelope::MailboxId& mailbox) const;
    Result<Cursor> peerHead(const envelope::MailboxId& mailbox, const envelope::DeviceId& sender) const;
    /// Appends a peer's operations and moves the cursor in one transaction; known ones are ignored.
    /// \returns Reason::alreadyExists, with nothing changed, if another operation has the name of one of them.
    /// `with`, if set, does in the same transaction what the operations mean for links and channels.
    Done accept(const envelope::MailboxId& mailbox, const envelope::DeviceId& sender, const Cursor& head,
                const std::vector<journal::Operation>& operations, const std::function<Done()>& with = {});
    /// When operations of others came that bear a time more than clearlyAhead later: by the clock of whoever wrote them it was
    /// not yet that time, and either that clock or this one is wrong. For the screens; nothing is judged by it.
    Result<std::map<journal::OperationId, clock::Instant>> cameEarly() const;
    static constexpr std::chrono::minutes clearlyAhead{10};
    /// Several of putLink(), endLink(), keep(), sendAgain() and noteTold() in one durable transaction. Whatever
    /// changes the journal has one of its own.
    Done together(const std::function<Done()>& work);
    /// Those of `operations` whose name another operation has here.
    Result<std::set<journal::OperationId>> disputed(const std::vector<journal::Operation>& operations) const;
    /// Takes a peer's signed acknowledgement of our envelopes; releases them.
    Done acknowledged(const envelope::MailboxId& mailbox, std::uint64_t sequence, clock::Instant at);
    Delivered delivered(const envelope::MailboxId& mailbox) const;
    /// The time in the first acknowledgement that covers an envelope of ours; empty before it came.
    std::optional<clock::Instant> deliveredAt(const envelope::MailboxId& mailbox, std::uint64_t sequence) const;
    /// The same for the envelope that carried an operation of ours, in the mailbox that it went to.
    std::optional<clock::Instant> deliveredAt(const journal::OperationId& id) const;
    /// The sequence that carried an operation, 0 if none does yet.
    std::uint64_t carriedBy(const journal::OperationId& id) const;
    /// Keeps an envelope that could not be accepted, with the reason, until it can be. Of a mailbox at most
    /// mostQuarantined are kept, so that nobody fills the disk with garbage; all are counted.
    enum class Kept : std::uint8_t { known, now, no };  ///< since before; from now on; there is no room: only counted
    Result<Kept> quarantine(const envelope::MailboxId& mailbox, bytes::View envelope, const Error& why);
    static constexpr std::size_t mostQuarantined = 200;
    std::size_t quarantined(const envelope::MailboxId& mailbox) const;
    /// Of those the ones under a sender's name that could not be read or verified, whatever came before them. \returns Reason::storageFailed.
    Result<std::size_t> unreadable(const envelope::MailboxId& mailbox, const envelope::DeviceId& sender) const;

    Result<Standing> standing(const envelope::MailboxId& mailbox) const;
    /// The hash of the envelope with this number, sealed here or accepted; empty if none is known.
    Result<std::optional<envelope::Hash>> passed(const envelope::MailboxId& mailbox, const envelope::DeviceId& device,
                                                 std::uint64_t sequence) const;
    Done noteAhead(const envelope::MailboxId& mailbox, const envelope::DeviceId& peer, std::uint64_t sequence);
    Done noteFork(const envelope::MailboxId& mailbox, const envelope::DeviceId& peer);
    Done noteRolledBack(const envelope::MailboxId& mailbox);
    /// No chain reaches this number: what a desk says under it stands beside its chain (docs/formats/statements.md, form 7).
    static constexpr std::uint64_t besideEveryChain = 0x4000'0000'0000'0000;
    /// The peer says that it is an older copy. Under what number it says so counts as ahead no more: a program that did not know the
    /// word noted that something is missing before it.
    Done notePeerOlder(const envelope::MailboxId& mailbox, const envelope::DeviceId& peer);

    // --- a clinic with several desks, and phones that are replaced ---
    /// Keeps a roster if it is newer than the one that is kept; a patient's links seal to its epoch from then on.
    /// `epochSecret`, at the desk that begins an epoch, is stored in the same transaction.
    /// \returns whether it is newer; Reason::outOfOrder if another one has the same number.
    Result<bool> putRoster(const crypto::SigningPublicKey& root, const KeptRoster& roster,
                           const crypto::BoxKey* epochSecret = nullptr);
    /// The signed bytes. \returns Reason::notFound before the first.
    Result<bytes::Bytes> roster(const crypto::SigningPublicKey& root) const;
    Done noteRosterSent(const envelope::MailboxId& mailbox, std::uint64_t number);
    Done endLink(const envelope::MailboxId& mailbox);
    Done putEpoch(std::uint32_t number, const crypto::BoxKey& key);
    /// Makes this empty desk one of another clinic. `rootSeed` is empty unless the root key is shared with it.
    /// \returns Reason::invalidState if it has patients or operations of its own.
    Done joinClinic(const crypto::SigningPublicKey& root, bytes::View rootSeed);
    Done putChannel(const Channel& channel);
    Result<std::vector<Channel>> channels() const;  ///< Reason::storageFailed
    /// What the other end of a channel was not told yet, at most so many; of each device oldest first.
    Result<std::vector<journal::Operation>> untold(const envelope::MailboxId& channel, std::size_t atMost) const;
    /// As storeSealed(), and remembers what the other was told.
    Done storeTold(const envelope::MailboxId& channel, std::uint64_t sequence, bytes::View envelope,
                   const std::vector<journal::OperationId>& told);
    /// The other end of a channel told us these: it need not hear them.
    Done noteTold(const envelope::MailboxId& channel, const std::vector<journal::Operation>& operations);
    /// These are about to be accepted. What is new here under a number below what another desk was told of the same device, as
    /// of a phone that was paired again, is not passed over: that desk is told from there on again, and takes everything once.
    Done tellLate(const std::vector<journal::Operation>& operations);
    /// How far each phone's chain goes here.
    struct Head {
        envelope::MailboxId mailbox;
        envelope::DeviceId device;
        Cursor cursor;
    };
    Result<std::vector<Head>> peerHeads() const;
    /// Another desk holds a phone's chain up to here, and we hold what it carried: ours goes on from there.
    Done adoptHead(const Head& head);
    // --- keys that are replaced: a clinic's epochs, a phone's own box keys; the newest is the one in force ---
    struct KeyAge {
        std::uint32_t number = 0;
        clock::Instant begunAt{};  ///< by our own clock; of a key of an older program, when this was first asked
    };
    Result<std::vector<KeyAge>> keyAges();  ///< oldest first
    /// Destroys a key that others followed: what is sealed to it opens no more. \returns Reason::refused for the newest.
    Done destroyKey(std::uint32_t number);
    bool isDestroyed(std::uint32_t number) const;
    bool hasDestroyed() const;  ///< any of them
    /// A phone's box keys, the newest first: what the clinic sealed may be for an earlier one. \pre owner() == patient
    std::vector<const crypto::BoxKey*> boxKeys() const;
    /// Begins a phone's next box key, if `fresh`, and announces the newest one in the same transaction.
    Done announceKey(const recovery::CourseId& course, const envelope::MailboxId& mailbox, const clock::Moment& entered, bool fresh);
    /// To which number of our keys the sender of a mailbox sealed last: none of an earlier one comes any more. 0: not known.
    Result<std::uint32_t> sealedTo(const envelope::MailboxId& mailbox) const;
    Done noteSealedTo(const envelope::MailboxId& mailbox, std::uint32_t number);
    /// What the other end cannot open, because it destroyed the key: our operations in envelopes past `held` wait to be sealed
    /// anew, unless they were acknowledged. \returns the numbers of those envelopes, which are offered no more; empty if none.
    Result<std::optional<std::pair<std::uint64_t, std::uint64_t>>> sealAgain(const envelope::MailboxId& mailbox, std::uint64_t held);
    /// Forgets what was kept aside of a sender under these numbers.
    Done releaseQuarantine(const envelope::MailboxId& mailbox, const envelope::DeviceId& sender, std::uint64_t first, std::uint64_t last);

    /// Sends operations to a mailbox again, whoever wrote them: the history for a phone that is new.
    Done sendAgain(const std::vector<journal::OperationId>& operations, const envelope::MailboxId& mailbox);

    /// As inspect() (core/vault/inspection.h), over this open vault. \returns Reason::damaged with the first fault.
    Done verify();

private:
    struct Inside;
    Result<std::vector<journal::OperationId>> appendWith(const std::vector<records::Body>& bodies, const clock::Moment& entered,
                                                         const std::optional<envelope::MailboxId>& mailbox,
                                                         const std::optional<journal::OperationId>& supersedes,
                                                         const std::function<Done()>& alongside);
    Result<journal::OperationId> appendSealed(const records::Body& body, const photos::Manifest& manifest, const std::vector<bytes::Bytes>& chunks,
                                              const clock::Moment& entered, const std::optional<envelope::MailboxId>& mailbox);
    explicit Vault(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> m_inside;
};

/// Facts that stay readable while the vault is locked or damaged.
struct OpenInfo {
    records::Contacts contacts;
    clock::Moment treated;
    bool operator==(const OpenInfo&) const = default;
};
Done writeOpenInfo(const std::filesystem::path& folder, const OpenInfo& info);
Result<OpenInfo> readOpenInfo(const std::filesystem::path& folder);

}  // namespace ebbline::vault
