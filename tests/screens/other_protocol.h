#pragma once
/// \file
/// A protocol as a colleague's clinic might hand it over: other thresholds, another guard, another day of the follow-up and a
/// usual range of its own, from invented courses of nobody.

#include "core/clock/iso8601.h"
#include "core/exchange/protocol_file.h"

#include <QFile>
#include <QString>

#include <filesystem>

namespace ebbline::screens {

inline exchange::ProtocolFile otherProtocol()
{
    auto protocol = triggers::defaultProtocol();
    protocol.name = "Face, as the colleagues do it";
    protocol.version = 7;
    protocol.thresholds.level = 4.9;
    protocol.thresholds.levelGuard = 4;
    protocol.thresholds.worseningGuard = 5;
    protocol.thresholds.calibratedOn = "320 uncomplicated courses";
    protocol.carePlan.followUpDay = 24;
    auto movements = bands::seedBand().movements();
    movements.sides.noise *= 1.1;
    protocol.band = *bands::Band::create({"calibrated-2027-02-01-aaaaaaaa", 320, false, "2027-02-01", std::string(64, 'a')},
                                         bands::seedBand().table(), movements);
    return {std::move(protocol), "ebbline 0.1.0", *clock::parseIso8601("2027-02-14T11:20:00+01:00")};
}

/// \returns where it lies.
inline QString protocolFileOf(const std::filesystem::path& folder, const std::string& text)
{
    const QString path = QString::fromStdString((folder / "other-protocol.json").string());
    QFile file(path);
    const bool whole = file.open(QIODevice::WriteOnly) && file.write(text.data(), static_cast<qint64>(text.size())) == static_cast<qint64>(text.size());
    return whole ? path : QString();
}

}  // namespace ebbline::screens
