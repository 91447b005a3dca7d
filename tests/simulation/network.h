#pragma once
/// \file
/// The way between devices and the hub: loses, repeats, delays, reorders and cuts off, by a seed.

#include "core/mailbox/service.h"
#include "core/sync/courier.h"
#include "tests/simulation/timeline.h"

#include <random>

namespace ebbline::simulation {

/// Each in thousandths of the requests.
struct Weather {
    unsigned lost = 0;          ///< the request never arrives
    unsigned answerLost = 0;    ///< it was done, nobody hears of it
    unsigned repeated = 0;      ///< it arrives twice
    unsigned slow = 0;          ///< it or its answer takes up to an hour
};

struct NetworkCounters {
    std::uint64_t requests = 0, handled = 0, lost = 0, answersLost = 0, repeated = 0, slow = 0, cutOff = 0, late = 0;
};

class Network {
public:
    /// How a hub answers: the real one, or one that lies.
    using Hub = std::function<mailbox::Response(const mailbox::Request&, const std::string& device)>;

    Network(Timeline& timeline, Hub hub, std::mt19937_64& random, Trace& trace)
        : m_timeline(timeline), m_hub(std::move(hub)), m_random(random), m_trace(trace)
    {
    }
    void set(const Weather& weather) { m_weather = weather; }
    const NetworkCounters& counters() const { return m_counters; }

private:
    friend class Line;
    bool chance(unsigned thousandths) { return m_random() % 1000 < thousandths; }

    Timeline& m_timeline;
    Hub m_hub;
    std::mt19937_64& m_random;
    Trace& m_trace;
    Weather m_weather;
    NetworkCounters m_counters;
};

/// One device's connection. A request without an answer ends as unreachable after half a minute.
class Line final : public sync::Courier {
public:
    /// `run` wraps whatever the device does with an answer.
    Line(Network& network, std::string device, std::function<void(const std::function<void()>&)> run)
        : m_network(network), m_device(std::move(device)), m_run(std::move(run))
    {
    }
    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override;

    /// While it is cut off, nothing gets through.
    void cut(bool off) { m_cut = off; }
    /// The device stopped: nobody waits for these answers any more.
    void forget() { m_waiting.clear(); }

private:
    void arrive(std::uint64_t number, const mailbox::Request& request);
    void answer(std::uint64_t number, Result<mailbox::Response> response);
    std::chrono::milliseconds delay();

    Network& m_network;
    std::string m_device;
    std::function<void(const std::function<void()>&)> m_run;
    bool m_cut = false;
    std::uint64_t m_next = 0;
    std::map<std::uint64_t, std::function<void(Result<mailbox::Response>)>> m_waiting;
};

}  // namespace ebbline::simulation
