// hub_orders [--stride n] [--from n] [--minutes n] [--show n]
//
// A small model with its hub, whole: a phone writes an entry and syncs, a desk writes a message and syncs, and the phone's
// patient writes another entry at any moment of it. Every order in which the requests of both runs and that entry can take
// place is gone through, over the programs' own core and the hub's own store. (What a device does alone, between two of its own
// requests, is the same before and after what the other one does meanwhile, and is tried at one of those places.)
// Then each of those orders again, with one fault at one request: every kind at every request.
// After each, the network heals, and both must show the same bytes, nothing acknowledged missing, and nothing claimed
// that is not so. `--stride n` takes every n-th run alone; the first is `--from`.

#include "tests/faults/workload.h"
#include "tests/simulation/seeded_randomness.h"
#include "tests/simulation/world.h"

#include <algorithm>
#include <cstdio>

using namespace ebbline;
using namespace ebbline::simulation;

namespace {

enum class Kind : std::uint8_t {
    none,
    requestLost,    ///< it never arrives
    answerLost,     ///< it was done, nobody hears of it
    repeated,       ///< it arrives twice
    bodyChanged,    ///< a bit of the answer is another one
    storeAway,      ///< 503, and nothing was done
    hubKilled,      ///< it was done, and the hub starts again before it could say so
    hubForgot,      ///< it was done and answered, and the hub is put back to what it was before
    deviceStopped,  ///< it was done, and who asked starts again without having heard
    count,
};
constexpr std::size_t kinds = static_cast<std::size_t>(Kind::count);

constexpr const char* nameOf(Kind kind)
{
    constexpr const char* names[kinds] = {"no fault",        "requests lost",         "answers lost",
                                          "requests repeated", "answers with a changed bit", "stores that were away",
                                          "hubs killed after the deed", "hubs that forgot the deed", "devices stopped before the answer"};
    return names[static_cast<std::size_t>(kind)];
}

struct Fault {
    Kind kind = Kind::none;
    std::size_t request = 0;  ///< which one of the run, from 0, of both devices together
};

/// Holds one request until it is told to go.
class Gate final : public sync::Courier {
public:
    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override
    {
        m_held = {request, std::move(answer)};
    }
    bool isHolding() const { return m_held.has_value(); }
    std::pair<mailbox::Request, std::function<void(Result<mailbox::Response>)>> take() { return *std::exchange(m_held, {}); }
    void forget() { m_held.reset(); }

private:
    std::optional<std::pair<mailbox::Request, std::function<void(Result<mailbox::Response>)>>> m_held;
};

/// One device's run, a request at a time.
struct Part {
    World::Device* device = nullptr;
    bool over = false;
    Gate gate;
};

/// What happens next.
enum class Step : std::uint8_t { phoneRequest, deskRequest, phoneWrites };

/// One place in an order where there was a choice.
struct Choice {
    std::size_t taken = 0, among = 1;
};
using Order = std::vector<Choice>;

struct Totals {
    std::uint64_t runs = 0, orders = 0, requests = 0, problems = 0, gaps = 0;
    std::array<std::uint64_t, kinds> faults{};
    std::size_t longest = 0;  ///< requests of one run
};

class Play {
public:
    Play(World& world, const Order& order, Fault fault, Totals& totals) : m_world(world), m_order(order), m_fault(fault), m_totals(totals)
    {
        m_phone.device = &world.phone(0);
        m_desk.device = &world.desk();
    }

    void run()
    {
        m_world.writeEntry(*m_phone.device);
        m_world.writeMessage(*m_desk.device);
        begin(m_phone);
        begin(m_desk);
        while (!m_phone.over || !m_desk.over || !m_wrote)
            step(choose());
    }

    const Order& taken() const { return m_taken; }
    std::size_t requests() const { return m_requests; }
    bool struck() const { return m_struck; }
    std::vector<std::string> wrong;

private:
    Step choose()
    {
        std::vector<Step> possible;
        if (!m_phone.over)
            possible.push_back(Step::phoneRequest);
        if (!m_desk.over)
            possible.push_back(Step::deskRequest);
        if (!m_wrote && (m_last != Step::deskRequest || possible.empty()))
            possible.push_back(Step::phoneWrites);
        // After a fault there may be less to choose from than there was.
        const std::size_t wanted = m_taken.size() < m_order.size() ? m_order[m_taken.size()].taken : 0;
        const std::size_t taken = std::min(wanted, possible.size() - 1);
        m_taken.push_back({taken, possible.size()});
        return m_last = possible[taken];
    }

    void step(Step what)
    {
        if (what == Step::phoneWrites) {
            m_wrote = true;
            return m_world.writeEntry(*m_phone.device);
        }
        serve(what == Step::phoneRequest ? m_phone : m_desk);
        m_world.checkClaims(wrong);
    }

    void begin(Part& part)
    {
        const std::uint64_t life = part.device->life;
        const auto done = [this, &part, life](const sync::Report& report) {
            if (life != part.device->life)
                return;
            part.over = true;
            m_totals.problems += report.problem ? 1 : 0;
            m_totals.gaps += report.gapSeen ? 1 : 0;
            if (report.forkSeen || report.rolledBack)
                wrong.push_back("an honest hub was accused");
        };
        if (part.device->diary)
            part.device->diary->syncNow(part.gate, done);
        else
            part.device->desk->syncNow(part.gate, done);
    }

    void serve(Part& part)
    {
        must(part.gate.isHolding(), "a run that is not over asks for something");
        const auto [request, answer] = part.gate.take();
        const bool here = m_fault.kind != Kind::none && m_requests == m_fault.request;
        ++m_requests;
        if (!here)
            return answer(m_world.honest(request));
        m_struck = true;
        ++m_totals.faults[static_cast<std::size_t>(m_fault.kind)];
        strike(part, request, answer);
    }

    void strike(Part& part, const mailbox::Request& request, const std::function<void(Result<mailbox::Response>)>& answer)
    {
        const auto nobody = [&] { answer(fail(Reason::unreachable, "no answer")); };
        switch (m_fault.kind) {
        case Kind::requestLost: return nobody();
        case Kind::answerLost: (void)m_world.honest(request); return nobody();
        case Kind::repeated: (void)m_world.honest(request); return answer(asRepeated(request));
        case Kind::bodyChanged: {
            mailbox::Response response = m_world.honest(request);
            // What has no body is changed by having one.
            if (response.body.empty())
                response.body.push_back(1);
            else
                response.body[response.body.size() / 2] ^= 0x10;
            return answer(std::move(response));
        }
        case Kind::storeAway: return answer(mailbox::Response{503, {}, 2, {}});
        case Kind::hubKilled:
            (void)m_world.honest(request);
            m_world.restartHub();
            return nobody();
        case Kind::hubForgot: {
            m_world.copyHubAside();
            const mailbox::Response response = m_world.honest(request);
            m_world.rollHubBack();
            return answer(response);
        }
        case Kind::deviceStopped:
            (void)m_world.honest(request);
            part.gate.forget();
            m_world.restart(*part.device);
            part.over = true;
            return;
        default: must(false, "a kind of fault that is none");
        }
    }

    /// The network repeats the same bytes: the hub knows the nonce, so what the device hears is the answer to the first.
    mailbox::Response asRepeated(const mailbox::Request& request)
    {
        mailbox::Response again = m_world.honest(request);
        if (again.status != 401)
            wrong.push_back("a request that was repeated to the byte was taken a second time");
        return again;
    }

    World& m_world;
    const Order& m_order;
    Fault m_fault;
    Totals& m_totals;
    Part m_phone, m_desk;
    bool m_wrote = false;
    Step m_last = Step::phoneRequest;
    Order m_taken;
    std::size_t m_requests = 0;
    bool m_struck = false;
};

class Explorer {
public:
    Explorer(const ClinicTemplate& from, std::filesystem::path folder, std::uint64_t seed, std::uint64_t show)
        : m_from(from), m_folder(std::move(folder)), m_seed(seed), m_show(show)
    {
    }

    struct Outcome {
        Order taken;
        std::size_t requests = 0;
        bool good = true, struck = false;
    };

    Outcome play(const Order& order, Fault fault, std::uint64_t number)
    {
        Trace trace(number == m_show ? [](const std::string& line) { std::fputs(line.c_str(), stdout); }
                                     : std::function<void(const std::string&)>());
        World world(m_from, m_folder, m_seed, trace, false);
        Play play(world, order, fault, totals);
        play.run();
        constexpr int rounds = 12;
        (void)world.heal(rounds);
        world.checkConvergence(play.wrong);
        if (world.counters.forks + world.counters.rolledBack > 0)
            play.wrong.push_back("an honest hub was accused");
        // A hub that forgot the first of two shows the second before it: kept aside until the first is there again.
        if (fault.kind != Kind::bodyChanged && fault.kind != Kind::hubForgot && world.counters.quarantined > 0)
            play.wrong.push_back("something honest was set apart");
        if (fault.kind == Kind::hubForgot && staysApart(world))
            play.wrong.push_back("something is still set apart, though the first came again");
        ++totals.runs;
        totals.requests += play.requests();
        totals.longest = std::max(totals.longest, play.requests());
        for (const std::string& text : play.wrong)
            std::printf("FAILED in run %llu (%s at request %zu): %s\n", static_cast<unsigned long long>(number), nameOf(fault.kind),
                        fault.request, text.c_str());
        return {play.taken(), play.requests(), play.wrong.empty(), play.struck()};
    }

    Totals totals;

private:
    static bool staysApart(World& world)
    {
        const envelope::MailboxId& mailbox = world.phone(0).mailbox;
        return std::ranges::any_of(world.devices, [&](const auto& device) { return device->vault().quarantined(mailbox) > 0; });
    }

    const ClinicTemplate& m_from;
    std::filesystem::path m_folder;
    std::uint64_t m_seed;
    std::uint64_t m_show;
};

/// The order after this one, deepest choice first; empty after the last.
std::optional<Order> following(Order order)
{
    while (!order.empty() && order.back().taken + 1 == order.back().among)
        order.pop_back();
    if (order.empty())
        return std::nullopt;
    ++order.back().taken;
    return order;
}

}  // namespace

int main(int argc, char** argv)
{
    const std::uint64_t stride = std::max<std::uint64_t>(1, faults::option(argc, argv, "--stride", 211));
    const std::uint64_t from = faults::option(argc, argv, "--from", 0);
    const std::uint64_t show = faults::option(argc, argv, "--show", ~std::uint64_t{0});
    const double until = faults::secondsNow() + 60.0 * static_cast<double>(faults::option(argc, argv, "--minutes", 100'000));
    constexpr std::uint64_t seed = 20270301;
    must(crypto::initialise().has_value(), "the cryptographic library starts");
    const SeededRandomness randomness(seed);
    const faults::Scratch scratch("hub-orders");
    const ClinicTemplate clinic = ClinicTemplate::make(scratch.path() / "clinic", 1);
    Explorer explorer(clinic, scratch.path() / "run", seed, show);

    std::uint64_t number = 0, orders = 0, missed = 0;
    bool good = true, whole = true;
    for (std::optional<Order> next = Order{}; next && good;) {
        // The order itself is played whatever the stride: it says where the next one begins, and how many requests it has.
        const auto order = explorer.play(*next, {}, number);
        ++orders;
        good = order.good;
        for (std::size_t request = 0; request < order.requests && good; ++request)
            for (std::size_t kind = 1; kind < kinds && good; ++kind) {
                ++number;
                if (number < from || (number - from) % stride != 0)
                    continue;
                if (faults::secondsNow() > until) {
                    whole = false;
                    continue;
                }
                const auto faulty = explorer.play(order.taken, {static_cast<Kind>(kind), request}, number);
                good = faulty.good;
                missed += faulty.struck ? 0 : 1;
            }
        ++number;
        next = whole ? following(order.taken) : std::nullopt;
    }

    const Totals& t = explorer.totals;
    std::printf("every order of a small model with its hub, one fault each; every %llu-th\n", static_cast<unsigned long long>(stride));
    const auto row = [](const char* name, std::uint64_t value) { std::printf("  %-46s %llu\n", name, static_cast<unsigned long long>(value)); };
    row("orders without a fault", orders);
    row("runs in the whole model", number);
    row("runs played", t.runs);
    row("requests of the longest", t.longest);
    row("requests before healing", t.requests);
    row("syncs that ended with a problem", t.problems);
    row("syncs that saw a gap", t.gaps);
    bool everything = missed == 0 && orders > 1 && t.problems > 0;
    for (std::size_t kind = 1; kind < kinds; ++kind) {
        row(nameOf(static_cast<Kind>(kind)), t.faults[kind]);
        everything = everything && t.faults[kind] > 0;
    }
    if (!whole)
        std::printf("  ended by the clock\n");
    if (!everything)
        std::printf("FAILED: something that the model is about never happened\n");
    return good && everything ? 0 : 1;
}
