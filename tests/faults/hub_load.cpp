#include "tests/faults/hub_load.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "tests/platform/server/raw_client.h"

#include <stdexcept>

namespace ebbline::faults {

namespace {

using namespace std::chrono_literals;

std::int64_t steadyNow()
{
    return std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

void raise(std::atomic<std::int64_t>& highest, std::int64_t value)
{
    std::int64_t known = highest;
    while (known < value && !highest.compare_exchange_weak(known, value))
        ;
}

void must(bool fact, const char* what)
{
    if (!fact)
        throw std::runtime_error(what);
}

}  // namespace

std::string Member::http(std::string method, std::string path, std::string query, const bytes::Bytes& body, clock::Instant now) const
{
    mailbox::Request request{std::move(method), std::move(path), std::move(query), body, {}};
    mailbox::signRequest(request, key, now);
    std::string text = request.method + " " + request.path + (request.query.empty() ? "" : "?" + request.query)
                       + " HTTP/1.1\r\nHost: hub\r\nEB-Auth: " + request.authorisation
                       + "\r\nContent-Length: " + std::to_string(request.body.size()) + "\r\n\r\n";
    text.append(request.body.begin(), request.body.end());
    return text;
}

int statusOf(const std::string& response)
{
    return response.size() > 12 && response.starts_with("HTTP/1.1 ") ? std::atoi(response.c_str() + 9) : 0;
}

HubLoad::HubLoad(mailbox::MailStore& store, std::size_t phones, std::uint64_t seed) : m_seed(seed)
{
    const auto clinic = store.addClinic({crypto::randomArray<32>()}, "");
    must(clinic.has_value(), "the clinic is not admitted");
    const crypto::SigningPublicKey deskKey{crypto::randomArray<32>()};
    m_desk = {envelope::deviceIdOf(deskKey), deskKey, mailbox::Role::desk, *clinic, false};
    must(store.putDevice(m_desk).has_value(), "the desk is not admitted");
    for (std::size_t i = 0; i < phones; ++i) {
        Phone phone;
        mailbox::StoredOffer offer;
        offer.id = crypto::randomArray<8>();
        offer.clinic = *clinic;
        const mailbox::Device device{phone.member.id, phone.member.key.publicKey(), mailbox::Role::phone, *clinic, false};
        must(store.putOffer(offer) && store.linkOffer(offer.id, bytes::viewOf("x"), phone.mailbox, device), "a phone is not admitted");
        m_phones.push_back(std::move(phone));
    }
}

void HubLoad::start(const std::vector<std::uint16_t>& ports, std::size_t threads)
{
    m_ports = ports;
    m_stopping = false;
    m_lastServed = steadyNow();
    for (std::size_t i = 0; i < threads; ++i)
        m_threads.emplace_back([this, i, threads] { live(i, threads, m_seed + i); });
}

void HubLoad::stop()
{
    m_stopping = true;
    for (std::thread& thread : m_threads)
        thread.join();
    m_threads.clear();
}

void HubLoad::noteServed()
{
    const std::int64_t now = steadyNow();
    raise(m_longestSilence, now - m_lastServed.exchange(now));
}

void HubLoad::live(std::size_t first, std::size_t step, std::uint64_t seed)
{
    std::mt19937_64 random(seed);
    const clock::SystemClock clock;
    for (std::size_t place = first; !m_stopping; place = place + step < m_phones.size() ? place + step : first) {
        Phone& phone = m_phones[place];
        const std::uint64_t sequence = phone.offered.size() + 1;
        const bytes::Bytes text(1 + random() % 1000, static_cast<std::uint8_t>(random()));
        const auto sealed = envelope::seal({envelope::Kind::operations, phone.mailbox, phone.member.id, sequence, {}, 1},
                                           phone.member.key, {m_clinicBox.publicKey()}, text);
        must(sealed.has_value(), "an envelope cannot be sealed");
        phone.offered.push_back(envelope::hashOf(*sealed));
        const std::string path = "/v1/m/" + bytes::toHex(phone.mailbox.view()) + "/" + bytes::toHex(phone.member.id.view()) + "/"
                                 + std::to_string(sequence);
        // Offered again, the same bytes, until a hub says that it has them; as a phone does.
        while (!m_stopping) {
            const std::int64_t begun = steadyNow();
            test::RawClient client(m_ports[random() % m_ports.size()], 1, 20s);
            const int status = client.connected() ? statusOf(client.ask(phone.member.http("PUT", path, {}, *sealed, clock.now()))) : 0;
            if (status == 200) {
                phone.acknowledged = sequence;
                ++m_acknowledged;
                noteServed();
                raise(m_latestBegun, begun);
                break;
            }
            ++(status == 0 ? m_unanswered : m_refused);
            std::this_thread::sleep_for(std::chrono::milliseconds(random() % 20));
        }
    }
}

HubLoad::Counts HubLoad::counts() const
{
    return {m_acknowledged, m_unanswered, m_refused, std::chrono::milliseconds(m_longestSilence)};
}

std::chrono::milliseconds HubLoad::untilServed() const
{
    const std::int64_t from = steadyNow();
    while (m_latestBegun <= from)
        std::this_thread::sleep_for(1ms);
    return std::chrono::milliseconds(steadyNow() - from);
}

HubLoad::Verdict HubLoad::check(mailbox::MailStore& store) const
{
    Verdict verdict;
    for (const Phone& phone : m_phones) {
        std::vector<int> seen(phone.offered.size() + 1, 0);
        for (std::uint64_t position = 0;;) {
            const auto page = store.envelopesAfter(m_desk, phone.mailbox, {{phone.member.id, position}}, 512 * 1024);
            must(page.has_value(), "a mailbox cannot be read");
            if (page->empty())
                break;
            for (const mailbox::StoredEnvelope& envelope : *page) {
                position = envelope.sequence;
                if (envelope.device != phone.member.id || position == 0 || position > phone.offered.size() || seen[position]++ > 0)
                    ++verdict.unknown;
                else if (envelope::hashOf(envelope.body) != phone.offered[position - 1])
                    ++verdict.altered;
                else
                    ++verdict.found;
            }
        }
        for (std::size_t sequence = 1; sequence <= phone.acknowledged; ++sequence)
            verdict.lost += seen[sequence] == 0;
    }
    return verdict;
}

}  // namespace ebbline::faults
