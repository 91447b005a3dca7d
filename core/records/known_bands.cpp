#include "core/records/known_bands.h"

#include <algorithm>
#include <cstring>
#include <type_traits>

namespace ebbline::records {

namespace {

template <typename Numbers>
bool sameBits(const Numbers& a, const Numbers& b)
{
    static_assert(std::is_trivially_copyable_v<Numbers> && sizeof(Numbers) % sizeof(double) == 0);
    return std::memcmp(&a, &b, sizeof(Numbers)) == 0;
}

}  // namespace

bool isSameToTheBit(const bands::Band& band, const bands::Provenance& provenance, const bands::Band::Table& table,
                    const bands::Movements& movements)
{
    return provenance == band.provenance() && sameBits(movements, band.movements()) && sameBits(table, band.table());
}

const bands::Band* KnownBands::find(const bands::Provenance& provenance, const bands::Band::Table& table,
                                    const bands::Movements& movements) const
{
    const auto found = std::ranges::find_if(
        m_bands, [&](const bands::Band& band) { return isSameToTheBit(band, provenance, table, movements); });
    return found == m_bands.end() ? nullptr : &*found;
}

void KnownBands::add(const bands::Band& band)
{
    if (m_bands.size() == most)
        m_bands.erase(m_bands.begin());
    m_bands.push_back(band);
}

}  // namespace ebbline::records
