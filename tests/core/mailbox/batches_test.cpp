// Calls that come at the same time are done together, each exactly once.

#include "core/mailbox/batches.h"

#include <catch2/catch_test_macros.hpp>

#include <atomic>
#include <stdexcept>
#include <thread>

using namespace ebbline::mailbox;

namespace {

struct Job {
    int value = 0;
    int done = 0;
};

}  // namespace

TEST_CASE("every job is done once, in its caller's absence or presence", "[mailbox]")
{
    Batches<Job> batches(8);
    std::atomic<int> sum = 0, works = 0, wrong = 0;
    std::atomic<std::size_t> largest = 0, inside = 0;
    std::vector<std::thread> threads;
    for (int i = 0; i < 12; ++i)
        threads.emplace_back([&, i] {
            for (int j = 0; j < 200; ++j) {
                Job job{i * 1000 + j};
                batches.run(job, [&](const std::vector<Job*>& jobs) {
                    wrong += inside++ != 0;
                    ++works;
                    largest = std::max(largest.load(), jobs.size());
                    // As if the disk were slow: company gathers meanwhile.
                    std::this_thread::sleep_for(std::chrono::microseconds(200));
                    for (Job* each : jobs) {
                        ++each->done;
                        sum += each->value;
                    }
                    --inside;
                });
                wrong += job.done != 1;
            }
        });
    for (std::thread& thread : threads)
        thread.join();

    CHECK(wrong == 0);
    CHECK(sum == 12 * 200 * 199 / 2 + 200 * 1000 * (11 * 12 / 2));
    // They did share, and no batch was larger than allowed.
    CHECK(works < 12 * 200 / 2);
    CHECK(largest > 1);
    CHECK(largest <= 8);
}

TEST_CASE("one caller alone waits for nobody", "[mailbox]")
{
    Batches<Job> batches;
    Job job;
    batches.run(job, [](const std::vector<Job*>& jobs) { jobs.front()->done = static_cast<int>(jobs.size()); });
    CHECK(job.done == 1);
}

TEST_CASE("work that throws throws to all whom it was for, and the next callers are served", "[mailbox]")
{
    Batches<Job> batches;
    std::atomic<int> thrown = 0, served = 0;
    std::atomic<bool> broken = true;
    const auto work = [&](const std::vector<Job*>& jobs) {
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
        if (broken)
            throw std::runtime_error("no memory");
        for (Job* each : jobs)
            ++each->done;
    };
    const auto callers = [&] {
        std::vector<std::thread> threads;
        for (int i = 0; i < 6; ++i)
            threads.emplace_back([&] {
                Job job;
                try {
                    batches.run(job, work);
                    served += job.done;
                } catch (const std::runtime_error&) {
                    ++thrown;
                }
            });
        for (std::thread& thread : threads)
            thread.join();
    };
    callers();
    CHECK(thrown == 6);
    CHECK(served == 0);
    broken = false;
    callers();
    CHECK(thrown == 6);
    CHECK(served == 6);
}
