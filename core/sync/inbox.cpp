#include "core/sync/inbox.h"

#include "core/bytes/reader.h"
#include "core/mailbox/service.h"
#include "core/pairing/statement.h"
#include "core/sync/least_version.h"
#include "core/sync/messages.h"

#include <algorithm>
#include <tuple>

namespace ebbline::sync {

namespace {

/// The hub's own bound counts envelopes without their lengths.
constexpr std::size_t largestAnswer = mailbox::maximumAnswer + 64 * 1024;

bool isAboutHeld(envelope::Kind kind)
{
    return kind == envelope::Kind::acknowledgement || kind == envelope::Kind::heartbeat;
}

}  // namespace

Result<std::size_t> Inbox::take(bytes::View body)
{
    m_accepted = 0;
    struct Piece {
        std::optional<envelope::Header> header;
        bytes::View sealed;
    };
    std::vector<Piece> pieces;
    bytes::Reader reader(body);
    while (body.size() <= largestAnswer && reader.ok() && reader.left() > 0) {
        const bytes::View sealed = reader.block(envelope::maximumEnvelope);
        if (!reader.ok())
            break;
        const auto header = envelope::peek(sealed);
        if (header)
            m_seen.insert(header->sender);
        pieces.push_back({header ? std::optional(*header) : std::nullopt, sealed});
    }
    if (!reader.atEnd()) {
        ++m_report.garbled;
        if (!m_report.problem)
            m_report.problem = Error{Reason::malformed, "hub: its answer cannot be read to the end"};
    }
    // The chain says the order; the hub's is worth nothing.
    std::stable_sort(pieces.begin(), pieces.end(), [](const Piece& a, const Piece& b) {
        if (!a.header || !b.header)
            return a.header.has_value() && !b.header;
        return std::tie(a.header->sender, a.header->sequence) < std::tie(b.header->sender, b.header->sequence);
    });
    // Whoever is new here may be in the roster that a known desk sends in the same answer.
    const auto strangers = std::ranges::stable_partition(pieces, [this](const Piece& piece) { return isKnown(piece.header); });
    for (auto piece = pieces.begin(); piece != pieces.end(); ++piece) {
        if (piece == strangers.begin() && m_rosterTaken)
            if (const Done read = readRosterAgain(); !read)
                return fail(read.error());
        if (const Done taken = takeOne(piece->sealed); !taken)
            return fail(taken.error());
    }
    return m_accepted;
}

bool Inbox::isKnown(const std::optional<envelope::Header>& header) const
{
    return header && (m_post.peer(header->sender) || m_post.colleagues.contains(header->sender));
}

Done Inbox::readRosterAgain()
{
    auto posts = postsOf(m_vault);
    if (!posts)
        return fail(posts.error());
    for (Post& post : *posts)
        if (post.mailbox == m_post.mailbox)
            m_post = std::move(post);
    return {};
}

Done Inbox::keepAside(bytes::View sealed, const Error& why, const envelope::DeviceId* tell)
{
    using Kept = vault::Vault::Kept;
    const Result<Kept> kept = m_vault.quarantine(m_post.mailbox, sealed, why);
    if (!kept)
        return fail(kept.error());
    m_report.quarantined += *kept == Kept::known ? 0 : 1;
    // What is not kept comes again with every run: it is not answered with every run.
    if (tell && *kept == Kept::now)
        m_acknowledge.insert(*tell);
    return {};
}

/// The sender is told what we hold, so that an older copy of its vault learns that it is one.
Done Inbox::fork(bytes::View sealed, const envelope::DeviceId& sender, std::string_view why)
{
    m_report.forkSeen = true;
    if (const Done noted = m_vault.noteFork(m_post.mailbox, sender); !noted)
        return noted;
    return keepAside(sealed, {Reason::outOfOrder, std::string(why)}, &sender);
}

Done Inbox::takeOne(bytes::View sealed)
{
    const auto peeked = envelope::peek(sealed);
    if (!peeked)
        return keepAside(sealed, peeked.error());
    const bool shutOut = std::ranges::find(m_post.revoked, peeked->sender) != m_post.revoked.end();
    if (m_post.colleagues.contains(peeked->sender) || (shutOut && m_vault.owner() == vault::Vault::Owner::clinic))
        return {};  // for the phone: we could not read it, and hear the same from the desk itself
    const crypto::SigningPublicKey* sender = m_post.peer(peeked->sender);
    if (!sender)
        return keepAside(sealed, {Reason::forged, "envelope: of nobody who may write here"});
    const auto opened = open(sealed, *peeked, *sender);
    if (!opened)
        return cannotOpen(sealed, opened.error(), *sender);
    const envelope::Header& header = opened->header;
    if (header.mailbox != m_post.mailbox)
        return keepAside(sealed, {Reason::forged, "envelope: of another mailbox"});

    const Result<vault::Cursor> head = m_vault.peerHead(m_post.mailbox, header.sender);
    if (!head)
        return fail(head.error());
    const envelope::Hash hash = envelope::hashOf(sealed);
    if (header.sequence <= head->sequence) {
        const auto known = m_vault.passed(m_post.mailbox, header.sender, header.sequence);
        if (!known)
            return fail(known.error());
        const bool last = header.sequence == head->sequence;
        if ((*known && **known != hash) || (last && head->hash != hash))
            return fork(sealed, header.sender, "envelope: another one with this number was accepted");
        return {};
    }
    if (header.sequence != head->sequence + 1) {
        const auto jumped = jump(*opened, sealed, *head);
        if (!jumped || *jumped)
            return jumped ? Done{} : Done(fail(jumped.error()));
        m_report.gapSeen = true;
        if (const Done noted = m_vault.noteAhead(m_post.mailbox, header.sender, header.sequence); !noted)
            return noted;
        // It is signed all the same: what it says of us may be how an older copy learns that it is one.
        if (isAboutHeld(header.kind))
            if (const auto ours = isOurs(*opened); !ours)
                return fail(ours.error());
        return keepAside(sealed, {Reason::outOfOrder, "envelope: one before it is missing"});
    }
    if (header.previous != head->hash)
        return fork(sealed, header.sender, "envelope: it does not follow the one before");
    return accept(*opened, sealed);
}

Done Inbox::accept(const envelope::Opened& opened, bytes::View sealed)
{
    ++m_report.envelopesReceived;
    std::vector<journal::Operation> operations;
    if (opened.header.kind == envelope::Kind::operations) {
        auto unpacked = unpackOperations(opened.plaintext);
        if (!unpacked)
            return keepAside(sealed, unpacked.error());
        for (const journal::Operation& operation : *unpacked)
            if (!isAllowed(operation, opened.header.sender))
                return keepAside(sealed, {Reason::forged, "operation: not the sender's to write"});
        if (m_post.ended)
            return keepAside(sealed, {Reason::refused, "operation: this phone was replaced"});
        operations = std::move(*unpacked);
        if (m_post.channel || !isClinic())
            if (const Done apart = setDisputedApart(operations, opened.header.sender); !apart)
                return apart;
        if (isClinic())
            if (const Done late = m_vault.tellLate(operations); !late)
                return late;
    } else if (opened.header.kind == envelope::Kind::statement) {
        const auto refused = takeStatement(opened);
        if (!refused)
            return fail(refused.error());
        if (*refused)
            return keepAside(sealed, **refused);
        m_acknowledge.insert(opened.header.sender);
    } else if (isAboutHeld(opened.header.kind)) {
        bool usable = false;
        if (const Done noted = acknowledged(opened, usable); !noted)
            return noted;
        if (!usable)
            return keepAside(sealed, {Reason::malformed, "acknowledgement: it cannot be read"});
    }
    const vault::Cursor head{opened.header.sequence, envelope::hashOf(sealed)};
    const Done accepted = m_vault.accept(m_post.mailbox, opened.header.sender, head, operations, [&]() -> Done {
        if (!m_post.channel)
            return isClinic() ? noteSealedTo(opened.header) : noteCourse(operations);
        if (const Done taken = takeLinks(operations); !taken)
            return taken;
        const Done passed = passOn(operations);
        return passed ? m_vault.noteTold(m_post.mailbox, operations) : passed;
    });
    if (!accepted && accepted.error().reason == Reason::alreadyExists)
        return fork(sealed, opened.header.sender, accepted.error().detail);
    if (!accepted)
        return accepted;
    ++m_accepted;
    m_report.operationsReceived += operations.size();
    m_advanced.insert(opened.header.sender);
    if (!operations.empty())
        m_acknowledge.insert(opened.header.sender);
    return {};
}

/// What a device wrote twice under one number, two others may hold differently. Each keeps what it has, and what it
/// was told beside it: one that broke its own rule does not stop what desks tell each other, nor what a desk hands on to a
/// phone. To a phone an author's own envelope is refused as a whole all the same.
Done Inbox::setDisputedApart(std::vector<journal::Operation>& operations, const envelope::DeviceId& sender)
{
    auto disputed = m_vault.disputed(operations);
    if (!disputed)
        return fail(disputed.error());
    if (!m_post.channel)
        std::erase_if(*disputed, [&](const journal::OperationId& id) { return id.device == sender; });
    for (const journal::Operation& operation : operations)
        if (disputed->contains(operation.id))
            if (const Done apart = fork(journal::encode(operation), sender, "operation: another one has this number"); !apart)
                return apart;
    std::erase_if(operations, [&](const journal::Operation& operation) { return disputed->contains(operation.id); });
    return {};
}

/// Whether an acknowledgement is about envelopes that we know. A peer that holds more than we ever sealed, or
/// something else under one of our numbers, has seen a life of this device that this vault does not know.
Result<bool> Inbox::isOurs(const envelope::Opened& opened)
{
    const auto said = unpackAcknowledgement(opened.plaintext);
    if (!said || said->of != m_vault.device() || said->held.sequence == 0)
        return false;
    const Result<vault::Cursor> own = m_vault.ownHead(m_post.mailbox);
    if (!own)
        return fail(own.error());
    const auto known = m_vault.passed(m_post.mailbox, m_vault.device(), said->held.sequence);
    if (!known)
        return fail(known.error());
    if (said->held.sequence <= own->sequence && (!*known || **known == said->held.hash))
        return true;
    m_report.rolledBack = true;
    const Done noted = m_vault.noteRolledBack(m_post.mailbox);
    return noted ? Result<bool>(false) : fail(noted.error());
}

Done Inbox::acknowledged(const envelope::Opened& opened, bool& usable)
{
    const auto said = unpackAcknowledgement(opened.plaintext);
    usable = said.has_value();
    if (!said)
        return {};
    const Result<bool> ours = isOurs(opened);
    if (!ours)
        return fail(ours.error());
    return *ours ? m_vault.acknowledged(m_post.mailbox, said->held.sequence, said->at) : Done{};
}

Result<std::optional<Error>> Inbox::takeStatement(const envelope::Opened& opened)
{
    using Answer = std::optional<Error>;
    auto statement = unpackStatement(opened.plaintext);
    if (!statement)
        return Answer(statement.error());
    if (const auto* inner = std::get_if<SignedStatement>(&*statement))
        return takeSigned(opened, inner->signedBytes);
    if (const auto* ask = std::get_if<AskAgain>(&*statement))
        return takeAsk(*ask);
    if (std::holds_alternative<SealedAgain>(*statement))
        return Answer();  // here in its turn: nothing was skipped
    if (std::holds_alternative<LeftBehind>(*statement) && m_post.ended && m_vault.owner() == vault::Vault::Owner::clinic) {
        const Done kept = m_vault.keep(leftBehindName(m_post.mailbox), opened.plaintext);
        return kept ? Result<Answer>(Answer()) : fail(kept.error());
    }
    // The rest is between desks.
    if (!m_post.channel)
        return Answer({Reason::forged, "statement: not for a phone"});
    if (const auto* secret = std::get_if<EpochSecret>(&*statement)) {
        if (m_vault.epochKey(secret->number) && secret->number <= m_vault.epochNumber())
            return Answer();
        const Done put = m_vault.putEpoch(secret->number, secret->key);
        return put ? Result<Answer>(Answer()) : fail(put.error());
    }
    const auto* heads = std::get_if<Heads>(&*statement);
    if (!heads)
        return Answer({Reason::forged, "statement: it has no place here"});
    for (const vault::Vault::Head& head : *heads)
        if (const Done adopted = m_vault.adoptHead(head); !adopted)
            return fail(adopted.error());
    return Answer();
}

Result<std::optional<Error>> Inbox::takeSigned(const envelope::Opened& opened, bytes::View signedBytes)
{
    using Answer = std::optional<Error>;
    const bool clinic = m_vault.owner() == vault::Vault::Owner::clinic;
    if (clinic && !m_post.channel)
        return Answer({Reason::forged, "statement: a phone has none to make"});
    const auto statement = pairing::openStatement(signedBytes, m_post.root);
    if (!statement && statement.error().reason == Reason::unsupported) {
        // The clinic's own word, in a program's words that this one does not know yet: kept for the one that will, and said.
        m_report.tooOld = true;
        const Done kept = m_vault.keep(newerStatementName(m_post.mailbox), signedBytes);
        return kept ? Result<Answer>(Answer()) : fail(kept.error());
    }
    if (!statement)
        return Answer(statement.error());
    if (const auto* least = std::get_if<pairing::LeastVersion>(&*statement)) {
        const Done kept = keepLeastVersion(m_vault, m_post.root, *least, signedBytes);
        if (kept)
            return Answer();
        return kept.error().reason == Reason::outOfOrder ? forkOfStatements(opened.header.sender) : fail(kept.error());
    }
    if (const auto* replaced = std::get_if<pairing::PhoneReplaced>(&*statement)) {
        if (clinic || replaced->mailbox != m_post.mailbox || replaced->phone != m_vault.device())
            return Answer({Reason::forged, "statement: it is about another phone"});
        const Done ended = leaveBehind(replaced->held);
        return ended ? Result<Answer>(Answer()) : fail(ended.error());
    }
    const auto& roster = std::get<pairing::Roster>(*statement);
    const auto put = m_vault.putRoster(m_post.root, {roster.number, roster.epoch, roster.epochKey, {signedBytes.begin(), signedBytes.end()}});
    m_rosterTaken = m_rosterTaken || (put && *put);
    if (put)
        return Answer();
    return put.error().reason == Reason::outOfOrder ? forkOfStatements(opened.header.sender) : fail(put.error());
}

/// Two with one number, both signed by the root: the first one stays, and it shows.
Result<std::optional<Error>> Inbox::forkOfStatements(const envelope::DeviceId& sender)
{
    m_report.forkSeen = true;
    const Done noted = m_vault.noteFork(m_post.mailbox, sender);
    return noted ? Result<std::optional<Error>>(std::nullopt) : fail(noted.error());
}

Done Inbox::takeLinks(const std::vector<journal::Operation>& operations)
{
    for (const journal::Operation& operation : operations) {
        if (operation.kind != static_cast<std::uint16_t>(records::Kind::patientLinked))
            continue;
        const auto body = records::decode(records::Kind::patientLinked, operation.body);
        if (!body)
            continue;
        const auto& made = std::get<records::PatientLinked>(*body);
        bool known = false, another = false;
        const auto links = m_vault.links();
        if (!links)
            return fail(links.error());
        for (const vault::Link& link : *links) {
            known = known || link.mailbox == made.mailbox;
            another = another || (link.course == made.course && link.mailbox != made.mailbox);
            // The course has another phone now.
            if (link.course == made.course && link.mailbox != made.mailbox && !link.ended)
                if (const Done ended = m_vault.endLink(link.mailbox); !ended)
                    return ended;
        }
        if (known)
            continue;
        vault::Link link;
        link.mailbox = made.mailbox;
        link.course = made.course;
        link.peerSigning.value = made.signingKey;
        link.peerBox.value = made.boxKey;
        link.clinicRoot = m_post.root;
        link.epoch = m_vault.epochNumber();
        link.hub = m_post.hub;
        if (const Done put = m_vault.putLink(link); !put)
            return put;
        if (another)
            if (const Done told = tellNewPhone(made.course, made.mailbox); !told)
                return told;
    }
    return {};
}

/// A phone writes about its own course only, a clinic nothing in the name of this phone. A desk tells another
/// whatever anybody wrote.
bool Inbox::isAllowed(const journal::Operation& operation, const envelope::DeviceId& sender) const
{
    using records::Kind;
    if (m_post.channel)
        return operation.id.device != m_vault.device();
    if (operation.audience != journal::Audience::patientAndClinic)
        return false;
    const auto kind = static_cast<Kind>(operation.kind);
    const bool newer = operation.kind > static_cast<std::uint16_t>(records::newestKind);
    const bool patients = kind == Kind::entryRecorded || kind == Kind::reminderAnswered || kind == Kind::warningShown
                          || kind == Kind::messageWritten || kind == Kind::messageRead || kind == Kind::photoTaken
                          || kind == Kind::photoRemoved || kind == Kind::keyAnnounced;
    const bool clinics = kind == Kind::courseOpened || kind == Kind::entriesOpened || kind == Kind::versionsOpened
                         || kind == Kind::photosReceived;
    if (m_vault.owner() == vault::Vault::Owner::clinic)
        return operation.id.device == sender && (patients || newer) && operation.course == m_post.course;
    // The history of a phone that this one replaces comes from the clinic, whoever wrote it, and in whatever program.
    if (operation.id.device != sender)
        return operation.id.device != m_vault.device() && (newer || patients || clinics);
    return newer || clinics || kind == Kind::messageWritten || kind == Kind::messageRead;
}

}  // namespace ebbline::sync
