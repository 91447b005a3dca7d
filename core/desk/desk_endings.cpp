// Devices that are over: what the clinic's hub is told, until it has taken it, and again every day.

#include "core/desk/inside.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/mailbox/ending.h"
#include "core/sync/hub_client.h"

#include <algorithm>
#include <set>

namespace ebbline::desk {

namespace {

constexpr std::string_view prefix = "ended/";

std::string nameOf(const envelope::DeviceId& device) { return std::string(prefix) + bytes::toHex(device.view()); }

/// 1 phone (0, 1) | 8 due, ms | 8 told, ms, 0 before | the signed ending.
struct Kept {
    EndedDevice ended;
    bytes::Bytes signedEnding;
};

std::int64_t millis(clock::Instant instant) { return instant.time_since_epoch().count(); }
clock::Instant instantOf(std::uint64_t value) { return clock::Instant{std::chrono::milliseconds{static_cast<std::int64_t>(value)}}; }

bytes::Bytes encode(const Kept& kept)
{
    return bytes::Writer()
        .u8(kept.ended.phone ? 1 : 0)
        .u64(static_cast<std::uint64_t>(millis(kept.ended.due)))
        .u64(static_cast<std::uint64_t>(kept.ended.toldAt ? millis(*kept.ended.toldAt) : 0))
        .raw(kept.signedEnding)
        .bytes();
}

std::optional<Kept> decode(const std::string& name, bytes::View value)
{
    const auto id = bytes::fromHex(name.substr(prefix.size()));
    bytes::Reader reader(value);
    Kept kept;
    kept.ended.phone = reader.u8() == 1;
    kept.ended.due = instantOf(reader.u64());
    if (const std::uint64_t told = reader.u64(); told != 0)
        kept.ended.toldAt = instantOf(told);
    const bytes::View ending = reader.take(mailbox::endingSize);
    kept.signedEnding.assign(ending.begin(), ending.end());
    if (!id || id->size() != 16 || !reader.atEnd())
        return std::nullopt;
    std::copy(id->begin(), id->end(), kept.ended.device.value.begin());
    return kept;
}

Result<std::vector<Kept>> readAll(const vault::Vault& vault)
{
    const auto rows = vault.keptUnder(prefix);
    if (!rows)
        return fail(rows.error());
    std::vector<Kept> all;
    for (const auto& [name, value] : *rows)
        if (auto kept = decode(name, value))
            all.push_back(std::move(*kept));
    return all;
}

std::set<envelope::DeviceId> phonesInUse(const std::vector<vault::Link>& links)
{
    std::set<envelope::DeviceId> phones;
    for (const vault::Link& link : links)
        if (!link.ended)
            phones.insert(envelope::deviceIdOf(link.peerSigning));
    return phones;
}

}  // namespace

Done Desk::Inside::endAtHub(const envelope::DeviceId& device, bool phone, clock::Instant due)
{
    if (const Done may = needsRoot(); !may)
        return may;
    const auto known = vault.kept(nameOf(device));
    if (!known && known.error().reason != Reason::notFound)
        return fail(known.error());
    const auto before = known ? decode(nameOf(device), *known) : std::nullopt;
    if (before && before->ended.due <= due)
        return {};
    return vault.keep(nameOf(device), encode({{device, phone, due, {}}, mailbox::signEnding({device, clock.now()}, vault.clinicRoot())}));
}

Result<bool> Desk::Inside::isEnded(const envelope::DeviceId& device) const
{
    const auto known = vault.kept(nameOf(device));
    if (!known)
        return known.error().reason == Reason::notFound ? Result<bool>(false) : fail(known.error());
    const auto kept = decode(nameOf(device), *known);
    return kept && (kept->ended.toldAt || kept->ended.due <= clock.now());
}

/// Whatever left no ending behind gets one: what an older program shut out, and what an interrupted act left.
Done Desk::Inside::noteEndings()
{
    if (!vault.holdsRoot())
        return {};
    for (const envelope::DeviceId& device : roster().revoked)
        if (const Done noted = endAtHub(device, false, clock.now()); !noted)
            return noted;
    const auto links = vault.links();
    if (!links)
        return fail(links.error());
    const auto inUse = phonesInUse(*links);
    for (const vault::Link& link : *links) {
        if (!link.ended)
            continue;
        const envelope::DeviceId phone = envelope::deviceIdOf(link.peerSigning);
        if (inUse.contains(phone))
            continue;
        const auto known = vault.kept(nameOf(phone));
        if (!known && known.error().reason != Reason::notFound)
            return fail(known.error());
        const auto answer = sync::leftBehind(vault, link.mailbox);
        if (!answer)
            return fail(answer.error());
        // It has said what it holds: there is nothing more to wait for.
        if (known && !*answer)
            continue;
        if (const Done noted = endAtHub(phone, true, clock.now() + (*answer ? std::chrono::hours{0} : replacedPhoneMayAnswer)); !noted)
            return noted;
    }
    return {};
}

Done Desk::Inside::noteTold(const std::vector<envelope::DeviceId>& devices)
{
    return vault.together([&]() -> Done {
        for (const envelope::DeviceId& device : devices) {
            const auto known = vault.kept(nameOf(device));
            auto kept = known ? decode(nameOf(device), *known) : std::nullopt;
            if (!kept)
                continue;
            kept->ended.toldAt = clock.now();
            if (const Done noted = vault.keep(nameOf(device), encode(*kept)); !noted)
                return noted;
        }
        return {};
    });
}

Result<std::vector<std::pair<envelope::DeviceId, bytes::Bytes>>> Desk::Inside::endingsDue()
{
    if (const Done noted = noteEndings(); !noted)
        return fail(noted.error());
    const auto links = vault.links();
    auto all = readAll(vault);
    if (!links || !all)
        return fail(links ? all.error() : links.error());
    const clock::Instant now = clock.now();
    const auto inUse = phonesInUse(*links);
    std::vector<std::pair<envelope::DeviceId, bytes::Bytes>> due;
    // Whom the hub heard of longest ago comes first, so that more than one request holds get their turn.
    std::ranges::stable_sort(*all, {}, [](const Kept& kept) { return kept.ended.toldAt.value_or(clock::Instant{}); });
    for (Kept& kept : *all) {
        // Paired again before its time was up: it is in use.
        if (kept.ended.phone && !kept.ended.toldAt && inUse.contains(kept.ended.device)) {
            if (const Done gone = vault.keep(nameOf(kept.ended.device), {}); !gone)
                return fail(gone.error());
            continue;
        }
        const bool again = kept.ended.toldAt && sync::isOver(*kept.ended.toldAt, tellHubAgainAfter, now);
        if (due.size() < mailbox::mostEndings && kept.ended.due <= now && (!kept.ended.toldAt || again))
            due.emplace_back(kept.ended.device, std::move(kept.signedEnding));
    }
    return due;
}

void Desk::Inside::tellHub(sync::Courier& courier, std::function<void(std::optional<Error>)> then)
{
    const auto due = endingsDue();
    if (!due)
        return then(due.error());
    if (due->empty())
        return then({});
    bytes::Writer body;
    body.raw(vault.clinicRootKey().value);
    std::vector<envelope::DeviceId> devices;
    for (const auto& [device, signedEnding] : *due) {
        body.block(signedEnding);
        devices.push_back(device);
    }
    std::make_shared<sync::HubClient>(courier, vault.signingKey(), clock)
        ->signedRequest({"POST", "/v1/ended", {}, std::move(body).bytes(), {}},
                        [this, devices, then = std::move(then)](const Result<mailbox::Response>& response) {
                            // A hub that does not take it is told again; the rest of the run does not wait for it.
                            if (response)
                                if (const Done noted = noteTold(devices); !noted)
                                    return then(noted.error());
                            then({});
                        });
}

std::vector<FormerPhone> Desk::formerPhones(const recovery::CourseId& course) const
{
    std::vector<FormerPhone> phones;
    const auto links = m_inside->vault.links();
    if (!links)
        return phones;
    const auto inUse = phonesInUse(*links);
    for (const vault::Link& link : *links) {
        const envelope::DeviceId phone = envelope::deviceIdOf(link.peerSigning);
        if (link.course == course && link.ended && !inUse.contains(phone))
            phones.push_back({phone, sync::leftBehind(m_inside->vault, link.mailbox).value_or(std::nullopt)});
    }
    return phones;
}

std::vector<EndedDevice> Desk::endedDevices() const
{
    std::vector<EndedDevice> devices;
    if (const auto all = readAll(m_inside->vault))
        for (const Kept& kept : *all)
            devices.push_back(kept.ended);
    std::ranges::stable_sort(devices, std::ranges::greater{}, &EndedDevice::due);
    return devices;
}

Done Desk::endPhone(const recovery::CourseId& course)
{
    if (const Done may = m_inside->needsTask(records::Task::phones); !may)
        return may;
    if (const Done may = m_inside->needsRoot(); !may)
        return may;
    const auto links = m_inside->vault.links();
    if (!links)
        return fail(links.error());
    const auto link = std::ranges::find_if(*links, [&](const vault::Link& each) { return each.course == course && !each.ended; });
    if (link == links->end())
        return fail(Reason::notFound, "phone: the course has none");
    if (const Done may = m_inside->needsStep(); !may)
        return may;
    const Done done = m_inside->vault.together([&]() -> Done {
        for (const vault::Link& each : *links)
            if (each.peerSigning == link->peerSigning && !each.ended)
                if (const Done ended = m_inside->vault.endLink(each.mailbox); !ended)
                    return ended;
        return m_inside->endAtHub(envelope::deviceIdOf(link->peerSigning), true, m_inside->clock.now());
    });
    return done ? m_inside->stepTaken(records::Step::phoneEnded, envelope::deviceIdOf(link->peerSigning), course) : done;
}

}  // namespace ebbline::desk
