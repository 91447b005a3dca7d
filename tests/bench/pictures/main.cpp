// The pictures of docs/statistics, each drawn from what the methods themselves return.
//
//   statistics_pictures FOLDER           draws them anew
//   statistics_pictures FOLDER --check   exits with 1 if one is missing, is not drawn here, or shows
//                                        something else than the methods return now

#include "tests/bench/pictures/picture.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

using namespace ebbline::bench;

namespace {

constexpr double aHair = 0.25;  // of a pixel: other compilers round the last digit otherwise

std::vector<Named> allPictures()
{
    std::vector<Named> all;
    for (auto* const group : {proportionPictures, poolingPictures, survivalPictures, chartPictures, smoothingPictures,
                              agreementPictures, regressionPictures, recoveryPictures, triggerPictures, learningPictures,
                              practicePictures})
        for (Named& picture : group())
            all.push_back(std::move(picture));
    return all;
}

std::string contentOf(const std::filesystem::path& file)
{
    std::ifstream in(file, std::ios::binary);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

bool beginsNumber(const char* text)
{
    return std::isdigit(static_cast<unsigned char>(*text)) || (*text == '-' && std::isdigit(static_cast<unsigned char>(text[1])));
}

/// The same words, and numbers that lie within a hair of each other.
bool looksLike(const std::string& drawn, const std::string& stored)
{
    const char* a = drawn.c_str();
    const char* b = stored.c_str();
    while (*a != '\0' || *b != '\0') {
        if (beginsNumber(a) && beginsNumber(b)) {
            char* endA = nullptr;
            char* endB = nullptr;
            if (std::abs(std::strtod(a, &endA) - std::strtod(b, &endB)) > aHair)
                return false;
            a = endA;
            b = endB;
        } else if (*a++ != *b++) {
            return false;
        }
    }
    return true;
}

int check(const std::filesystem::path& folder, const std::vector<Named>& pictures)
{
    int faults = 0;
    std::set<std::string> drawn;
    for (const auto& [name, picture] : pictures) {
        drawn.insert(name + ".svg");
        const std::string stored = contentOf(folder / (name + ".svg"));
        if (stored.empty() || !looksLike(picture.svg(), stored)) {
            std::printf("%s.svg %s\n", name.c_str(), stored.empty() ? "is missing" : "is not what the methods return now");
            ++faults;
        }
    }
    std::error_code error;
    for (const auto& entry : std::filesystem::directory_iterator(folder, error))
        if (!drawn.contains(entry.path().filename().string())) {
            std::printf("%s is drawn by nobody\n", entry.path().filename().c_str());
            ++faults;
        }
    std::printf("%zu pictures, %d faults\n", pictures.size(), faults);
    return faults == 0 && !pictures.empty() ? 0 : 1;
}

}  // namespace

int main(int count, char** arguments)
{
    const bool checks = count == 3 && std::strcmp(arguments[2], "--check") == 0;
    if (count != 2 && !checks) {
        std::printf("want: statistics_pictures FOLDER [--check]\n");
        return 2;
    }
    const std::filesystem::path folder = arguments[1];
    const std::vector<Named> pictures = allPictures();
    if (checks)
        return check(folder, pictures);
    std::filesystem::create_directories(folder);
    for (const auto& [name, picture] : pictures) {
        std::ofstream out(folder / (name + ".svg"), std::ios::binary);
        out << picture.svg();
        if (!out.flush()) {
            std::printf("%s.svg could not be written\n", name.c_str());
            return 1;
        }
    }
    std::printf("%zu pictures\n", pictures.size());
    return 0;
}
