#pragma once
/// \file
/// Says when the device has a network again, where the system tells (its plug-ins decide; none is needed otherwise).

#include <QObject>

namespace ebbline::courier {

class NetworkWatch : public QObject {
    Q_OBJECT

public:
    explicit NetworkWatch(QObject* parent = nullptr);

    /// Whether the system tells.
    bool isTold() const { return m_told; }

Q_SIGNALS:
    void back();

private:
    bool m_told = false;
};

}  // namespace ebbline::courier
