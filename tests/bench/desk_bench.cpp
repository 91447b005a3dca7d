// What the desk costs with many courses: `desk_bench [COURSES]`, 10,000 by default. Prints figures, judges
// nothing. Invented courses of the past, all over, and nine that run. The vault's own stretching of the
// passphrase is set low: it is a cost that is chosen. Times are those of the processor.
#include "core/crypto/crypto.h"
#include "core/desk/invented_past.h"
#include "core/desk/practice.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <ctime>
#include <sys/wait.h>
#include <unistd.h>

using namespace ebbline;

namespace {

constexpr crypto::StretchCost low{1, 8 * 1024};
const bytes::View passphrase = bytes::viewOf("waterline at low tide");

/// Of this process: what others do on the machine is not counted, and neither is waiting for the disk.
struct Cpu {
    static double now()
    {
        timespec time{};
        clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &time);
        return 1e3 * static_cast<double>(time.tv_sec) + 1e-6 * static_cast<double>(time.tv_nsec);
    }
};

double residentMegabytes()
{
    std::ifstream statm("/proc/self/statm");
    long whole = 0;
    long resident = 0;
    statm >> whole >> resident;
    return static_cast<double>(resident) * static_cast<double>(sysconf(_SC_PAGESIZE)) / 1e6;
}

void print(const char* what, double value, const char* unit, const char* wanted)
{
    std::printf("%-62s %10.1f %-3s  wanted %s\n", what, value, unit, wanted);
    std::fflush(stdout);
}

std::vector<records::Body> entriesFor(const desk::Desk& desk, const aftercare::Zone& zone, int count)
{
    std::vector<records::Body> bodies;
    const auto ids = desk.courseIds();
    const clock::Moment now = desk.now();
    for (int i = 0; i < count; ++i) {
        recovery::Entry entry;
        entry.id = recovery::EntryId{crypto::randomArray<16>()};
        entry.course = ids[static_cast<std::size_t>(i * 37) % ids.size()];
        entry.at = entry.recordedAt = zone.moment(now.at - std::chrono::minutes(i % 600));
        for (const auto symptom : recovery::allSymptoms)
            for (const auto side : recovery::bothSides)
                entry.scores.insert_or_assign({symptom, side}, *recovery::Score::of(i % 5));
        bodies.push_back(records::EntryRecorded{entry});
    }
    return bodies;
}

}  // namespace

int main(int argc, char* argv[])
{
    const int courses = argc > 1 ? std::atoi(argv[1]) : 10'000;
    const auto zone = aftercare::Zone::find("Europe/Berlin");
    if (courses < 1 || !zone || !crypto::initialise())
        return 2;
    const auto name = std::filesystem::temp_directory_path() / ("desk-bench-" + std::to_string(getpid()));
    std::filesystem::create_directories(name);
    const std::filesystem::path folder = name / "vault";
    const clock::SystemClock clock;
    // In a process of its own, so that what is resident at the end is what an opened desk takes.
    if (const pid_t filling = fork(); filling == 0) {
        auto desk = desk::Desk::create(folder, passphrase, low, clock, *zone);
        if (!desk)
            _exit(2);
        desk->setPerson("Ilan Osei");
        const double begin = Cpu::now();
        const Done past = desk::addInventedPast(*desk, *zone, {.courses = courses, .now = desk->now(), .acts = false});
        const Done today = past ? desk::addInventedToday(*desk, *zone, desk->now()) : past;
        if (!today) {
            std::printf("cannot be filled: %s\n", today.error().detail.c_str());
            std::fflush(stdout);
            _exit(1);
        }
        std::printf("%d courses, %zu operations, written in %.1f s of processor time\n", courses, desk->vault().state().operations, (Cpu::now() - begin) / 1000);
        std::fflush(stdout);
        _exit(0);
    } else if (int status = 0; filling < 0 || waitpid(filling, &status, 0) != filling || status != 0) {
        return 1;
    }
    double begin = Cpu::now();
    auto desk = desk::Desk::unlock(folder, passphrase, clock, *zone);
    if (!desk)
        return 1;
    const double unlocking = (Cpu::now() - begin);
    print("unlock: read, verify and fold the journal", unlocking, "ms", "");
    begin = Cpu::now();
    const auto queue = desk->queue();
    const double first = (Cpu::now() - begin);
    print("the queue from the open vault", first, "ms", "");
    print("unlock to a usable queue", unlocking + first, "ms", "300");
    print("resident with the queue", residentMegabytes(), "MB", "250");
    std::printf("rows in the queue: %zu\n", queue.size());
    begin = Cpu::now();
    const auto again = desk->queue();
    print("the queue again: what an act costs the interface", (Cpu::now() - begin), "ms", "16");

    desk->setPerson("Ilan Osei");
    const auto ids = desk->courseIds();
    double slowest = 0;
    for (std::size_t i = 0; i < 50; ++i) {
        begin = Cpu::now();
        const auto& id = ids[i * ids.size() / 50];
        const auto view = desk->course(id);
        std::size_t points = view ? view->findings.size() : 0;
        for (const auto symptom : recovery::allSymptoms)
            for (const auto side : recovery::bothSides)
                points += desk->curve(id, {symptom, side}).points.size();
        slowest = points > 0 ? std::max(slowest, (Cpu::now() - begin)) : slowest;
    }
    print("a course with all its curves, slowest of 50", slowest, "ms", "50");

    begin = Cpu::now();
    const auto past = desk->pastCourses();
    const double reading = (Cpu::now() - begin);
    print("reading the courses for the practice page (in slices of 6 ms)", reading, "ms", "");
    begin = Cpu::now();
    auto figures = desk::practiceFigures(past);
    const double working = (Cpu::now() - begin);
    print("working its figures out (beside the interface)", working, "ms", "");
    print("practice figures, first", reading + working, "ms", "500");
    begin = Cpu::now();
    learning::watchOdds(figures.watch, figures.design);
    print("odds of the watch, shown when they come", (Cpu::now() - begin), "ms", "");
    begin = Cpu::now();
    std::size_t alerts = 0;
    for (const auto& id : ids)
        if (const auto tally = desk->tally(id))
            alerts += tally->alerts.size();
    print("tallies of alerts and adherence, once a course (in slices)", (Cpu::now() - begin), "ms", "");
    begin = Cpu::now();
    for (const auto& id : ids)
        alerts += desk->tallyStamp(id)->spoken > 0 ? 0 : 1;
    print("asking every course whether its tally still holds", (Cpu::now() - begin), "ms", "50");
    std::printf("alerts: %zu\n", alerts);

    const auto bodies = entriesFor(*desk, *zone, 1000);
    begin = Cpu::now();
    const auto appended = desk->vault().append(bodies, desk->now());
    print("1,000 entries into the vault, one transaction", (Cpu::now() - begin), "ms", "500");
    begin = Cpu::now();
    const auto after = desk->queue();
    print("the queue after them", (Cpu::now() - begin), "ms", "16");
    std::printf("rows in the queue: %zu (%zu before)\n", after.size(), again.size());
    print("resident with the practice figures and a copy of all their courses", residentMegabytes(), "MB", "250");
    std::error_code ignored;
    std::filesystem::remove_all(name, ignored);
    return appended ? 0 : 1;
}
