// Writes calendars as the diary exports them, and beside each what a reader must find in it: for readers that are none of ours.
//
// usage: write_calendars FOLDER
#include "core/clock/iso8601.h"
#include "core/exchange/calendar.h"

#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <iostream>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

struct Sample {
    const char* name;
    const char* zone;
    const char* first;  ///< of its events
    int events;
    std::chrono::minutes apart;
    exchange::CalendarWords words;
};

const Sample samples[] = {
    {"spring", "Europe/Berlin", "2027-03-27T23:00:00Z", 9, 30min, {"Reminder from your diary", "en"}},
    // The clock shows an hour twice.
    {"autumn", "Europe/Berlin", "2027-10-30T22:30:00Z", 9, 30min, {"Erinnerung aus deinem Tagebuch", "de"}},
    // Half an hour, in April, the other way.
    {"half-hour", "Australia/Lord_Howe", "2027-04-03T13:30:00Z", 13, 15min, {"Reminder, \\ from; your diary", "en"}},
    {"summer-alone", "America/St_Johns", "2027-07-01T23:30:00Z", 21, 1440min, {"Reminder from your diary", "en"}},
    {"no-change", "Asia/Kathmandu", "2027-03-01T14:15:00Z", 21, 1440min, {"Reminder from your diary", "en"}},
    {"utc", "Etc/UTC", "2027-03-01T20:00:00Z", 3, 1440min, {"Reminder from your diary", "en"}},
    // Folded, and never inside a character.
    {"folded", "Asia/Shanghai", "2027-03-01T12:00:00Z", 3, 1440min,
     {"\u6765\u81EA\u60A8\u65E5\u8BB0\u7684\u63D0\u9192\uFF0C\u8BF7\u6253\u5F00\u65E5\u8BB0\u67E5\u770B\u4ECA\u5929\u8981\u505A\u7684\u4E8B\u60C5\uFF0C\u7136\u540E\u56DE\u7B54", "zh-CN"}},
};

}  // namespace

int main(int argc, char* argv[])
{
    if (argc != 2) {
        std::cerr << "usage: write_calendars FOLDER\n";
        return 2;
    }
    const std::filesystem::path folder = argv[1];
    std::filesystem::create_directories(folder);
    for (const Sample& sample : samples) {
        const auto first = clock::parseIso8601(sample.first);
        const auto zone = aftercare::Zone::find(sample.zone);
        if (!first || !zone) {
            std::cerr << sample.name << ": no such moment or zone\n";
            return 1;
        }
        std::vector<exchange::CalendarEvent> events;
        nlohmann::json expected{{"summary", sample.words.summary}, {"events", nlohmann::json::array()}};
        for (int i = 0; i < sample.events; ++i) {
            events.push_back({std::string(sample.name) + "-" + std::to_string(1000 + i), first->at + i * sample.apart});
            expected["events"].push_back({{"uid", events.back().uid}, {"at", clock::toIso8601(events.back().at)}});
        }
        const auto calendar = exchange::writeCalendar(events, *zone, sample.words, first->at - 1h);
        if (!calendar) {
            std::cerr << sample.name << ": " << calendar.error().detail << '\n';
            return 1;
        }
        std::ofstream(folder / (std::string(sample.name) + ".ics"), std::ios::binary) << *calendar;
        std::ofstream wanted(folder / (std::string(sample.name) + ".json"), std::ios::binary);
        wanted << expected.dump(1) << '\n';
        if (!wanted.flush()) {
            std::cerr << sample.name << ": cannot be written\n";
            return 1;
        }
    }
    return 0;
}
