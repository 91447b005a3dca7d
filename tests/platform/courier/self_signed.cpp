#include "tests/platform/courier/self_signed.h"

#include <openssl/evp.h>
#include <openssl/pem.h>
#include <openssl/x509v3.h>

#include <cstdio>
#include <memory>
#include <stdexcept>

namespace ebbline::test {

namespace {

void must(bool worked)
{
    if (!worked)
        throw std::runtime_error("OpenSSL could not make a certificate");
}

void addExtension(X509* certificate, int id, const char* value)
{
    X509V3_CTX context;
    X509V3_set_ctx_nodb(&context);
    X509V3_set_ctx(&context, certificate, certificate, nullptr, nullptr, 0);
    const std::unique_ptr<X509_EXTENSION, decltype(&X509_EXTENSION_free)> extension(
        X509V3_EXT_conf_nid(nullptr, &context, id, value), &X509_EXTENSION_free);
    must(extension && X509_add_ext(certificate, extension.get(), -1) == 1);
}

template <typename Write>
void writeFile(const std::filesystem::path& path, Write write)
{
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(std::fopen(path.c_str(), "wb"), &std::fclose);
    must(file && write(file.get()) == 1);
}

}  // namespace

SelfSigned SelfSigned::in(const std::filesystem::path& folder)
{
    const std::unique_ptr<EVP_PKEY, decltype(&EVP_PKEY_free)> key(EVP_EC_gen("P-256"), &EVP_PKEY_free);
    const std::unique_ptr<X509, decltype(&X509_free)> certificate(X509_new(), &X509_free);
    must(key && certificate);
    X509_set_version(certificate.get(), 2);
    ASN1_INTEGER_set(X509_get_serialNumber(certificate.get()), 1);
    X509_gmtime_adj(X509_getm_notBefore(certificate.get()), -60);
    X509_gmtime_adj(X509_getm_notAfter(certificate.get()), 24 * 60 * 60);
    must(X509_set_pubkey(certificate.get(), key.get()) == 1);
    X509_NAME* name = X509_get_subject_name(certificate.get());
    must(X509_NAME_add_entry_by_txt(name, "CN", MBSTRING_ASC, reinterpret_cast<const unsigned char*>("test hub"), -1, -1, 0) == 1);
    must(X509_set_issuer_name(certificate.get(), name) == 1);
    addExtension(certificate.get(), NID_basic_constraints, "critical,CA:TRUE");
    addExtension(certificate.get(), NID_subject_alt_name, "IP:127.0.0.1");
    must(X509_sign(certificate.get(), key.get(), EVP_sha256()) != 0);

    SelfSigned made;
    made.certificate = folder / "certificate.pem";
    made.key = folder / "key.pem";
    writeFile(made.certificate, [&](std::FILE* file) { return PEM_write_X509(file, certificate.get()); });
    writeFile(made.key, [&](std::FILE* file) {
        return PEM_write_PrivateKey(file, key.get(), nullptr, nullptr, 0, nullptr, nullptr);
    });

    unsigned char* encoded = nullptr;
    const int length = i2d_PUBKEY(key.get(), &encoded);
    must(length > 0);
    unsigned size = 0;
    must(EVP_Digest(encoded, static_cast<std::size_t>(length), made.keyHash.data(), &size, EVP_sha256(), nullptr) == 1 && size == 32);
    OPENSSL_free(encoded);
    return made;
}

}  // namespace ebbline::test
