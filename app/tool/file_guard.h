#pragma once
/// \file
/// What a subcommand writes must not be what it reads: writing replaces the file.

#include "core/result/result.h"

#include <string>
#include <vector>

namespace ebbline::tool {

/// A file or folder by the option that names it, e.g. {"--scores", "scores.csv"}.
struct NamedFile {
    std::string option;
    std::string file;
    bool isFolder = false;  ///< an input that is meant to be a folder
};

/// Looks before anything is read or written. An input without a name was not given and counts for nothing. The same
/// file is the same by any name: relative, through a symbolic link, or as a second link to it. The file that is
/// written beside an output first (`.part`) counts as the output, and what lies in a folder that is read counts as
/// the folder. Devices and pipes may be named twice.
/// \returns Reason::refused naming both options, or Reason::malformed for an output without a name and for an input that is a
/// folder where a file is wanted.
Done keepsInputs(const std::vector<NamedFile>& inputs, const std::vector<NamedFile>& outputs);

}  // namespace ebbline::tool
