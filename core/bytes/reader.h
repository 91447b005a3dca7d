#pragma once
/// \file
/// Bounded reading and writing of binary formats; all integers big-endian and unsigned.
///
/// Every byte that comes from outside is read through Reader: it never allocates by a length
/// it has not checked, never reads past the end, and after the first fault stays failed, so a
/// caller may read a whole header and ask once.

#include "core/bytes/bytes.h"
#include "core/result/result.h"

#include <concepts>

namespace ebbline::bytes {

class Reader {
public:
    explicit Reader(View input) : m_rest(input) {}

    std::uint8_t u8() { return static_cast<std::uint8_t>(number(1)); }
    std::uint16_t u16() { return static_cast<std::uint16_t>(number(2)); }
    std::uint32_t u32() { return static_cast<std::uint32_t>(number(4)); }
    std::uint64_t u64() { return number(8); }

    /// The next `count` bytes, a view into the input; empty and failed if there are fewer.
    View take(std::size_t count)
    {
        if (!m_ok || count > m_rest.size()) {
            m_ok = false;
            return {};
        }
        const View taken = m_rest.first(count);
        m_rest = m_rest.subspan(count);
        return taken;
    }

    template <std::size_t N>
    Array<N> array()
    {
        Array<N> out{};
        const View taken = take(N);
        std::copy(taken.begin(), taken.end(), out.begin());
        return out;
    }

    template <typename Tag>
    Id<Tag> id()
    {
        return Id<Tag>{array<16>()};
    }

    /// A byte string with a 32-bit length in front, refused above `limit` before anything is read.
    View block(std::size_t limit)
    {
        const std::size_t length = u32();
        if (length > limit)
            m_ok = false;
        return take(length);
    }

    bool ok() const { return m_ok; }
    bool atEnd() const { return m_ok && m_rest.empty(); }
    std::size_t left() const { return m_rest.size(); }
    void invalidate() { m_ok = false; }

private:
    std::uint64_t number(std::size_t width)
    {
        std::uint64_t value = 0;
        for (const std::uint8_t byte : take(width))
            value = (value << 8) | byte;
        return value;
    }

    View m_rest;
    bool m_ok = true;
};

class Writer {
public:
    Writer& u8(std::uint8_t value) { return number(value, 1); }
    Writer& u16(std::uint16_t value) { return number(value, 2); }
    Writer& u32(std::uint32_t value) { return number(value, 4); }
    Writer& u64(std::uint64_t value) { return number(value, 8); }

    Writer& raw(View view)
    {
        m_out.insert(m_out.end(), view.begin(), view.end());
        return *this;
    }

    /// A 32-bit length, then the bytes.
    Writer& block(View view) { return u32(static_cast<std::uint32_t>(view.size())).raw(view); }

    const Bytes& bytes() const& { return m_out; }
    Bytes bytes() && { return std::move(m_out); }
    std::size_t size() const { return m_out.size(); }

private:
    Writer& number(std::uint64_t value, std::size_t width)
    {
        for (std::size_t i = width; i-- > 0;)
            m_out.push_back(static_cast<std::uint8_t>(value >> (8 * i)));
        return *this;
    }

    Bytes m_out;
};

}  // namespace ebbline::bytes
