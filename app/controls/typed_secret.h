#pragma once
/// \file
/// What a person typed as a passphrase or a code, as UTF-8 bytes that are wiped when it goes. The
/// text of the field itself is Qt's and is not wiped: keep this for the shortest time.

#include "core/bytes/bytes.h"
#include "core/crypto/crypto.h"

#include <QByteArray>
#include <QString>

#include <span>

namespace ebbline {

class TypedSecret {
public:
    explicit TypedSecret(const QString& text) : m_bytes(text.toUtf8()) {}
    ~TypedSecret() { crypto::wipe({reinterpret_cast<std::uint8_t*>(m_bytes.data()), static_cast<std::size_t>(m_bytes.size())}); }
    TypedSecret(const TypedSecret&) = delete;
    TypedSecret& operator=(const TypedSecret&) = delete;

    bytes::View view() const
    {
        return {reinterpret_cast<const std::uint8_t*>(m_bytes.constData()), static_cast<std::size_t>(m_bytes.size())};
    }

private:
    QByteArray m_bytes;
};

}  // namespace ebbline
