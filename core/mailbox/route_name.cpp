#include "core/mailbox/route_name.h"

#include <algorithm>
#include <array>

namespace ebbline::mailbox {

namespace {

/// Parts of a path after /v1/; a star stands for an identifier.
struct Known {
    std::string_view method, path, name;
};

constexpr std::array<Known, 19> routes{{
    {"GET", "health", "health.get"},
    {"POST", "desks", "desk.register"},
    {"POST", "offers", "offer.make"},
    {"GET", "bundles/*", "bundle.get"},
    {"POST", "offers/*/enrol", "offer.enrol"},
    {"GET", "offers/*", "offer.get"},
    {"PUT", "offers/*/nonce", "offer.nonce"},
    {"PUT", "offers/*/link", "offer.link"},
    {"POST", "offers/*/answer", "offer.answer"},
    {"GET", "news", "news.get"},
    {"POST", "ended", "ended.tell"},
    {"PUT", "m/*/*/*", "envelope.put"},
    {"GET", "m/*", "envelopes.get"},
    {"POST", "m/*/ack", "envelope.ack"},
    {"GET", "m/*/blobs", "blobs.get"},
    {"PUT", "m/*/blobs/*", "blob.announce"},
    {"PUT", "m/*/blobs/*/*", "blob.put"},
    {"GET", "m/*/blobs/*/*", "blob.get"},
    {"POST", "m/*/blobs/*/*", "blob.end"},
}};

bool fits(std::string_view path, std::string_view form)
{
    for (;;) {
        const auto here = path.find('/'), there = form.find('/');
        if (form.substr(0, there) != "*" && form.substr(0, there) != path.substr(0, here))
            return false;
        if (here == std::string_view::npos || there == std::string_view::npos)
            return here == there;
        path.remove_prefix(here + 1);
        form.remove_prefix(there + 1);
    }
}

}  // namespace

std::string_view routeName(const Request& request)
{
    constexpr std::string_view front = "/v1/";
    if (!request.path.starts_with(front))
        return "unknown";
    const std::string_view path = std::string_view(request.path).substr(front.size());
    // What names its parts comes before what leaves them open.
    const auto known = std::ranges::max_element(routes, {}, [&](const Known& each) {
        if (each.method != request.method || !fits(path, each.path))
            return std::ptrdiff_t{-1};
        return 100 - std::ranges::count(each.path, '*');
    });
    return known->method == request.method && fits(path, known->path) ? known->name : "unknown";
}

}  // namespace ebbline::mailbox
