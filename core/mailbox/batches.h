#pragma once
/// \file
/// Group commit: calls of several threads that come at the same time share one transaction, and
/// so one wait for the disk. Nobody waits for company: whoever comes first works at once, and who
/// comes meanwhile is in the next batch.

#include <algorithm>
#include <condition_variable>
#include <deque>
#include <exception>
#include <mutex>
#include <vector>

namespace ebbline::mailbox {

template <typename Job>
class Batches {
public:
    explicit Batches(std::size_t atMost = 256) : m_atMost(atMost) {}

    /// Has `work` do `job`, possibly with jobs of other threads and on another thread. `work` takes a
    /// std::vector<Job*>; what it throws is thrown to everybody whose job was among them. Returns when the job is done.
    template <typename Work>
    void run(Job& job, const Work& work)
    {
        Place place{&job, {}, State::waits, {}};
        std::unique_lock lock(m_mutex);
        m_waiting.push_back(&place);
        if (m_busy)
            place.called.wait(lock, [&] { return place.state != State::waits; });
        if (place.state != State::done)
            lead(lock, work);
        if (place.problem)
            std::rethrow_exception(place.problem);
    }

private:
    enum class State { waits, leads, done };
    struct Place {
        Job* job;
        std::condition_variable called;
        State state;
        std::exception_ptr problem;
    };

    /// Does the jobs that wait, then hands over to whoever came meanwhile, whatever became of the work.
    template <typename Work>
    void lead(std::unique_lock<std::mutex>& lock, const Work& work)
    {
        m_busy = true;
        const std::size_t count = std::min(m_atMost, m_waiting.size());
        std::exception_ptr problem;
        try {
            std::vector<Job*> jobs;
            jobs.reserve(count);
            for (std::size_t i = 0; i < count; ++i)
                jobs.push_back(m_waiting[i]->job);
            lock.unlock();
            work(jobs);
        } catch (...) {
            problem = std::current_exception();
        }
        if (!lock.owns_lock())
            lock.lock();
        // Others only added at the end meanwhile.
        for (std::size_t i = 0; i < count; ++i) {
            Place* each = m_waiting.front();
            m_waiting.pop_front();
            each->state = State::done;
            each->problem = problem;
            // Under the lock: a place is gone as soon as its thread runs on. The leader's own waits for nobody.
            each->called.notify_one();
        }
        m_busy = !m_waiting.empty();
        if (m_busy) {
            m_waiting.front()->state = State::leads;
            m_waiting.front()->called.notify_one();
        }
    }

    std::size_t m_atMost;
    std::mutex m_mutex;
    std::deque<Place*> m_waiting;
    bool m_busy = false;
};

}  // namespace ebbline::mailbox
