#pragma once
/// \file
/// Bells on a phone, whose system rings them also while the program does not run. What the person said
/// to the program and what they said to the phone count both.

#include "platform/notifications/ringer.h"

#include <memory>
#include <optional>

namespace ebbline::notifications {

class RingerBells : public Bells {
    Q_OBJECT

public:
    explicit RingerBells(std::unique_ptr<Ringer> ringer, QObject* parent = nullptr);

    void setWords(const BellWords& words) override { m_ringer->setWords(words); }
    /// The first yes lets the phone ask the person in its own window. A yes that is said again although
    /// the phone was told no leads to the phone's settings: it would not ask a second time.
    void allow(bool ring) override;

    aftercare::Leave leave() const override;
    std::size_t capacity() const override { return m_ringer->capacity(); }
    Result<std::vector<aftercare::Booking>> pending() const override { return m_ringer->pending(); }
    Done book(const aftercare::Booking& booking) override { return m_ringer->book(booking); }
    Done cancel(const aftercare::Booking& booking) override { return m_ringer->cancel(booking); }

    bool isPunctual() const override { return m_ringer->isPunctual(); }
    void askPunctual() override { m_ringer->openPunctualSettings(); }
    void ringNow() override;

private:
    void hear(RingerEvent event);

    std::unique_ptr<Ringer> m_ringer;
    std::optional<bool> m_allowed;
};

}  // namespace ebbline::notifications
