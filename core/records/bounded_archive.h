#pragma once
/// \file
/// The pair of cereal archives that Ebbline uses; inside of core/records only.
///
/// Little-endian, fixed width. Reading never trusts a length: a size is refused if it claims more
/// elements than there are bytes left, so no input makes it allocate more than a small multiple of
/// its own length. cereal's own portable archive believes such a claim and allocates gigabytes.

#include "core/bytes/bytes.h"
#include "core/records/known_bands.h"

#include <cereal/cereal.hpp>
#include <cereal/types/array.hpp>
#include <cereal/types/optional.hpp>
#include <cereal/types/string.hpp>
#include <cereal/types/vector.hpp>

#include <bit>
#include <cstring>

namespace ebbline::records {

static_assert(std::endian::native == std::endian::little, "the archives copy numbers as they lie in memory");

class OutputBytes : public cereal::OutputArchive<OutputBytes, cereal::AllowEmptyClassElision> {
public:
    explicit OutputBytes(bytes::Bytes& out) : cereal::OutputArchive<OutputBytes, cereal::AllowEmptyClassElision>(this), m_out(out) {}

    void write(const void* data, std::size_t size)
    {
        const auto* begin = static_cast<const std::uint8_t*>(data);
        m_out.insert(m_out.end(), begin, begin + size);
    }

private:
    bytes::Bytes& m_out;
};

class BoundedInput : public cereal::InputArchive<BoundedInput, cereal::AllowEmptyClassElision> {
public:
    explicit BoundedInput(bytes::View in) : cereal::InputArchive<BoundedInput, cereal::AllowEmptyClassElision>(this), m_rest(in) {}

    void read(void* data, std::size_t size)
    {
        if (size > m_rest.size())
            throw cereal::Exception("cut short");
        if (size > 0)
            std::memcpy(data, m_rest.data(), size);
        m_rest = m_rest.subspan(size);
    }

    std::size_t left() const { return m_rest.size(); }

    /// Form of a protocol or a treatment within these bytes; known from the version in front of them.
    std::uint16_t bodyForm = 1;
    /// Bands that need not be made again; may be null.
    KnownBands* knownBands = nullptr;

private:
    bytes::View m_rest;
};

template <typename T>
    requires std::is_arithmetic_v<T>
void CEREAL_SAVE_FUNCTION_NAME(OutputBytes& archive, const T& value)
{
    archive.write(&value, sizeof value);
}

template <typename T>
    requires std::is_arithmetic_v<T>
void CEREAL_LOAD_FUNCTION_NAME(BoundedInput& archive, T& value)
{
    if constexpr (std::is_same_v<T, bool>) {
        std::uint8_t byte = 0;
        archive.read(&byte, 1);
        if (byte > 1)
            throw cereal::Exception("neither true nor false");
        value = byte == 1;
    } else {
        archive.read(&value, sizeof value);
    }
}

template <typename Archive, typename T>
    requires(std::is_same_v<Archive, OutputBytes> || std::is_same_v<Archive, BoundedInput>)
void CEREAL_SERIALIZE_FUNCTION_NAME(Archive& archive, cereal::NameValuePair<T>& pair)
{
    archive(pair.value);
}

template <typename T>
void CEREAL_SAVE_FUNCTION_NAME(OutputBytes& archive, const cereal::SizeTag<T>& tag)
{
    archive(static_cast<std::uint32_t>(tag.size));
}

template <typename T>
void CEREAL_LOAD_FUNCTION_NAME(BoundedInput& archive, cereal::SizeTag<T>& tag)
{
    std::uint32_t size = 0;
    archive(size);
    if (size > archive.left())
        throw cereal::Exception("a length claims more than there is");
    tag.size = size;
}

template <typename T>
void CEREAL_SAVE_FUNCTION_NAME(OutputBytes& archive, const cereal::BinaryData<T>& data)
{
    archive.write(data.data, static_cast<std::size_t>(data.size));
}

template <typename T>
void CEREAL_LOAD_FUNCTION_NAME(BoundedInput& archive, cereal::BinaryData<T>& data)
{
    archive.read(data.data, static_cast<std::size_t>(data.size));
}

}  // namespace ebbline::records

CEREAL_SETUP_ARCHIVE_TRAITS(ebbline::records::BoundedInput, ebbline::records::OutputBytes)
