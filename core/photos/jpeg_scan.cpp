#include "core/photos/jpeg_scan.h"

#include "core/bytes/reader.h"

#include <optional>

namespace ebbline::photos {

namespace {

// Markers of ITU-T T.81, table B.1.
constexpr std::uint8_t startOfImage = 0xd8;
constexpr std::uint8_t endOfImage = 0xd9;
constexpr std::uint8_t startOfScan = 0xda;
constexpr std::uint8_t quantisation = 0xdb;
constexpr std::uint8_t huffman = 0xc4;
constexpr std::uint8_t restartInterval = 0xdd;
constexpr std::uint8_t baseline = 0xc0;
constexpr std::uint8_t firstApplication = 0xe0;
constexpr std::uint8_t lastApplication = 0xef;
constexpr std::uint8_t comment = 0xfe;

bool isFrame(std::uint8_t marker)
{
    return marker >= 0xc0 && marker <= 0xcf && marker != huffman && marker != 0xc8 && marker != 0xcc;
}

/// Reads one file from front to back; every segment is met once, in the order of the file.
class Scan {
public:
    explicit Scan(bytes::View input) : m_reader(input) {}

    Result<JpegFacts> run()
    {
        if (m_reader.u8() != 0xff || m_reader.u8() != startOfImage)
            return fail(Reason::malformed, "jpeg: it does not begin as one");
        for (;;) {
            if (m_reader.u8() != 0xff || !m_reader.ok())
                return fail(Reason::malformed, "jpeg: a marker is missing");
            const std::uint8_t marker = m_reader.u8();
            const std::size_t length = m_reader.u16();
            if (!m_reader.ok() || length < 2)
                return fail(Reason::malformed, "jpeg: cut off");
            const bytes::View segment = m_reader.take(length - 2);
            if (!m_reader.ok())
                return fail(Reason::malformed, "jpeg: a segment is cut off");
            if (const Done taken = take(marker, segment); !taken)
                return fail(taken.error());
            if (marker == startOfScan)
                return finish();
        }
    }

private:
    Done take(std::uint8_t marker, bytes::View segment)
    {
        if (marker == firstApplication)
            return takeJfif(segment);
        if ((marker > firstApplication && marker <= lastApplication) || marker == comment)
            return fail(Reason::refused, "jpeg: it carries more than the picture");
        if (marker == baseline)
            return takeFrame(segment);
        if (isFrame(marker))
            return fail(Reason::unsupported, "jpeg: of a form that we never write");
        if (marker == quantisation)
            return takeQuantisation(segment);
        if (marker == huffman)
            return takeHuffman(segment);
        if (marker == restartInterval)
            return segment.size() == 2 ? Done{} : Done(fail(Reason::malformed, "jpeg: restart interval"));
        if (marker == startOfScan)
            return takeScan(segment);
        return fail(Reason::unsupported, "jpeg: a segment that we never write");
    }

    /// The one application segment that a plain picture has: "JFIF", 16 bytes, without a thumbnail (JFIF 1.02).
    Done takeJfif(bytes::View segment)
    {
        bytes::Reader reader(segment);
        const bool named = std::ranges::equal(reader.take(5), bytes::viewOf(std::string_view("JFIF\0", 5)));
        reader.take(7);  // version, unit, density
        const bool bare = reader.u8() == 0 && reader.u8() == 0;
        if (m_jfif || m_frame || !named || !bare || !reader.atEnd())
            return fail(Reason::refused, "jpeg: it carries more than the picture");
        m_jfif = true;
        return {};
    }

    Done takeFrame(bytes::View segment)
    {
        bytes::Reader reader(segment);
        const std::uint8_t bits = reader.u8();
        JpegFacts facts;
        facts.height = reader.u16();
        facts.width = reader.u16();
        m_components = reader.u8();
        if (m_frame || !reader.ok() || reader.left() != m_components * std::size_t{3})
            return fail(Reason::malformed, "jpeg: the frame");
        if (bits != 8 || (m_components != 1 && m_components != 3))
            return fail(Reason::unsupported, "jpeg: of a form that we never write");
        if (std::min(facts.width, facts.height) < shortestSide || std::max(facts.width, facts.height) > longestSide)
            return fail(Reason::outOfRange, "jpeg: its sides are out of bounds");
        for (std::size_t i = 0; i < m_components; ++i) {
            reader.u8();  // the component's name
            const std::uint8_t sampling = reader.u8();
            const int across = sampling >> 4, down = sampling & 15;
            if (across < 1 || across > 2 || down < 1 || down > 2 || reader.u8() > 3)
                return fail(Reason::unsupported, "jpeg: its sampling");
        }
        m_frame = facts;
        return {};
    }

    static Done takeQuantisation(bytes::View segment)
    {
        bytes::Reader reader(segment);
        while (reader.ok() && reader.left() > 0) {
            if (reader.u8() > 3)  // 8-bit tables 0..3
                return fail(Reason::malformed, "jpeg: a quantisation table");
            reader.take(64);
        }
        return reader.atEnd() ? Done{} : Done(fail(Reason::malformed, "jpeg: a quantisation table"));
    }

    static Done takeHuffman(bytes::View segment)
    {
        bytes::Reader reader(segment);
        while (reader.ok() && reader.left() > 0) {
            const std::uint8_t name = reader.u8();
            std::size_t codes = 0;
            for (const std::uint8_t ofLength : reader.take(16))
                codes += ofLength;
            reader.take(codes);
            // Class 0 or 1; baseline has two tables of each.
            if ((name >> 4) > 1 || (name & 15) > 1 || codes > 256)
                return fail(Reason::malformed, "jpeg: a table of codes");
        }
        return reader.atEnd() ? Done{} : Done(fail(Reason::malformed, "jpeg: a table of codes"));
    }

    /// All components in one scan, from the first to the last coefficient.
    Done takeScan(bytes::View segment)
    {
        bytes::Reader reader(segment);
        const std::size_t components = reader.u8();
        if (!m_frame || components != m_components || reader.left() != components * 2 + 3)
            return fail(Reason::malformed, "jpeg: the scan");
        reader.take(components * 2);
        if (reader.u8() != 0 || reader.u8() != 63 || reader.u8() != 0)
            return fail(Reason::malformed, "jpeg: the scan");
        return {};
    }

    /// Coded data: after 0xff only a stuffed zero, a restart, or the end of the picture, which is the end of all.
    Result<JpegFacts> finish()
    {
        bool any = false;
        while (m_reader.left() > 0) {
            if (m_reader.u8() != 0xff) {
                any = true;
                continue;
            }
            const std::uint8_t next = m_reader.u8();
            if (!m_reader.ok())
                break;
            if (next == endOfImage) {
                if (!m_reader.atEnd())
                    return fail(Reason::refused, "jpeg: bytes behind the picture");
                if (!any)
                    return fail(Reason::malformed, "jpeg: without a picture");
                return *m_frame;
            }
            if (next != 0 && (next < 0xd0 || next > 0xd7))
                return fail(Reason::unsupported, "jpeg: more than one scan");
        }
        return fail(Reason::malformed, "jpeg: cut off");
    }

    bytes::Reader m_reader;
    bool m_jfif = false;
    std::size_t m_components = 0;
    std::optional<JpegFacts> m_frame;
};

}  // namespace

Result<JpegFacts> scanJpeg(bytes::View input)
{
    if (input.size() > maximumJpeg)
        return fail(Reason::tooLarge, "jpeg: more bytes than a photograph may have");
    return Scan(input).run();
}

}  // namespace ebbline::photos
