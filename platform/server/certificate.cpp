#include "platform/server/certificate.h"

#include <openssl/evp.h>
#include <openssl/pem.h>
#include <openssl/x509.h>

#include <cstdio>
#include <memory>

namespace ebbline::server {

Result<bytes::Array<32>> keyHashOf(const std::filesystem::path& certificate)
{
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(std::fopen(certificate.c_str(), "rb"), &std::fclose);
    if (!file)
        return fail(Reason::notFound, "certificate: " + certificate.string() + " cannot be opened");
    const std::unique_ptr<X509, decltype(&X509_free)> read(PEM_read_X509(file.get(), nullptr, nullptr, nullptr), &X509_free);
    if (!read)
        return fail(Reason::malformed, "certificate: " + certificate.string() + " holds no PEM certificate");
    unsigned char* encoded = nullptr;
    const int length = i2d_X509_PUBKEY(X509_get_X509_PUBKEY(read.get()), &encoded);
    bytes::Array<32> hash{};
    const bool hashed = length > 0
                        && EVP_Digest(encoded, static_cast<std::size_t>(length), hash.data(), nullptr, EVP_sha256(), nullptr) == 1;
    OPENSSL_free(encoded);
    if (!hashed)
        return fail(Reason::malformed, "certificate: its key cannot be read");
    return hash;
}

}  // namespace ebbline::server
