#include "core/pairing/hub_address.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace ebbline::pairing {

namespace {

bool isDigits(std::string_view text)
{
    return !text.empty() && std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

bool startsWith(std::string_view text, std::string_view head)
{
    return text.size() >= head.size()
           && std::ranges::equal(text.substr(0, head.size()), head, [](char a, char b) { return lower(a) == lower(b); });
}

/// Four decimal numbers up to 255, the first of them 127.
bool isLoopback4(std::string_view host)
{
    std::array<int, 4> parts{};
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const std::size_t end = i + 1 == parts.size() ? host.size() : host.find('.');
        if (end == std::string_view::npos || end > 3 || !isDigits(host.substr(0, end)))
            return false;
        std::from_chars(host.data(), host.data() + end, parts[i]);
        if (parts[i] > 255)
            return false;
        host.remove_prefix(std::min(host.size(), end + 1));
    }
    return parts[0] == 127;
}

}  // namespace

HubAddress hubAddressFromText(std::string_view text)
{
    constexpr std::string_view blank = " \t\r\n", plainWay = "http://", sealedWay = "https://";
    text.remove_prefix(std::min(text.size(), text.find_first_not_of(blank)));
    text = text.substr(0, text.find_last_not_of(blank) + 1);
    const bool plain = startsWith(text, plainWay);
    if (plain)
        text.remove_prefix(plainWay.size());
    else if (startsWith(text, sealedWay))
        text.remove_prefix(sealedWay.size());
    if (text.ends_with('/'))
        text.remove_suffix(1);
    return {std::string(text), !plain};
}

bool isThisMachine(std::string_view hostAndPort)
{
    const std::size_t end = hostAndPort.starts_with('[') ? hostAndPort.find(']') + 1 : std::min(hostAndPort.size(), hostAndPort.find(':'));
    const std::string_view host = hostAndPort.substr(0, end), port = hostAndPort.substr(end);
    if (!port.empty() && (port.front() != ':' || !isDigits(port.substr(1))))
        return false;
    return host == "[::1]" || (host.size() == 9 && startsWith(host, "localhost")) || isLoopback4(host);
}

Done checkWay(const HubAddress& address)
{
    return address.tls || isThisMachine(address.host) ? Done{} : fail(Reason::unprotected, "hub: plain HTTP is for one machine only");
}

}  // namespace ebbline::pairing
