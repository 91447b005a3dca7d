#pragma once
/// \file
/// Bands that were read lately. Thousands of courses carry the same few, and to make one costs more time and room
/// than all else of a course: whoever reads many courses keeps them.

#include "core/bands/band.h"

#include <vector>

namespace ebbline::records {

class KnownBands {
public:
    static constexpr std::size_t most = 8;  ///< those that were made last

    /// The one that says exactly this, to the bit: somebody signed its bytes. Null if none does.
    const bands::Band* find(const bands::Provenance& provenance, const bands::Band::Table& table,
                            const bands::Movements& movements) const;
    void add(const bands::Band& band);

private:
    std::vector<bands::Band> m_bands;  ///< the newest last
};

/// Two zeros of different sign are equal numbers, but not the same bytes.
bool isSameToTheBit(const bands::Band& band, const bands::Provenance& provenance, const bands::Band::Table& table,
                    const bands::Movements& movements);

}  // namespace ebbline::records
