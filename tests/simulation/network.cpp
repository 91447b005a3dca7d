#include "tests/simulation/network.h"

namespace ebbline::simulation {

namespace {

constexpr std::chrono::seconds patience{30};

std::string shortHash(bytes::View body)
{
    return body.empty() ? "-" : bytes::toHex(crypto::hash128(body)).substr(0, 12);
}

}  // namespace

std::chrono::milliseconds Line::delay()
{
    if (m_network.chance(m_network.m_weather.slow)) {
        ++m_network.m_counters.slow;
        return std::chrono::seconds(1 + m_network.m_random() % 3600);
    }
    return std::chrono::milliseconds(5 + m_network.m_random() % 400);
}

void Line::send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer)
{
    const std::uint64_t number = ++m_next;
    m_waiting.emplace(number, std::move(answer));
    ++m_network.m_counters.requests;
    m_network.m_trace.line(m_network.m_timeline.now(), m_device + " asks " + request.method + " " + request.path + " "
                                                          + shortHash(request.body));
    m_network.m_timeline.in(patience, [this, number] {
        if (m_waiting.contains(number))
            this->answer(number, fail(Reason::unreachable, "no answer"));
    });
    if (m_cut) {
        ++m_network.m_counters.cutOff;
        return;
    }
    if (m_network.chance(m_network.m_weather.lost)) {
        ++m_network.m_counters.lost;
        return;
    }
    m_network.m_timeline.in(delay(), [this, number, request] { arrive(number, request); });
    if (m_network.chance(m_network.m_weather.repeated)) {
        ++m_network.m_counters.repeated;
        m_network.m_timeline.in(delay(), [this, number, request] { arrive(number, request); });
    }
}

void Line::arrive(std::uint64_t number, const mailbox::Request& request)
{
    ++m_network.m_counters.handled;
    const mailbox::Response response = m_network.m_hub(request, m_device);
    m_network.m_trace.line(m_network.m_timeline.now(), "hub answers " + m_device + " " + request.method + " "
                                                          + std::to_string(response.status) + " "
                                                          + shortHash(response.body));
    if (m_network.chance(m_network.m_weather.answerLost)) {
        ++m_network.m_counters.answersLost;
        return;
    }
    m_network.m_timeline.in(delay(), [this, number, response] { answer(number, response); });
}

void Line::answer(std::uint64_t number, Result<mailbox::Response> response)
{
    const auto found = m_waiting.find(number);
    if (found == m_waiting.end()) {
        ++m_network.m_counters.late;
        return;
    }
    const auto take = std::move(found->second);
    m_waiting.erase(found);
    m_run([&] { take(std::move(response)); });
}

}  // namespace ebbline::simulation
