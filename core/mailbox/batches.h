#pragma once
/// \file
/// Group commit: calls of several threads that come at the same time share one transaction, and
/// so one wait for the disk. Nobody waits for company: whoever comes first works at once, and who
/// comes meanwhile is in the next batch.

#include <algorithm>
#include <condition_variable>
#include <deque>
#include <mutex>
#include <vector>

namespace ebbline::mailbox {

template <typename Job>
class Batches {
public:
    explicit Batches(std::size_t atMost = 256) : m_atMost(atMost) {}

    /// Has `work` do `job`, possibly with jobs of other threads and on another thread. `work` takes a
    /// std::vector<Job*> and must not throw. Returns when the job is done.
    template <typename Work>
    void run(Job& job, const Work& work)
    {
        Place place{&job, {}, State::waits};
        std::unique_lock lock(m_mutex);
        m_waiting.push_back(&place);
        if (m_busy)
            place.called.wait(lock, [&] { return place.state != State::waits; });
        if (place.state == State::done)
            return;
        m_busy = true;
        std::vector<Place*> taken(m_waiting.begin(),
                                  m_waiting.begin() + static_cast<std::ptrdiff_t>(std::min(m_atMost, m_waiting.size())));
        m_waiting.erase(m_waiting.begin(), m_waiting.begin() + static_cast<std::ptrdiff_t>(taken.size()));
        std::vector<Job*> jobs;
        for (const Place* each : taken)
            jobs.push_back(each->job);
        lock.unlock();
        work(jobs);
        lock.lock();
        for (Place* each : taken) {
            each->state = State::done;
            // Under the lock: a place is gone as soon as its thread runs on.
            if (each != &place)
                each->called.notify_one();
        }
        m_busy = !m_waiting.empty();
        if (m_busy) {
            m_waiting.front()->state = State::leads;
            m_waiting.front()->called.notify_one();
        }
    }

private:
    enum class State { waits, leads, done };
    struct Place {
        Job* job;
        std::condition_variable called;
        State state;
    };
    std::size_t m_atMost;
    std::mutex m_mutex;
    std::deque<Place*> m_waiting;
    bool m_busy = false;
};

}  // namespace ebbline::mailbox
