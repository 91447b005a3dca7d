#include "platform/server/counted_address.h"

#include <boost/asio/ip/address.hpp>

#include <algorithm>

namespace ebbline::server {

std::string countedAs(const std::string& address)
{
    namespace ip = boost::asio::ip;
    boost::system::error_code problem;
    const ip::address parsed = ip::make_address(address, problem);
    if (problem || parsed.is_v4())
        return address;
    const ip::address_v6 six = parsed.to_v6();
    if (six.is_v4_mapped())
        return ip::make_address_v4(ip::v4_mapped, six).to_string();
    ip::address_v6::bytes_type network = six.to_bytes();
    std::fill(network.begin() + 8, network.end(), ip::address_v6::bytes_type::value_type{0});
    return ip::address_v6(network).to_string() + "/64";
}

}  // namespace ebbline::server
