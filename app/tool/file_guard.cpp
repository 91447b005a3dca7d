#include "app/tool/file_guard.h"

#include <algorithm>
#include <filesystem>

namespace ebbline::tool {

namespace {

namespace fs = std::filesystem;

/// Where a name leads in the end, as far as it exists.
fs::path placeOf(const std::string& file)
{
    std::error_code problem;
    const fs::path place = fs::weakly_canonical(fs::absolute(file, problem), problem);
    return problem ? fs::path(file) : place;
}

bool same(const std::string& a, const std::string& b)
{
    std::error_code problem;
    if (fs::equivalent(a, b, problem) && !problem)
        return fs::is_regular_file(a, problem) || fs::is_directory(a, problem);
    return !fs::exists(a, problem) && placeOf(a) == placeOf(b);
}

bool liesIn(const std::string& file, const std::string& folder)
{
    std::error_code problem;
    if (!fs::is_directory(folder, problem))
        return false;
    const fs::path inside = placeOf(file), outside = placeOf(folder);
    return std::mismatch(outside.begin(), outside.end(), inside.begin(), inside.end()).first == outside.end();
}

/// An output takes its own name and, while it is written, the one beside it.
bool takes(const std::string& output, const std::string& other)
{
    return same(output, other) || same(output + ".part", other) || liesIn(output, other);
}

}  // namespace

Done keepsInputs(const std::vector<NamedFile>& inputs, const std::vector<NamedFile>& outputs)
{
    std::error_code unknown;
    for (const NamedFile& input : inputs)
        if (!input.isFolder && fs::is_directory(input.file, unknown))
            return fail(Reason::malformed, input.option + ": want a file, and this is a folder: " + input.file);
    for (const NamedFile& output : outputs)
        if (output.file.empty())
            return fail(Reason::malformed, output.option + ": want the name of a file");
    for (auto output = outputs.begin(); output != outputs.end(); ++output) {
        for (const NamedFile& input : inputs)
            if (!input.file.empty() && takes(output->file, input.file))
                return fail(Reason::refused, output->option + " would replace what " + input.option + " names: " + output->file
                                                 + ". Name another file; nothing was written.");
        for (auto other = outputs.begin(); other != outputs.end(); ++other)
            if (other != output && takes(output->file, other->file))
                return fail(Reason::refused, output->option + " and " + other->option + " would take the same file: " + output->file
                                                 + ". Name two; nothing was written.");
    }
    return {};
}

}  // namespace ebbline::tool
